using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Tests.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Copies;

public class RemovedWhileWorkedOnTests
{
    public static Example Finds => new(() => Jobs.Walked(), j => Copies.Merged(j, Remove, b => b.Say("W01", WindowFacts.Depth, "5\"")));

    public static Example Passes => new(() => Jobs.Walked(), Remove);

    private readonly TwoLaptops _laptops = new("ada", "bo");

    private static TestJob Remove(TestJob job) => job.Do(RemoveItems.Remove(job.House, job.House.FindTag("W01")!.Item));

    private void Remove(string who, string tag = "W01") => _laptops.Do(who, house => RemoveItems.Remove(house, house.FindTag(tag)!.Item));

    private void Settle(string who, bool back) => _laptops.Do(who, house => RemoveItems.Settle(house, Assert.Single(RemovedAtWork.All(house)), back));

    private static List<CheckResult> Run(Scribe scribe) => [.. new RemovedWhileWorkedOn().Run(scribe.House)];

    private Outcome.Found Found(string who) => Assert.IsType<Outcome.Found>(Assert.Single(Run(_laptops[who])).Outcome);

    private void Exchange()
    {
        _laptops.Take("ada", "bo");
        _laptops.Take("bo", "ada");
    }

    [Fact]
    public void AWindowRemovedOnOneLaptopWhileTheOtherMeasuresItIsACautionOnBoth()
    {
        Remove("ada");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("bo", WindowFacts.RoughHeight, "60");
        Exchange();
        Assert.Equal("Ada removed it on 2026-03-03 08:00, while Bo went on with it (Rough height, Rough width).",
            Found("ada").Message.In(_laptops["ada"].House));
        Assert.Equal(Found("ada"), Found("bo"));
        Assert.Equal("Bring it back with all it had, or leave it removed.", Found("ada").Mend.In(_laptops["ada"].House));
        Assert.Equal("W01", _laptops["bo"].House.NameOf(Assert.Single(Run(_laptops["bo"])).Subject));
    }

    [Fact]
    public void WhatWasDoneBeforeTheRemovalAndSeenIsNoFinding()
    {
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Take("ada", "bo");
        Remove("ada");
        _laptops.Take("bo", "ada");
        Assert.Empty(Run(_laptops["bo"]));
    }

    [Fact]
    public void WhatWasDoneEarlierByTheClockAndNotSeenIsAFinding()
    {
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        foreach (var typed in new[] { "1", "2", "3" })
            _laptops.Type("ada", WindowFacts.Depth, typed);
        Remove("ada");
        Exchange();
        Assert.Contains("Bo went on with it (Rough width)", Found("ada").Message.In(_laptops["ada"].House));
    }

    [Fact]
    public void BringingItBackBringsAllItHad()
    {
        Remove("ada");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        Exchange();
        Settle("bo", back: true);
        Exchange();
        Assert.Equal("45 1/2\"", _laptops["ada"].House.FindTag("W01")!.Show(WindowFacts.RoughWidth));
        Assert.Empty(Run(_laptops["ada"]));
    }

    [Fact]
    public void LeavingItRemovedKnowinglySettlesItForBoth()
    {
        Remove("ada");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        Exchange();
        Settle("ada", back: false);
        Exchange();
        Assert.Null(_laptops["bo"].House.FindTag("W01"));
        Assert.Empty(Run(_laptops["bo"]));
    }

    [Fact]
    public void OneBringsItBackWhileTheOtherLeavesItRemoved()
    {
        Remove("ada");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        Exchange();
        Settle("ada", back: false);
        Settle("bo", back: true);
        Exchange();
        Assert.Equal("Ada removed it on 2026-03-04 08:00, while Bo brought it back.", Found("ada").Message.In(_laptops["ada"].House));
        Assert.Equal("Leave it in, or remove it again.", Found("bo").Mend.In(_laptops["bo"].House));
        Settle("ada", back: false);
        Assert.Empty(Run(_laptops["ada"]));
        Assert.Null(_laptops["ada"].House.FindTag("W01"));
    }

    [Fact]
    public void BothRemovedItIsNoFinding()
    {
        Remove("ada");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        Remove("bo");
        Exchange();
        Assert.Empty(Run(_laptops["ada"]));
    }

    [Fact]
    public void AWholeRoomOfWorkBelowARemovedWindowIsOneFinding()
    {
        Remove("ada");
        _laptops.Do("bo", house => SetFact.Typed(house, house.FindTag("W01")!.Units[0].Item, UnitFacts.LeadSide, "left"));
        _laptops.Do("bo", house => SetFact.Typed(house, house.FindTag("W01")!.Units[0].Run!.Item, RunFacts.TailAtWindow, "40"));
        Exchange();
        Assert.Contains($"({UnitFacts.LeadSide.Label}, {RunFacts.TailAtWindow.Label})", Found("ada").Message.In(_laptops["ada"].House));
    }

    [Fact]
    public void AWindowWhoseAddingWasUndoneWhileTheOtherMeasuresItIsBroughtBackWithAllItHad()
    {
        _laptops.Do("ada", house => AddItems.Window(house, "W02", null));
        _laptops.Take("bo", "ada");
        Assert.True(_laptops["ada"].Undo().Ok);
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2", "W02");
        Exchange();
        Assert.Null(_laptops["bo"].House.FindTag("W02"));
        Assert.Contains("while Bo went on with it (Rough width)", Found("bo").Message.In(_laptops["bo"].House));
        Settle("bo", back: true);
        Exchange();
        Assert.Equal("45 1/2\"", _laptops["ada"].House.FindTag("W02")!.Show(WindowFacts.RoughWidth));
        Assert.Single(_laptops["ada"].House.FindTag("W02")!.Units);
        Assert.Empty(Run(_laptops["ada"]));
    }

    [Fact]
    public void AnotherWindowMeanwhileHasItsTagSoItStaysRemovedWithAReason()
    {
        Remove("ada");
        _laptops.Do("ada", house => AddItems.Window(house, "W01", null));
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 1/2");
        Exchange();
        Assert.Contains("Tag W01 is taken",
            RemoveItems.Settle(_laptops["ada"].House, Assert.Single(RemovedAtWork.All(_laptops["ada"].House)), back: true).Reason);
    }
}
