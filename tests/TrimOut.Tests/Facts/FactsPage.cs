using System.Globalization;
using System.Text;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Tests.Facts;

/// <summary>Which fact is read by whom, and the page that says so.</summary>
internal static class FactsPage
{
    private static readonly Lazy<ILookup<Fact, FactReader>> Readers = new(() =>
    {
        List<Core.History.Scribe> houses =
        [
            BigHouse.Of(12).Scribe, FilledHouse.Of(12).Scribe, Planned().Scribe,
            .. SampleHouse.Names.Select(n => SampleHouse.Open(n, new FakeTimeProvider())),
        ];
        return FactReader.All
            .SelectMany(r => houses.SelectMany(h => r.Reads(h)).Where(f => f.What == Beside.Value).Select(f => f.Fact).Distinct()
                .Select(f => (Fact: f, Reader: r)))
            .ToLookup(r => r.Fact, r => r.Reader);
    });

    /// <summary>A run that is planned and not pulled yet, in a cable whose listing depends on its thickness.</summary>
    private static TestJob Planned() => new TestJob().Window("W01")
        .Say("W01", WindowFacts.RoughWidth, "36\"").Say("W01", UnitFacts.PartWidth, "36\"")
        .SayOf("16/2", CableTypeFacts.Listing, "CL2X").SayOf("16/2", CableTypeFacts.Diameter, "1/4\"")
        .SayOf("Test house", HouseFacts.Dwelling, "one-or-two-family")
        .Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.Bundle, "A").Legs("W01", ("20 ft", CablePlace.InWall));

    /// <summary>The readers of a fact, in their order.</summary>
    public static IEnumerable<FactReader> ReadersOf(Fact fact) => Readers.Value[fact];

    /// <summary>The checks that read each value of a maker's sheet, a line a value, as the sheet in hand shows them.</summary>
    public static string ChecksByValue() => string.Concat(Enum.GetValues<ItemKind>().SelectMany(k => Core.Kits.SheetValues.Of(k))
        .Select(f => (Fact: f, Checks: ReadersOf(f).Where(r => r.Sort == "check").Select(r => r.Name).ToList())).Where(f => f.Checks.Count > 0)
        .Select(f => $"{Screens.Kit.ChecksByValue.Key(f.Fact)}: {string.Join(", ", f.Checks)}\n"));

    /// <summary>The page as Markdown.</summary>
    public static string Of()
    {
        var page = new StringBuilder("""
            # Details

            Every detail that TrimOut knows, and who reads it. This page is made by a test that has each check, plan, paper and screen read five houses and
            notes what it reads; a detail that nobody reads has a word that says why it is kept. Sheets, the kit's screen, the history and imports take and show
            every detail, and four checks ask of any detail whether something is there: they are not named here.

            """);
        foreach (var subject in FactTable.All.GroupBy(f => f.Subject))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {SubjectWords.Of(subject.Key)}\n\n")
                .Append("| Name in files | Label | What it is | May be | Read by |\n|---|---|---|---|---|\n");
            foreach (var fact in subject)
                page.Append(CultureInfo.InvariantCulture, $"| `{fact.Name}` | {fact.Label} | {fact.Help} | {fact.Hint} | {ReadBy(fact)} |\n");
        }
        return page.ToString();
    }

    private static string ReadBy(Fact fact)
    {
        var sorts = ReadersOf(fact).GroupBy(r => r.Sort).Select(g => $"{g.Key}: {string.Join(", ", g.Select(r => r.Name).Distinct())}").ToList();
        return sorts.Count > 0 ? string.Join("; ", sorts) : "nobody. " + KeptFacts.Why.GetValueOrDefault(fact);
    }
}
