using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class RemovedOnOrderTests
{
    private static readonly RemovedOnOrder Check = new();

    public static Example Finds => new(() => Frozen(), Remove);

    public static Example Passes => new(() => Frozen(), j => Remove(j.Forget("W01", UnitFacts.OrderedOn)));

    [Fact]
    public void AWindowThatIsRemovedOnceItIsOrderedIsToldOfTheHouse()
    {
        var job = Remove(Frozen());
        var result = Assert.Single(Check.Run(job.House));
        Assert.Equal(job.House.Job, result.Subject);
        Assert.Equal("Removed, and still on order: unit of W01, ordered on 2026-03-02, order width 36\", order height 60\", acknowledgement A-7.", Said(job));
        Assert.StartsWith("Call the maker today", Found(job).Mend.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void AUnitThatIsRemovedOnceItIsOrderedIsToldOfItsWindow()
    {
        var job = Frozen().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        job.Say("W01B", UnitFacts.OrderedOn, "2026-03-02").Do(RemoveItems.Remove(job.House, job.Unit("W01B").Item));
        var result = Assert.Single(Check.Run(job.House));
        Assert.Equal("W01", job.House.NameOf(result.Subject));
        Assert.Equal("Removed, and still on order: unit of W01, ordered on 2026-03-02.", Said(job));
    }

    [Fact]
    public void TwoUnitsOfOneOrderAreTwoFindings()
    {
        var job = Frozen();
        for (var n = 0; n < 2; n++)
            job.Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        foreach (var tag in (string[])["W01B", "W01C"])
            job.Say(tag, UnitFacts.OrderedOn, "2026-03-02");
        foreach (var unit in job.House.Units.Skip(1).Select(u => u.Item).ToList())
            job.Do(RemoveItems.Remove(job.House, unit));
        var found = Check.Run(job.House).Select(r => (Outcome.Found)r.Outcome).ToList();
        Assert.Equal(2, found.Count);
        job.Do(PunchList.Waive(job.Report.Findings.First(f => f.Check.Id == Check.Info.Id), job.House, "Cancelled with the maker.", "AB"));
        Assert.Single(job.Report.Findings, f => f.Check.Id == Check.Info.Id && f.Open);
    }

    [Fact]
    public void WhatCameIsSentBack()
    {
        var job = Remove(Frozen().Say("W01", UnitFacts.BoxLabel, "W01"));
        Assert.StartsWith("Removed, and its box is here: unit of W01, ordered on", Said(job), StringComparison.Ordinal);
        Assert.StartsWith("Ask the maker to take it back", Found(job).Mend.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatWasNeverOrderedIsNotAsked() => Assert.Empty(Check.Run(Remove(Jobs.Ordered()).House));

    [Fact]
    public void WhatIsBroughtBackIsNotAsked()
    {
        var job = Remove(Frozen());
        var window = job.House.Items.Values.Single(i => i is { Removed: true, Kind: Core.Houses.ItemKind.Window });
        Assert.Empty(Check.Run(job.Do(RemoveItems.BringBack(job.House, window)).House));
    }

    private static TestJob Frozen() => Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02").Say("W01", UnitFacts.Acknowledgement, "A-7");

    private static TestJob Remove(TestJob job) => job.Do(RemoveItems.Remove(job.House, job.House.FindTag("W01")!.Item));

    private static Outcome.Found Found(TestJob job) => Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Single();

    private static string Said(TestJob job) => Found(job).Message.In(job.House);

    [Fact]
    public void SeveralAreToldInTheOrderInWhichTheyWereAddedAndWithWhereToWriteWhatWasAgreed()
    {
        var job = Frozen();
        for (var n = 0; n < 2; n++)
            job.Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        job.Say("W01C", UnitFacts.OrderedOn, "2026-03-03").Say("W01B", UnitFacts.OrderedOn, "2026-03-02");
        foreach (var unit in job.House.Units.Skip(1).Select(u => u.Item).Reverse().ToList())
            job.Do(RemoveItems.Remove(job.House, unit));
        var found = Check.Run(job.House).Select(r => (Outcome.Found)r.Outcome).ToList();
        Assert.Equal(["2026-03-02", "2026-03-03"], found.Select(f => f.Message.In(job.House)[^11..^1]));
        Assert.All(found, f => Assert.Equal(FieldRef.To(job.House.FindTag("W01")!.Item, WindowFacts.Note), f.Mends));
        Assert.Equal(FieldRef.To(job.House.Job, HouseFacts.OpenItemsAgreed), Found(Remove(Frozen())).Mends);
    }

    [Fact]
    public void WhoseOrderWasTakenBackBeforeItWasRemovedIsFine()
    {
        var result = Assert.Single(Check.Run(Remove(Frozen().Forget("W01", UnitFacts.OrderedOn)).House));
        Assert.IsType<Outcome.Fine>(result.Outcome);
    }

    [Fact]
    public void AnotherWindowThatWasBroughtBackHidesNone()
    {
        var job = Remove(Jobs.Walked("W02", Frozen()));
        job.Do(RemoveItems.Remove(job.House, job.House.FindTag("W02")!.Item));
        var back = job.House.Items.Values.Last(i => i is { Removed: true, Kind: Core.Houses.ItemKind.Window });
        Assert.Single(Check.Run(job.Do(RemoveItems.BringBack(job.House, back)).House), r => r.Outcome is Outcome.Found);
    }

    [Fact]
    public void AUnitWhoseOrderWasTakenBackIsFineAtItsWindow()
    {
        var job = Frozen().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.OrderedOn, "2026-03-02");
        job.Forget("W01B", UnitFacts.OrderedOn).Do(RemoveItems.Remove(job.House, job.Unit("W01B").Item));
        var result = Assert.Single(Check.Run(job.House));
        Assert.Equal(("W01", true), (job.House.NameOf(result.Subject), result.Outcome is Outcome.Fine));
    }
}
