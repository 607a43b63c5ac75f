using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Papers.Photos;

namespace TrimOut.Papers.Tests.Photos;

public partial class PhotoPagesTests
{
    private static readonly Photo Shown = PhotoShrinker.Read(TestPhoto.Jpeg(orientation: 6));

    public static TheoryData<string> Papers => ["binder", "test-record"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void PicturesAreInsideThePageTheirPathsAreKeptAndWhatCanNotBeShownIsNamed(string id)
    {
        Photo Read(string path) => path switch
        {
            "photos/W01-open-wall.jpg" => Shown,
            "photos/W02A-open-wall.jpg" => Photo.Not(PhotoState.Missing),
            "photos/W02B-open-wall.jpg" => Photo.Not(PhotoState.Damaged),
            _ => Photo.Not(PhotoState.NoPicture),
        };
        var data = FinishedHouse.Data() with { Photos = Read };
        var paper = PaperList.Find(id)!.Write(data);
        var page = PaperList.Find(id)!.Page(data);
        var picture = Assert.Single(page.QuerySelectorAll("svg image"));
        Assert.Equal(Shown.Jpeg.ToArray(), Convert.FromBase64String(Embedded().Match(picture.GetAttribute("href")!).Groups["data"].Value));
        Assert.Equal("Picture of W01, taken on 2026-03-12", picture.ParentElement!.QuerySelector("title")!.TextContent);
        var rows = page.QuerySelectorAll("table").Single(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Picture")).QuerySelectorAll("tbody tr")
            .Select(r => r.Children.Select(c => c.TextContent).ToArray()).ToList();
        Assert.Contains(rows, r => r is ["W01", "photos/W01-open-wall.jpg", "2026-03-12", "–"]);
        Assert.Contains(rows, r => r is ["W02A", "photos/W02A-open-wall.jpg", "–", "there is no such file"]);
        Assert.Contains(rows, r => r is ["W02B", "photos/W02B-open-wall.jpg", "–", "the picture is damaged"]);
        Assert.All(page.QuerySelectorAll("[src], [href]"),
            e => Assert.Matches("^(#.|tel:|data:image/jpeg;base64,)", e.GetAttribute("href") ?? e.GetAttribute("src")));
        Assert.Contains("img-src data:", page.QuerySelector("meta[http-equiv]")!.GetAttribute("content"), StringComparison.Ordinal);
        Assert.All(paper.Drawings, d => Assert.Contains($"({d.Key})", paper.Markdown, StringComparison.Ordinal));
    }

    [Fact]
    public void PicturesAddNoMoreToAPaperThanTheirLimitAndThoseLeftOutAreListed()
    {
        var large = new Photo(PhotoState.Read, new byte[10 << 20], 720, 480, null);
        var page = PaperList.Find("test-record")!.Page(FinishedHouse.Data() with { Photos = _ => large });
        // 10 MiB are 13.3 MiB as they are embedded (RFC 4648: four letters for three bytes): one fits into 24 MiB, two do not.
        Assert.Single(page.QuerySelectorAll("svg image"));
        Assert.Equal(["–", "not shown: the pictures before it fill the page", "not shown: the pictures before it fill the page"],
            page.TableUnder("Pictures of the open wall").Select(r => r[^1]));
    }

    [Fact]
    public void PicturesOfPunchItemsAreShownLikeAllOthersOpenOnesForTheOwnerAndDoneOnesWithTheFindings()
    {
        var job = FinishedHouse.Build();
        job.Do(PunchList.Write(job.House, job.Unit("W02A").Item, "Scratch in the fascia", Phase.Hang));
        var (open, done) = (job.House.PunchItems.Single(p => p.Name == "Touch up the sill paint"), job.House.PunchItems.Single(p => p.Name[0] == 'S'));
        job.Do(SetFact.Typed(job.House, open.Item, PunchFacts.Photo, "photos/sill.jpg"))
            .Do(SetFact.Typed(job.House, done.Item, PunchFacts.Photo, "scratch.jpg"))
            .Do(SetFact.Typed(job.House, done.Item, PunchFacts.State, "done"));
        var page = PaperList.Find("binder")!.Page(FinishedHouse.Data(job.Scribe.Log) with
        {
            Photos = p => p is "photos/sill.jpg" or "scratch.jpg" ? Shown : Photo.Not(PhotoState.Missing),
        });
        var pictures = page.QuerySelectorAll("svg:has(image) > title");
        Assert.Equal(["Picture of W01: Touch up the sill paint, taken on 2026-03-12", "Picture of W02A: Scratch in the fascia, taken on 2026-03-12"],
            pictures.Select(t => t.TextContent));
        Assert.Equal(["Punch items", "Punch items that are done"], pictures.Select(t => HeadingOf(t.ParentElement!.ParentElement!)));
        Assert.Contains(page.QuerySelectorAll("tbody tr").Select(r => r.Children.Select(c => c.TextContent).ToArray()),
            r => r is ["W01: Touch up the sill paint", "photos/sill.jpg", "2026-03-12"]);
    }

    [Fact]
    public void AllPicturesOfAPaperShareOneLimitWhateverSectionTheyStandIn()
    {
        var job = FinishedHouse.Build();
        job.Do(SetFact.Typed(job.House, job.House.PunchItems.Single().Item, PunchFacts.Photo, "photos/sill.jpg"));
        var large = new Photo(PhotoState.Read, new byte[10 << 20], 720, 480, null);
        var page = PaperList.Find("binder")!.Page(FinishedHouse.Data(job.Scribe.Log) with { Photos = _ => large });
        Assert.Single(page.QuerySelectorAll("svg image"));
    }

    private static string HeadingOf(IElement at)
    {
        while (at is not IHtmlHeadingElement)
            at = at.PreviousElementSibling!;
        return at.TextContent;
    }

    /// <summary>One picture of a wall shows the cables of all its windows.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void APictureOfSeveralUnitsIsListedOnce(bool read)
    {
        var job = FinishedHouse.Build();
        foreach (var run in job.House.Runs)
            job.Do(SetFact.Typed(job.House, run.Item, RunFacts.Photo, "photos/wall1.jpg"));
        var page = PaperList.Find("test-record")!.Page(FinishedHouse.Data(job.Scribe.Log) with { Photos = read ? _ => Photo.Not(PhotoState.Missing) : null });
        var cells = read ? page.TableUnder("Pictures of the open wall").SelectMany(r => r).ToList() : [.. page.SaidUnder("Pictures of the open wall")];
        Assert.Contains(cells, c => c.Contains("W01, W02A, W02B", StringComparison.Ordinal));
        Assert.Equal(1, string.Concat(cells).Split("wall1.jpg").Length - 1);
    }

    [Fact]
    public void WhereNobodyReadsPicturesTheirPathsAreListed() =>
        Assert.Contains("photos/W01-open-wall.jpg", PaperList.Find("test-record")!.Page(FinishedHouse.Data()).SaidUnder("Pictures of the open wall").Single(),
            StringComparison.Ordinal);

    [GeneratedRegex("^data:image/jpeg;base64,(?<data>.*)$")]
    private static partial Regex Embedded();
}
