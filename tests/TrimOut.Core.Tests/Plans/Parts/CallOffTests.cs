using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Parts;

public class CallOffTests
{
    private static readonly DateOnly Today = new(2026, 3, 2);

    // Cable and what lies along it at the pull, units and their screws to hang, panels and joints with the power, remotes to pair: common practice.
    [Theory]
    [InlineData("16/2", Phase.RoughIn)]
    [InlineData("16/2: boxes to buy", Phase.RoughIn)]
    [InlineData("16/2: nail plates", Phase.RoughIn)]
    [InlineData("16/2: splice connectors", Phase.Power)]
    [InlineData("Cable label", Phase.RoughIn)]
    [InlineData("Roller", Phase.Hang)]
    [InlineData("Roller: screws", Phase.Hang)]
    [InlineData("Invented supply", Phase.Power)]
    [InlineData("Hub", Phase.Pair)]
    public void APartIsNeededInThePhaseThatItIsFirstUsedIn(string part, Phase phase) => Assert.Equal(phase, Of(Whole(), part).Line.NeededIn);

    // March 30 less 10 days is March 20; May 4 less 21 days is April 13.
    [Fact]
    public void TheLastDayIsSoManyDaysBeforeTheFirstVisitOfThePhase()
    {
        var job = With("2026-03-30 Rough-in upstairs", With("2026-04-02 Rough-in downstairs", With("2026-05-04 Hang", Whole())))
            .SayOf("", HouseFacts.PartsLead, "10").SayOf("", HouseFacts.OrderLead, "21");
        Assert.Equal((Day(3, 30), Day(3, 20)), Days(Of(job, "16/2")));
        Assert.Equal((Day(5, 4), Day(4, 13)), Days(Of(job, "Roller")));
        Assert.Equal((Day(5, 4), Day(4, 24)), Days(Of(job, "Roller: screws")));
    }

    [Fact]
    public void WithoutAVisitTheDatesOfTheHouseCountAndWithoutALeadNoLastDayIsSaid()
    {
        var job = Whole().SayOf("", HouseFacts.DrywallOn, "2026-04-20").SayOf("", HouseFacts.HandoverOn, "2026-09-01");
        Assert.Equal((Day(4, 20), null), Days(Of(job, "16/2")));
        Assert.Equal((Day(9, 1), null), Days(Of(job, "Hub")));
        Assert.Equal((null, null), Days(Of(Whole(), "16/2")));
    }

    [Fact]
    public void AUnitIsToBeOrderedUntilAllOfItsKindAre()
    {
        var job = Whole().Window("W02");
        Assert.Equal((CallOffState.Open, "W01, W02"), Stands(Of(job, "Roller")));
        Assert.Equal((CallOffState.Open, "W02"), Stands(Of(job.Say("W01", UnitFacts.OrderedOn, "2026-03-01"), "Roller")));
        job.Say("W02", UnitFacts.OrderedOn, "2026-03-02");
        Assert.Equal((CallOffState.CalledOff, ""), Stands(Of(job, "Roller")));
        Assert.Equal(Day(3, 2), Of(job, "Roller").OrderedOn);
    }

    [Fact]
    public void WhatWasCalledOffOrIsNotTakenIsNotToBeOrdered()
    {
        var job = Whole().SayOf("", HouseFacts.PowerPartsOn, "2026-03-01");
        Assert.Equal(CallOffState.CalledOff, Of(job, "Invented supply").State);
        Assert.Equal(CallOffState.Nothing, Of(job, "More panels").State);
        Assert.Equal(CallOffState.Open, Of(job, "Hub").State);
    }

    [Fact]
    public void WhatCameIntoTheHouseAfterTheOrderIsOpenUntilItIsOrderedToo()
    {
        var job = Whole().SayOf("", HouseFacts.PowerPartsOn, "2026-03-02").SayOf("", HouseFacts.PairPartsOn, "2026-03-02");
        job.Clock.Advance(TimeSpan.FromDays(3));
        job.WithPanel("P9").Add(ItemKind.Hub, "Attic").SayOf("Attic", HubFacts.Type, "Hub");
        Assert.Equal((CallOffState.Open, "P9"), Stands(Of(job, "Invented supply")));
        Assert.Equal((CallOffState.Open, "Attic"), Stands(Of(job, "Hub")));
        job.SayOf("", HouseFacts.PowerPartsOn, "2026-03-05");
        Assert.Equal(CallOffState.CalledOff, Of(job, "Invented supply").State);
    }

    /// <summary>What lies in the wall, hangs or answers was bought: nobody orders it, whatever was noted of an order.</summary>
    [Fact]
    public void WhatTheMarksShowToBeThereIsNotToBeOrdered()
    {
        var job = Whole();
        job.Add(ItemKind.Remote, "Sofa").SayOf("Sofa", RemoteFacts.Type, "Wall remote").SayOf("Sofa", RemoteFacts.Room, "Kitchen")
            .SayOf("Sofa", RemoteFacts.Moves, "yes", job.Unit("W01").Id);
        string[] parts = ["16/2", "16/2: nail plates", "Cable label", "16/2: splice connectors", "Invented supply", "Hub", "Wall remote, Kitchen",
            "Roller: screws", "Roller"];
        Assert.All(parts, p => Assert.Equal(CallOffState.Open, Of(job, p).State));
        job.Pulled("W01");
        Assert.All(parts[..3], p => Assert.Equal(CallOffState.Here, Of(job, p).State));
        Assert.Equal(CallOffState.Nothing, Of(job, "16/2: boxes to buy").State);
        Assert.Equal(CallOffState.Open, Of(job, parts[3]).State);
        job.Do(MarkStep.Done(job.House.Panels.Single(), StepList.Find("mains-connected")!)).Mark("W01", "spliced").Say("W01", UnitFacts.Hub, "Main")
            .Say("W01", UnitFacts.HubName, "Sink").Mark("W01", "hub-paired").Mark("W01", "remotes-paired").Mark("W01", "brackets-fixed")
            .Mark("W01", "clicked-in");
        Assert.All(parts, p => Assert.Equal(CallOffState.Here, Of(job, p).State));
        Assert.DoesNotContain(Now(job), c => c.Line.Count > 0 && parts.Contains(c.Line.Part.In(job.House)));
    }

    /// <summary>Two labels a run.</summary>
    [Fact]
    public void OfWhatIsThereInPartTheRestIsToBeOrderedByName()
    {
        var job = Jobs.Roughed("W02", Whole()).Pulled("W01");
        var (cable, label) = (Of(job, "16/2"), Of(job, "Cable label"));
        Assert.Equal((CallOffState.Open, "W02"), Stands(cable));
        Assert.Equal(Math.Ceiling((decimal)job.Run("W02").Needed!.Value.Feet), cable.Left);
        Assert.Equal(((CallOffState.Open, "W02"), 2m), (Stands(label), label.Left));
    }

    /// <summary>It was there, and what came in its place is too; what is ordered of the maker once more is no line of a parts list.</summary>
    [Fact]
    public void WhatWasReplacedIsThereAlthoughItsStepsAreAskedAgain()
    {
        var job = Whole().Mark("W01", "clicked-in");
        job.Do(j => MarkStep.Done(j.House.Panels.Single(), StepList.Find("panel-hung")!));
        job.Do(j => RecordService.Of(j.House, j.House.Panels.Single().Item, new ServiceSaid(ServiceKind.Replaced, Today)));
        job.Do(j => RecordService.Of(j.House, j.Unit("W01").Item, new ServiceSaid(ServiceKind.Replaced, Today)));
        Assert.Equal((CallOffState.Here, CallOffState.Here), (Of(job, "Invented supply").State, Of(job, "Roller").State));
    }

    /// <summary>A supply that feeds what was read, a hub and a remote that move a unit, a box that was hung and set: none can be elsewhere.</summary>
    [Theory]
    [InlineData("off-before-joints", "Invented supply")]
    [InlineData("landed", "Invented supply")]
    [InlineData("volts-read", "Invented supply", "16/2: splice connectors")]
    [InlineData("output-proved", "Invented supply", "16/2: splice connectors")]
    [InlineData("moved-by-all", "Hub", "Wall remote, Kitchen")]
    [InlineData("remotes-paired", "Hub", "Wall remote, Kitchen")]
    [InlineData("preset-stored", "Wall remote, Kitchen")]
    [InlineData("open-limit", "Roller", "Roller: screws")]
    public void EveryStepThatCanNotBeDoneWithoutAPartShowsThatItIsHere(string step, params string[] parts)
    {
        var job = WithRemote();
        Assert.All(parts, p => Assert.Equal(CallOffState.Open, Of(job, p).State));
        if (StepList.Find(step)!.Subject == ItemKind.Panel)
            job.Do(j => MarkStep.Done(j.House.Panels.Single(), StepList.Find(step)!));
        else
            job.Mark("W01", step);
        Assert.All(parts, p => Assert.Equal(CallOffState.Here, Of(job, p).State));
    }

    /// <summary>The one that was chosen since was in nobody's hand when the step was marked.</summary>
    [Fact]
    public void AStepShowsNothingOfAHubOrRemoteThatWasChosenAfterIt()
    {
        var job = WithRemote().Mark("W01", "hub-paired").Mark("W01", "moved-by-all");
        Assert.Equal(CallOffState.Here, Of(job, "Hub").State);
        job.Add(ItemKind.Hub, "Attic").SayOf("Attic", HubFacts.Type, "Hub").Say("W01", UnitFacts.Hub, "Attic");
        job.Add(ItemKind.Remote, "Bed").SayOf("Bed", RemoteFacts.Type, "Wall remote").SayOf("Bed", RemoteFacts.Room, "Kitchen")
            .SayOf("Bed", RemoteFacts.Moves, "yes", job.Unit("W01").Id);
        Assert.Contains("Attic", Of(job, "Hub").NotOrdered);
        Assert.Equal((CallOffState.Open, "Bed"), Stands(Of(job, "Wall remote, Kitchen")));
    }

    /// <summary>That it ran shows nothing of the battery that was chosen for it since.</summary>
    [Fact]
    public void AMarkShowsNothingOfAPowerThatWasChosenAfterIt()
    {
        var job = Whole().Say("W01", UnitFacts.Power, "battery").Mark("W01", "open-limit");
        Assert.Equal(CallOffState.Here, Of(job, "Battery for Roller").State);
        job = Whole().Mark("W01", "open-limit").Say("W01", UnitFacts.Power, "battery");
        Assert.Equal(CallOffState.Open, Of(job, "Battery for Roller").State);
    }

    [Fact]
    public void WhatFailedInServiceIsHereWhateverWasMarked()
    {
        var job = WithRemote();
        foreach (var item in new[] { job.House.Panels.Single().Item, job.House.Hubs.Single().Item, job.House.Remotes.Single().Item })
            job.Do(j => RecordService.Of(j.House, item, new ServiceSaid(ServiceKind.Failed, Today)));
        Assert.All(["Invented supply", "Hub", "Wall remote, Kitchen"], p => Assert.Equal(CallOffState.Here, Of(job, p).State));
    }

    [Fact]
    public void ADayToComeOrdersNothingAndIsFound()
    {
        var job = Whole().SayOf("", HouseFacts.RoughInPartsOn, "2099-01-01");
        Assert.Equal(CallOffState.Open, Of(job, "16/2").State);
        Assert.Contains(job.Report.Findings, f => f.Check.Id == "dates-run-backwards" && job.Report.Said(f).Contains("2099-01-01", StringComparison.Ordinal));
    }

    /// <summary>Fourteen days on from March 2 is March 16.</summary>
    [Theory]
    [InlineData("2026-03-16", true)]
    [InlineData("2026-03-17", false)]
    [InlineData("2026-02-20", true)]
    public void WhatMustGoOutWithinTwoWeeksOrShouldHaveIsDue(string drywall, bool due) => Assert.Equal(due,
        Now(Whole().SayOf("", HouseFacts.DrywallOn, drywall)).Any(c => c.Line.NeededIn == Phase.RoughIn));

    [Fact]
    public void WhereNoDayIsKnownTheNextPhaseIsDue()
    {
        Assert.Equal([Phase.RoughIn], Now(Whole()).Select(c => c.Line.NeededIn).Distinct());
        Assert.DoesNotContain(Now(Whole()), c => c.OrderedIn == Phase.Order);
        var measured = Whole().Mark("W01", "cable-found");
        Assert.DoesNotContain(Now(measured), c => c.OrderedIn == Phase.Order);
        Assert.Contains(Now(measured.Mark("W01", "in-the-way-noted")), c => c.OrderedIn == Phase.Order);
    }

    /// <summary>How long a maker takes nobody said: the day to have it by is no day to order it on, and it is weeks.</summary>
    [Theory]
    [InlineData(null, true)]
    [InlineData("20", false)]
    public void WhatAMakerMakesIsDueWithItsPhaseWhereNobodySaidHowLongItTakes(string? days, bool due)
    {
        var job = With("2026-12-10 Hang", Whole().Mark("W01", "cable-found").Mark("W01", "in-the-way-noted"));
        if (days is not null)
            job.SayOf("", HouseFacts.OrderLead, days);
        Assert.Equal(due, Now(job).Any(c => c.OrderedIn == Phase.Order));
    }

    [Fact]
    public void TheMostPressingComesFirst()
    {
        var job = With("2026-03-10 Pair", Whole().SayOf("", HouseFacts.DrywallOn, "2026-03-12"));
        Assert.Equal([Phase.Pair, Phase.RoughIn], Now(job).Select(c => c.Line.NeededIn).Distinct());
    }

    private static TestJob Whole() => Jobs.Roughed().WithPanel("P1").Add(ItemKind.Hub, "Main").SayOf("Main", HubFacts.Type, "Hub")
        .SayOf("Roller", CoveringKindFacts.PartsPerUnit, "6 screws").SayOf("16/2", CableTypeFacts.PartsPerRun, "2 splice connectors, 4 nail plates");

    /// <summary>A unit with its hub, a remote at it, and a preset; nothing of them is marked.</summary>
    private static TestJob WithRemote()
    {
        var job = Whole().Say("W01", RunFacts.Panel, "P1").Say("W01", UnitFacts.Hub, "Main");
        job.Add(ItemKind.Remote, "Sofa").SayOf("Sofa", RemoteFacts.Type, "Wall remote").SayOf("Sofa", RemoteFacts.Room, "Kitchen")
            .SayOf("Sofa", RemoteFacts.Hub, "Main").SayOf("Sofa", RemoteFacts.Moves, "yes", job.Unit("W01").Id);
        return job.Do(new Draft("Evening").New(ItemKind.Preset, job.House.Remotes.Single().Id, out var preset)
            .PutStored(preset, PresetFacts.Position.Field(job.Unit("W01").Id), "40"));
    }

    private static TestJob With(string visit, TestJob job) => job.Do(QuickPeople.Visit(job.House, visit).Value);

    private static CallOff Of(TestJob job, string part) => All(job).Single(c => c.Line.Part.In(job.House) == part);

    private static ImmutableArray<CallOff> All(TestJob job) => CallOff.Of(job.House, job.Scribe.Log.Changes, HouseParts.Of(job.House));

    private static ImmutableArray<CallOff> Now(TestJob job) => CallOff.Now(job.House, All(job), Today);

    private static (DateOnly? Needed, DateOnly? OrderBy) Days(CallOff of) => (of.NeededBy, of.OrderBy);

    private static (CallOffState State, string Waiting) Stands(CallOff of) => (of.State, string.Join(", ", of.NotOrdered));

    private static DateOnly? Day(int month, int day) => new DateOnly(2026, month, day);
}
