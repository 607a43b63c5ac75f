using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.InService;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

/// <summary>What is asked again when something is replaced: common practice, no published source.</summary>
public class RecordServiceTests
{
    [Fact]
    public void AUnitThatIsReplacedIsHungSplicedPairedAndSetAgainAndNothingElseIs()
    {
        var job = ServedHouse.Of().Serve("W01 replaced 2027-03-02 @Ash Example, serial B-7, claim C-17, motor grinds");
        Assert.Equal(["box-matched", "looked-over", "clicked-in", "cords-safe", "moves-free", "spliced", "volts-read", "hub-paired", "remotes-paired",
            "moved-by-all", "open-limit", "close-limit", "level-with-neighbours", "preset-stored"], job.Open("W01"));
        Assert.Empty(job.Open("W02"));
        Assert.Empty(job.Open("P1"));
        Assert.Empty(job.Open("Test house"));
        var service = Assert.Single(job.House.Services);
        Assert.Equal("W01 replaced 2027-03-02", service.Name);
        Assert.Equal(("Ash Example", "motor grinds", "A-W01", "C-17"), (service.Show(ServiceFacts.By), service.Show(ServiceFacts.Cause),
            service.Show(ServiceFacts.OldSerial), service.Claim));
        Assert.Equal("B-7", service.NewSerial);
    }

    [Fact]
    public void WithoutItsSerialTheSerialIsAskedToo()
    {
        var job = ServedHouse.Of().Serve("W01 replaced");
        Assert.Contains("serial-noted", job.Open("W01"));
        Assert.Null(job.Unit("W01").Item.Get(UnitFacts.Serial));
        Assert.Equal("B-7", Assert.Single(job.Say("W01", UnitFacts.Serial, "B-7").House.Services).NewSerial);
    }

    [Fact]
    public void WhatWasReadOfTheOldOneIsReadAgainAndWhatWasPlannedStays()
    {
        var unit = ServedHouse.Of().Serve("W01 replaced, serial B-7").Unit("W01");
        Assert.All(new Fact[] { UnitFacts.OpenGap, UnitFacts.CloseGap, UnitFacts.CordConfirmedBy, UnitFacts.OutOfLevel },
            f => Assert.Equal("", unit.Show(f)));
        Assert.All(new Fact[] { RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity }, f => Assert.Equal("", unit.Run!.Show(f)));
        Assert.Equal(("Attic", "Shade W01", "P1", "1", "this window"), (unit.Show(UnitFacts.Hub), unit.Show(UnitFacts.HubName), unit.Run!.Show(RunFacts.Panel),
            unit.Run.Show(RunFacts.Output), unit.Run.Show(RunFacts.WentDead)));
    }

    [Fact]
    public void AMotorThatIsReplacedAsksNeitherSerialNorCords()
    {
        var job = ServedHouse.Of().Serve("W01 motor replaced");
        Assert.DoesNotContain("cords-safe", job.Open("W01"));
        Assert.Contains("open-limit", job.Open("W01"));
        Assert.Equal("A-W01", job.Unit("W01").Show(UnitFacts.Serial));
    }

    [Theory]
    [InlineData("Hall battery changed")]
    [InlineData("W01 part replaced, bracket bent")]
    [InlineData("W01 repaired")]
    [InlineData("yearly visit")]
    public void WhatLeavesMotorAndRadioAsTheyWereAsksNothing(string line)
    {
        var job = ServedHouse.Of().Serve(line);
        Assert.Empty(AskedAgain.Waiting(job.House));
        Assert.Single(job.House.Services);
    }

    [Fact]
    public void AHubThatIsReplacedIsPairedWithEveryUnitThatWasPairedWithIt()
    {
        var job = ServedHouse.Of().Serve("Attic replaced");
        Assert.All(new[] { "W01", "W02" }, tag => Assert.Equal(["hub-paired", "moved-by-all"], job.Open(tag)));
        Assert.Equal("Attic", job.Unit("W02").Show(UnitFacts.Hub));
    }

    /// <summary>What a remote that counts at the hub does goes through it, and so does what a timer calls.</summary>
    [Fact]
    public void AHubThatIsReplacedLosesRemotesAndPresetsThatItHeld()
    {
        var job = ServedHouse.Of().SayOf("Hall", RemoteFacts.Hub, "Attic").Serve("Attic replaced");
        Assert.Equal(["hub-paired", "remotes-paired", "moved-by-all", "preset-stored"], job.Open("W01"));
        Assert.Equal(["hub-paired", "remotes-paired", "moved-by-all"], job.Open("W02"));
        Assert.Equal(["hub-paired", "moved-by-all", "preset-stored"],
            ServedHouse.Of().SayOf("Evening", PresetFacts.RunsAt, "19:00").Serve("Attic replaced").Open("W01"));
        Assert.Equal(["remotes-paired", "moved-by-all"],
            ServedHouse.Of().Add(ItemKind.Hub, "Loft").SayOf("Hall", RemoteFacts.Hub, "Loft").Serve("Loft replaced").Open("W02"));
    }

    /// <summary>What hangs there came in some box, also where what was read of the box before it is to be read again.</summary>
    [Fact]
    public void AUnitThatWasReplacedIsHereAndItsDeliveryIsLookedAtAgain()
    {
        var job = ServedHouse.Of().Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", UnitFacts.Damage, "none").Say("W01", UnitFacts.ExpectedOn, "2026-05-01")
            .Serve("W01 replaced");
        Assert.Equal(("", "", true), (job.Unit("W01").Show(UnitFacts.BoxLabel), job.Unit("W01").Show(UnitFacts.Damage), job.Unit("W01").BoxIsHere));
        Assert.DoesNotContain(HouseHead.Of(job.House, StepList.Shipped, new DateOnly(2027, 3, 3)).Waiting, w => w.For == WaitsFor.Maker);
    }

    [Theory]
    [InlineData("W01 repaired 2027-03-01", true)]
    [InlineData("W01 repaired 2027-03-02", false)]
    [InlineData("W01 replaced 2027-03-05, serial B-7", false)]
    [InlineData("W02 replaced 2027-03-05", true)]
    [InlineData("yearly visit 2027-03-05", true)]
    public void WhatFailedWaitsForTheMakerUntilItIsReplacedOrRepaired(string line, bool waits)
    {
        var job = ServedHouse.Of().Serve("W01 failed 2027-03-02 @Ash Example, claim C-17, motor dead");
        Assert.Empty(AskedAgain.Waiting(job.House));
        Assert.Contains("W01 failed 2027-03-02: waits for the maker, claim C-17.", Due(job));
        Assert.Contains((WaitsFor.Maker, 1), Head(job));
        job.Do(QuickService.Read(job.House, line, new DateOnly(2027, 3, 5)));
        Assert.Equal(waits, Due(job).Exists(d => d.Contains("W01 failed", StringComparison.Ordinal)));
        Assert.Equal(waits, Head(job).Contains((WaitsFor.Maker, 1)));
    }

    [Fact]
    public void AClaimThatWasRefusedEndsTheWaitingAndNotTheFailure()
    {
        var job = ServedHouse.Of().Serve("W01 failed 2027-03-02, claim C-17, refused");
        Assert.Contains("W01 failed 2027-03-02: not repaired, and claim C-17 came to refused.", Due(job));
        Assert.DoesNotContain(Head(job), w => w.For == WaitsFor.Maker);
        Assert.False(QuickService.Read(job.House, "failed", new DateOnly(2027, 3, 2)).Ok);
    }

    private static List<string> Due(TestJob job) => [.. DueInService.Of(job.House, new DateOnly(2027, 3, 5)).Select(d => d.Say.In(job.House))];

    private static ImmutableArray<(WaitsFor For, int Units)> Head(TestJob job) => HouseHead.Of(job.House, StepList.Shipped, new DateOnly(2027, 3, 5)).Waiting;

    [Fact]
    public void ARemoteThatIsReplacedIsPairedWithWhatItMovesAndStoresItsPresetsAgain()
    {
        var job = ServedHouse.Of().Serve("Hall replaced");
        Assert.Equal(["remotes-paired", "moved-by-all", "preset-stored"], job.Open("W01"));
        Assert.Equal(["remotes-paired", "moved-by-all"], job.Open("W02"));
        Assert.Empty(ServedHouse.Of().Serve("Bed replaced").Open("W01"));
    }

    [Fact]
    public void APanelThatIsReplacedIsForTheElectricianAndEachOfItsOutputsIsTestedAgain()
    {
        var job = ServedHouse.Of().Serve("P1 replaced");
        Assert.Equal(["panel-hung", "mains-connected", "off-before-joints"], job.Open("P1"));
        Assert.Equal(["landed", "volts-read", "output-proved"], job.Open("W02"));
        var panel = job.House.Panels[0];
        Assert.Equal(("", "", "12"), (panel.Show(PanelFacts.ConnectedBy), panel.Show(PanelFacts.Licence), panel.Show(PanelFacts.Breaker)));
        Assert.Equal("2", job.Run("W02").Show(RunFacts.Output));
    }

    [Fact]
    public void WhatWasNotNeededIsNotAskedAgain()
    {
        var job = ServedHouse.Of();
        job.Do(MarkStep.NotNeeded(job.Unit("W02"), StepList.Find("preset-stored")!, "no preset moves it")).Serve("W02 replaced");
        Assert.DoesNotContain("preset-stored", job.Open("W02"));
    }

    [Fact]
    public void TheEarlierMarksStayInTheHistoryAndOneUndoBringsAllBack()
    {
        var job = ServedHouse.Of();
        var (before, marks) = (job.House, job.Scribe.Log.Changes.Count(c => c.Edits.Any(e => e is Edit.Put { Field: "step:open-limit", Value: "done" })));
        job.Serve("W01 replaced, serial B-7").Mark("W01", "clicked-in");
        Assert.Equal(marks, job.Scribe.Log.Changes.Count(c => c.Edits.Any(e => e is Edit.Put { Field: "step:open-limit", Value: "done" })));
        Assert.True(job.Scribe.Undo().Ok);
        Assert.True(job.Scribe.Undo().Ok);
        Assert.Empty(job.House.Services);
        Assert.Empty(job.Open("W01"));
        Assert.Equal(before.Items.Values.SelectMany(i => i.Fields.Select(f => (i.Id, f.Key, i.Latest(f.Key)?.Stored))).Where(f => f.Stored is not null),
            job.House.Items.Values.Where(i => before.Find(i.Id) is not null)
                .SelectMany(i => i.Fields.Select(f => (i.Id, f.Key, i.Latest(f.Key)?.Stored))).Where(f => f.Stored is not null));
    }

    /// <summary>A house of the first release was complete by a shorter list of steps, and by less evidence.</summary>
    [Fact]
    public void APhaseThatWasCompleteByAnEarlierListIsHeldToItAlsoWhileItsStepsAreAskedAgain()
    {
        var earlier = new StepList(StepList.All.Where(s => s.Since == 1).Select(s => s with
        {
            Evidence = [.. s.Evidence.Where(f => s.SinceOf(f) == 1)],
            Later = System.Collections.Immutable.ImmutableDictionary<Fact, int>.Empty,
            AlsoSince = 1,
            UndecidedSince = 1,
            LaterMissingSince = 1,
        }));
        var old = new TestJob(steps: earlier).Window("W01").Add(ItemKind.Remote, "Hall");
        foreach (var step in earlier.Steps.Where(s => s.Subject == ItemKind.Unit && s.Applies(old.Unit("W01"))))
            old.Mark("W01", step.Id);
        var job = new TestJob(store: new MemoryStore("tablet", old.Scribe.Log.Changes));
        job.Serve("W01 replaced, serial B-7");
        Assert.Contains("clicked-in", AskedAgain.Waiting(job.House).Select(w => w.Step.Id));
        Assert.DoesNotContain(StepList.Of(Phase.Hang, job.Unit("W01")), s => s.Id == "cords-safe");
        foreach (var (subject, step, _) in AskedAgain.Waiting(job.House).ToList())
            job.Mark(subject.Name, step.Id);
        Assert.Empty(Progress.Next(job.Unit("W01")) is { } next ? [next.Id] : Array.Empty<string>());
    }

    [Fact]
    public void TheHistorySaysWhatIsAskedAgain() => Assert.Equal(
        "Hall replaced on 2027-03-02; asked again of W01, W02: Paired with its remotes, Moved from every remote, Preset stored",
        ServedHouse.Of().Serve("Hall replaced").Scribe.Log.Changes[^1].What);

    [Fact]
    public void NothingInTheHistoryIsTakenForSomethingThatDoesNotCount() =>
        Assert.Empty(NotCounted.Of(ServedHouse.Of().Serve("W01 replaced").Scribe.Log));

    [Fact]
    public void TheLifeOfAUnitHasTheSerialOfEachOne()
    {
        var today = new DateOnly(2028, 5, 1);
        var job = ServedHouse.Of().Serve("W01 replaced 2027-03-02, serial B-7").Serve("W01 repaired 2027-09-01", today)
            .Serve("W01 replaced 2028-05-01, serial C-9", today);
        Assert.Equal([("A-W01", "B-7"), ("", null), ("B-7", "C-9")],
            Service.Of(job.House, job.Unit("W01").Item).Select(s => (s.Show(ServiceFacts.OldSerial), s.NewSerial)));
    }

    [Fact]
    public void OnceAllIsDoneAgainNothingIsSaidOfItAnyMore()
    {
        var job = ServedHouse.Of().Serve("Hall replaced");
        Assert.Equal(3, job.Report.Findings.Count(f => f.Check.Id == "step-passed-over" && f.Check.Severity == Severity.Caution));
        foreach (var (subject, step, _) in AskedAgain.Waiting(job.House).ToList())
            job.Mark(subject.Name, step.Id);
        Assert.DoesNotContain(job.Report.Findings, f => f.Check.Id == "step-passed-over");
        Assert.Empty(AskedAgain.Waiting(job.House));
    }

    [Fact]
    public void AReplacementThatIsEnteredLateLeavesTheSerialOfTodayAlone()
    {
        var job = ServedHouse.Of().Serve("W01 replaced 2026-11-01, serial NEWEST").Mark("W01", "clicked-in").Serve("W01 replaced 2026-10-15, serial OLDER");
        Assert.Equal("NEWEST", job.Unit("W01").Show(UnitFacts.Serial));
        Assert.Equal([("A-W01", "OLDER"), ("OLDER", "NEWEST")], Life(job));
        Assert.DoesNotContain("clicked-in", job.Open("W01"));
        Assert.DoesNotContain(job.Report.Findings, f => f.Check.Id == "serial-twice");
        Assert.Contains("hangs there now", QuickService.Read(job.House, "W01 replaced 2026-10-20, serial NEWEST").Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoCopiesThatReplacedAUnitHaveBothLivesByTheirDaysAndTheStepsAreAskedAgain()
    {
        var served = ServedHouse.Of();
        var (one, two) = (new TestJob(store: new MemoryStore("laptop-a", served.Scribe.Log.Changes)),
            new TestJob(store: new MemoryStore("laptop-b", served.Scribe.Log.Changes)));
        one.Serve("W01 replaced 2026-11-01, serial NEW-A").Mark("W01", "clicked-in");
        two.Serve("W01 replaced 2026-11-03, serial NEW-B").Say("W01", UnitFacts.Serial, "NEW-B2");
        var merged = new TestJob(store: new MemoryStore("laptop-c", Merge.Of(one.Scribe.Log, two.Scribe.Log).Value.Merged.Changes));
        Assert.Equal([("A-W01", "NEW-A"), ("NEW-A", merged.Unit("W01").Show(UnitFacts.Serial) == "NEW-A" ? "NEW-B" : "NEW-B2")], Life(merged));
        Assert.Contains("clicked-in", merged.Open("W01"));
        Assert.Contains(AskedAgain.Waiting(merged.House), w => w.Step.Id == "clicked-in" && w.Since.Name == "W01 replaced 2026-11-03");
        Assert.Contains("W01: Clicked in:", Conflict.All(merged.House).Select(c => c.About));
    }

    [Fact]
    public void WhatIsReplacedTwiceWaitsSinceTheLaterDay()
    {
        var job = ServedHouse.Of().Serve("Attic replaced 2026-11-01").Serve("Attic replaced 2026-12-01");
        Assert.All(AskedAgain.Waiting(job.House), w => Assert.Equal("Attic replaced 2026-12-01", w.Since.Name));
        Assert.NotEmpty(AskedAgain.Waiting(job.House));
    }

    [Fact]
    public void ARecordThatIsRemovedTakesItsSerialWithIt()
    {
        var job = ServedHouse.Of().Serve("W01 replaced 2026-11-01, serial AAA").Serve("W01 replaced 2026-12-01, serial BBB");
        job.Do(j => RemoveItems.Remove(j.House, j.House.Services.Last().Item));
        Assert.Equal("AAA", job.Unit("W01").Show(UnitFacts.Serial));
        Assert.Equal([("A-W01", "AAA")], Life(job));
    }

    private static IEnumerable<(string?, string?)> Life(TestJob job) =>
        Service.Of(job.House, job.Unit("W01").Item).Where(s => s.Kind == ServiceKind.Replaced).Select(s => (s.TakenOff, s.NewSerial));

    [Fact]
    public void WhatARemovedRecordTookBackIsAskedByTheOneThatIsWrittenInItsPlace()
    {
        var job = ServedHouse.Of().Serve("W01 replaced");
        job.Do(RemoveItems.Remove(job.House, Assert.Single(job.House.Services).Item)).Serve("W01 motor replaced");
        Assert.Contains(AskedAgain.Waiting(job.House), w => w.Subject.Name == "W01" && w.Step.Id == "open-limit" && w.Since.Kind == ServiceKind.MotorReplaced);
        Assert.Contains("spliced", AskedAgain.Waiting(job.House).Select(w => w.Step.Id));
    }

    [Fact]
    public void WhatFailsOnTheDayOnWhichItWasReplacedIsAnOpenFailure()
    {
        var job = ServedHouse.Of().Serve("W01 replaced, serial B-7").Serve("W01 failed, claim C-5");
        Assert.True(job.House.Services.Single(s => s.Kind == ServiceKind.Failed).IsOpenFailure);
        Assert.Contains(DueInService.Failures(job.House), d => d.Say.In(job.House).Contains("C-5", StringComparison.Ordinal));
        Assert.Empty(DueInService.Failures(job.Serve("W01 replaced, serial B-8").House));
    }

    [Fact]
    public void CordsThatWereReadAndNeverMarkedAreLookedAtAgainWhenAnotherUnitHangsThere()
    {
        var job = ServedHouse.Of();
        var step = StepList.Find("cords-safe")!;
        job.Do(MarkStep.Clear(job.Unit("W01"), step));
        Assert.NotNull(job.Unit("W01").Item.Get(UnitFacts.FreeCord));
        job.Serve("W01 replaced, serial B-7");
        Assert.Contains(AskedAgain.Waiting(job.House), w => w.Subject.Name == "W01" && w.Step == step);
        Assert.Null(job.Unit("W01").Item.Get(UnitFacts.CordConfirmedBy));
    }

    [Fact]
    public void AnOutcomeClosesEveryRecordOfItsClaim()
    {
        var job = ServedHouse.Of().Serve("W01 failed 2027-02-01, claim C-5").Serve("W02 failed 2027-02-01, claim C-6")
            .Serve("W01 replaced, claim c-5, granted");
        Assert.Equal(["C-6"], job.House.Services.Where(s => s.ClaimIsOpen).Select(s => s.Claim));
        Assert.Equal([ClaimOutcome.Granted, ClaimOutcome.Granted], job.House.Services.Where(s => s.About!.Id == job.Unit("W01").Id).Select(s => s.Outcome));
    }

    [Theory]
    [InlineData("yearly visit 2027-03-03")]
    [InlineData("W01 replaced 2027-03-03")]
    public void WhatIsStillToComeIsAVisitAndNotDone(string line)
    {
        Assert.Equal("2027-03-03 is still to come: plan it as a visit under People and dates (P), and record it once it is done.",
            QuickService.Read(ServedHouse.Of().House, line, new DateOnly(2027, 3, 2)).Reason);
        Assert.True(QuickService.Read(ServedHouse.Of().House, line, new DateOnly(2027, 3, 3)).Ok);
    }
}
