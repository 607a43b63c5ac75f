using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Papers.CrewPapers;

namespace TrimOut.Papers.Tests.CrewPapers;

public class HangSheetTests
{
    /// <summary>Two units of 45 3/8" in an opening of 91": each over the middle of its half of 45 1/2".</summary>
    [Fact]
    public void UnitsOfOneOpeningBeginAndEndByTheirOrderedWidths()
    {
        var job = FinishedHouse.Build();
        Assert.Equal(("1/16\"", "45 7/16\""), Ends("W02A"));
        Assert.Equal(("45 9/16\"", "90 15/16\""), Ends("W02B"));

        (string, string) Ends(string unit) => HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("table")
            .Where(t => t.QuerySelectorAll("th").Any(h => h.TextContent == "Unit begins"))
            .SelectMany(t => t.QuerySelectorAll("tbody tr")).Select(r => r.Children.Select(c => c.TextContent).ToList())
            .Where(r => r[0] == unit).Select(r => (r[1], r[5])).Single();
    }

    [Fact]
    public void BeforeAnythingIsOrderedEachHasItsPart()
    {
        var job = FinishedHouse.Build();
        foreach (var unit in (string[])["W02A", "W02B"])
            job.Do(SetFact.Typed(job.House, job.Unit(unit).Item, UnitFacts.OrderWidth, ""));
        var rows = HangSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).QuerySelectorAll("tbody tr")
            .Select(r => r.Children.Select(c => c.TextContent).ToList());
        Assert.Contains(rows, r => r is ["W02A", "0\"", _, _, _, "45 1/2\"", ..]);
    }
}
