using System.Globalization;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Tests;

/// <summary>
/// Every text fact of every item, the author and the instrument hold hostile text: the page must be the one of harmless text, with only those texts changed.
/// </summary>
public class HostileTextEverywhereTests
{
    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void HostileTextInEveryTextFactChangesNothingButItsOwnPlace(string id)
    {
        var paper = PaperList.Find(id)!;
        var job = ServedHouse.Build();
        var fields = TextFields(job.House).ToList();
        Assert.True(fields.Count > 60);
        var harmless = Elements(paper, With(job.Scribe.Log, fields, Token));
        Assert.True(Enumerable.Range(0, fields.Count)
            .Count(at => harmless.Any(e => e.Text.Contains(Token(at), StringComparison.Ordinal))) >
                (id switch { "binder" => 40, "sun-sheet" or "work-plan" => 6, _ => 10 }));
        // The binder holds every text against every place; the others, built of the same parts, every seventh.
        for (var shift = 0; shift < HostileText.All.Length; shift += id == "binder" ? 1 : 7)
        {
            // Instruments and groups stay apart from each other, as the harmless ones are: the same one twice is told once. A dash alone is no punch item,
            // claim or photo.
            // What parts two paths of photos is no part of one.
            string Typed(int at) => HostileText.All[(at + shift) % HostileText.All.Length]
                .Replace(PhotoPaths.Between, fields[at].Field == UnitFacts.Photo.Name ? "/" : PhotoPaths.Between, StringComparison.Ordinal)
                + (fields[at].Field.EndsWith("#meter", StringComparison.Ordinal) || fields[at].Field == PunchFacts.What.Name
                    || fields[at].Field == ServiceFacts.Claim.Name || fields[at].Field == UnitFacts.Group.Name
                    || fields[at].Field == UnitFacts.Photo.Name ? Token(at)[2..5] : "");
            var expected = harmless.Select(e => (e.Tag, Text: Filled(e.Text, Typed))).ToList();
            Assert.Equal(expected, Elements(paper, With(job.Scribe.Log, fields, Typed)));
        }
    }

    internal static string Token(int at) => string.Create(CultureInfo.InvariantCulture, $"zz{at:000}zz");

    [Fact]
    public void EveryTextFactThereIsIsAmongThem()
    {
        var job = ServedHouse.Build();
        var held = TextFields(job.House).Select(f => (job.House.Find(f.Item)!.Kind, f.Field)).ToHashSet();
        var all = FactTable.All.OfType<Fact<string>>()
            .Where(f => f != WaiverFacts.Check && f != WaiverFacts.Figures && f != WaiverFacts.Arguments && f != HouseFacts.TimeZone)
            .Select(f => (f.Subject, f.Name));
        Assert.Empty(all.Except(held));
    }

    private static string Filled(string text, Func<int, string> typed) =>
        System.Text.RegularExpressions.Regex.Replace(text, "zz([0-9]{3})zz",
            m => ShownText.Kept(typed(int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture))));

    /// <summary>
    /// Every element with its own text, in order. A drawing may cut its lettering short, so of that only the number of pieces counts, and of what may go on in
    /// another line not even that.
    /// </summary>
    private static List<(string Tag, string Text)> Elements(Paper paper, HouseLog log) =>
        [.. new HtmlParser().ParseDocument(paper.Write(FinishedHouse.Data(log)).ToHtml()).All
            .Where(e => e.GetAttribute("data-part") != "legend")
            .Select(e => (e.LocalName, e.LocalName is "text" or "style" ? "" : string.Concat(e.ChildNodes.OfType<IText>().Select(t => t.Data))))];

    internal static HouseLog With(HouseLog log, List<(string Item, string Field)> fields, Func<int, string> typed)
    {
        var edits = fields.Select((f, at) => (Edit)new Edit.Put(f.Item, f.Field, typed(at), []));
        return log.With(
            new Change(new ChangeId("hostile", 1), log.LargestStamp + 1, new DateTimeOffset(2026, 9, 30, 12, 0, 0, TimeSpan.Zero), typed(0),
                "hostile", [.. edits]));
    }

    // A waiver holds for one check and one set of figures: with those changed it would no longer be one. A time zone that is none is no value.
    internal static IEnumerable<(string Item, string Field)> TextFields(House house) =>
        from item in house.Items.Values.OrderBy(i => i.Place)
        from field in FactTable.Of(item.Kind).OfType<Fact<string>>()
            .Where(f => f != WaiverFacts.Check && f != WaiverFacts.Figures && f != WaiverFacts.Arguments && f != HouseFacts.TimeZone).Select(f => f.Name)
            .Concat(item.Fields.Select(f => f.Key).Where(k => k.EndsWith("#meter", StringComparison.Ordinal)).Order())
        select (item.Id, field);
}
