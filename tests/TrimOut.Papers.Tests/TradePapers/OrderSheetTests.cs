using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Papers.TradePapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.TradePapers;

public class OrderSheetTests
{
    private const string Since = "Changed since they were frozen";

    [Fact]
    public void AWidthPutAfterTheFreezeIsOnTheListOfChanges()
    {
        var job = Frozen();
        Assert.Equal(["Nothing."], Page(job.House).SaidUnder(Since));
        job.Say("W01", UnitFacts.OrderWidth, "44");
        Assert.Equal(["W01", "Order width", "44\"", "Test crew", "2026-03-02"], Page(job.House).TableUnder(Since).Single());
    }

    [Fact]
    public void ALaptopWhoseClockIsAYearBehindStillPutItAfterTheFreeze()
    {
        var job = Frozen();
        var late = On(job, "other-laptop", new DateTimeOffset(2025, 1, 5, 8, 0, 0, TimeSpan.Zero), "43");
        Assert.Equal(["W01", "Order width", "43\"", "Other crew", "2025-01-05"], Page(late.House).TableUnder(Since).Single());
    }

    [Fact]
    public void ALaptopWhoseClockIsAYearAheadPutItBeforeTheFreeze()
    {
        var job = new TestJob().Window("W01");
        var ahead = On(job, "other-laptop", new DateTimeOffset(2027, 1, 5, 8, 0, 0, TimeSpan.Zero), "43");
        var unit = ahead.House.Units.Single();
        var frozen = ahead.With(new Change(new ChangeId("laptop", 900), ahead.LargestStamp + 1, new DateTimeOffset(2026, 3, 4, 8, 0, 0, TimeSpan.Zero), "Test crew", "frozen",
            [new Edit.Put(unit.Id, UnitFacts.OrderedOn.Name, "2026-03-04", [])]));
        Assert.Equal(["Nothing."], Page(frozen.House).SaidUnder(Since));
    }

    private static TestJob Frozen() => new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "45").Say("W01", UnitFacts.OrderedOn, "2026-03-02");

    /// <summary>The history with one more change of another laptop, which had all that came before.</summary>
    private static HouseLog On(TestJob job, string device, DateTimeOffset clock, string inches)
    {
        var unit = job.Unit("W01").Item;
        var stored = UnitFacts.OrderWidth.ReadTyped(inches, job.House).Value;
        var over = unit.Latest(UnitFacts.OrderWidth.Name) is { } head ? new[] { head.Id } : [];
        return job.Scribe.Log.With(new Change(new ChangeId(device, 1), job.Scribe.Log.LargestStamp + 1, clock, "Other crew", "width", [new Edit.Put(unit.Id, UnitFacts.OrderWidth.Name, stored, [.. over])]));
    }

    private static AngleSharp.Html.Dom.IHtmlDocument Page(House house) => OrderSheet.Paper.Page(FinishedHouse.Data(house));
}
