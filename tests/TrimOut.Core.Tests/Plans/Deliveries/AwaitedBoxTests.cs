using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Deliveries;

public class AwaitedBoxTests
{
    private static readonly DateOnly Day = new(2026, 9, 7);

    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");

    private IEnumerable<string> Lines(DateOnly day) => AwaitedBox.Of(_job.House, _job.Report, day)
        .Select(b => $"{b.Unit.Tag}: {b.Why.In(_job.House)}{(b.Reorder ? ", reorder" : "")}{(b.Overdue ? ", overdue" : "")}");

    [Fact]
    public void ABoxIsOverdueFromTheDayAfterItWasExpected()
    {
        _job.Say("W01", UnitFacts.ExpectedOn, "2026-09-07");
        Assert.Equal(["W01: expected on 2026-09-07"], Lines(Day));
        Assert.Equal(["W01: expected on 2026-09-07, not here, overdue"], Lines(Day.AddDays(1)));
    }

    [Fact]
    public void WhatDidNotComeIsReorderedUntilSomebodyDid()
    {
        _job.Do(j => Deliver.DidNotCome(j.Unit("W01")));
        Assert.Equal(["W01: did not arrive, reorder"], Lines(Day));
        _job.Do(Deliver.Reordered(_job.Unit("W01"), Day));
        Assert.Equal(["W01: reordered on 2026-09-07"], Lines(Day));
        _job.Do(j => Deliver.DidNotCome(j.Unit("W01")));
        Assert.Equal(["W01: did not arrive, reorder"], Lines(Day));
        _job.Do(j => Deliver.Came(j.Unit("W01")));
        Assert.Empty(Lines(Day));
    }

    [Fact]
    public void WhatCameDamagedIsReordered()
    {
        _job.Say("W02", UnitFacts.BoxLabel, "W02").Say("W02", UnitFacts.Damage, "bar bent");
        Assert.Equal(["W02: It came with: bar bent., reorder"], Lines(Day));
        _job.Say("W02", UnitFacts.Damage, "none");
        Assert.Empty(Lines(Day));
    }

    [Fact]
    public void TheBoxOfAnotherUnitIsLookedForAndNotReordered()
    {
        _job.Say("W02", UnitFacts.BoxLabel, "W01").Say("W02", UnitFacts.Damage, "bar bent");
        Assert.Equal(["W02: The box says \"W01\"; this is W02."], Lines(Day));
    }

    [Fact]
    public void WhatWasOrderedIsAwaitedAlsoWhereNoDayIsKnown()
    {
        _job.Say("W01", UnitFacts.OrderedOn, "2026-08-01");
        Assert.Equal(["W01: ordered, no day known"], Lines(Day));
        _job.Say("W01", UnitFacts.Serial, "S-1");
        Assert.Empty(Lines(Day));
    }
}
