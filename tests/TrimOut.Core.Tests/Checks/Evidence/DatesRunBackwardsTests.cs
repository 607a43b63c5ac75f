using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Tests.Decisions;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class DatesRunBackwardsTests
{
    private static readonly DatesRunBackwards Check = new();

    /// <summary>The clock of a test job stands on this day.</summary>
    private const string Today = "2026-03-02";

    public static Example Finds => new(() => On(HouseFacts.FramingOn, "2026-04-01"), j => Say(j, HouseFacts.DrywallOn, "2025-04-20"));

    public static Example Passes => new(() => On(HouseFacts.FramingOn, "2026-04-01"), j => Say(j, HouseFacts.DrywallOn, "2026-04-20"));

    [Theory]
    [InlineData("framing-on", "drywall-on", Phase.RoughIn)]
    [InlineData("framing-on", "painted-on", Phase.CloseIn)]
    [InlineData("drywall-on", "painted-on", Phase.CloseIn)]
    [InlineData("painted-on", "handover-on", Phase.Handover)]
    [InlineData("demonstrated-on", "accepted-on", Phase.Handover)]
    [InlineData("accepted-on", "warranty-from", Phase.Handover)]
    public void TwoDatesMayBeOneDayAndMayNotRunBackwards(string first, string then, Phase phase)
    {
        var (before, after) = (Fact(first), Fact(then));
        Assert.DoesNotContain(Check.Run(Say(On(before, Today), after, Today).House), r => r.Outcome is Outcome.Found);
        var result = Assert.Single(Check.Run(Say(On(before, Today), after, "2026-03-01").House), r => r.Outcome is Outcome.Found);
        Assert.Equal(phase, result.Check.Phase);
        Assert.Equal(then, ((Outcome.Found)result.Outcome).Mends.Field);
    }

    [Theory]
    [InlineData("2026-03-01", true)]
    [InlineData(Today, false)]
    [InlineData("2026-03-03", false)]
    [InlineData("2026-03-04", true)]
    public void WhatIsReplacedWasOrderedBeforeItAndIsNotWrittenBeforeItIsDone(string day, bool found)
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, Today).Serve($"W01 replaced {day}");
        Assert.Equal(found, Check.Run(job.House).Any(r => r is { Outcome: Outcome.Found { Mends.Field: "on" }, Check.Phase: Phase.Handover }));
    }

    [Theory]
    [InlineData(Today, "")]
    [InlineData("2026-03-01", "connected-on")]
    public void APanelThatWasReplacedAfterTheHandoverIsConnectedAfterThat(string connected, string field)
    {
        var job = Jobs.Roughed().WithPanel()
            .SayOf("Test house", HouseFacts.DemonstratedOn, "2026-02-01").SayOf("Test house", HouseFacts.HandoverOn, "2026-02-01")
            .Serve($"P1 replaced {Today}").SayOf("P1", PanelFacts.ConnectedOn, connected);
        Assert.Equal(field, string.Join(' ', Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Select(f => f.Mends.Field)));
    }

    [Fact]
    public void APanelThatWasReplacedBeforeTheHouseWasShownIsConnectedBeforeThat()
    {
        var job = Jobs.Roughed().WithPanel().SayOf("Test house", HouseFacts.DemonstratedOn, "2026-03-01")
            .Serve("P1 replaced 2026-02-20").SayOf("P1", PanelFacts.ConnectedOn, Today);
        Assert.Equal("connected-on", Assert.Single(Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>()).Mends.Field);
    }

    [Fact]
    public void BothDatesAreNamed() => Assert.Equal("Drywall starts is 2025-04-20, and framing walk, which comes first, is 2026-04-01.",
        Found(Say(On(HouseFacts.FramingOn, "2026-04-01"), HouseFacts.DrywallOn, "2025-04-20")));

    [Fact]
    public void ADateWithoutTheOneBeforeItIsNotAPass() => Assert.Equal("demonstrated on of the house", Jobs.Walked().SayOf("Test house",
        HouseFacts.AcceptedOn, Today).MissingOf(Check, "Test house"));

    [Fact]
    public void WhatAnotherCheckSaysOfMeasuresAndVoltsIsNotSaidTwice()
    {
        var measured = Say(Jobs.Measured(), HouseFacts.PaintedOn, "2026-03-03");
        Assert.Equal("measured-before-paint", Assert.Single(Of(measured, "measured-before-paint", Check.Info.Id)));
        var live = Jobs.Roughed().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.OpenVolts, "12.1")
            .SayOf("P1", PanelFacts.ConnectedOn, "2026-03-03");
        Assert.Equal("live-before-connected", Assert.Single(Of(live, "live-before-connected", Check.Info.Id)));

        static IEnumerable<string> Of(TestJob job, params string[] ids) => job.Report.Findings.Select(f => f.Check.Id).Where(ids.Contains);
    }

    [Fact]
    public void WhatIsBeingTypedIsSaidOnTheDayOnWhichItIsTyped()
    {
        var job = Jobs.Measured().Say("W01", UnitFacts.OrderedOn, Today);
        job.Clock.Advance(TimeSpan.FromDays(1));
        var draft = SetFact.Typed(job.House, job.Unit("W01").Item, UnitFacts.BoxLabel, "W01").Value;
        Assert.DoesNotContain(Check.Run(HouseLog.Preview(job.House, draft, job.Clock.GetLocalNow())), r => r.Outcome is Outcome.Found);
        Assert.Contains(Check.Run(HouseLog.Preview(job.House, draft, job.Clock.GetLocalNow().AddDays(-2))), r => r.Outcome is Outcome.Found);
    }

    [Fact]
    public void ASheetThatWasFrozenBeforeTheMeasuresIsACaution()
    {
        var job = Jobs.Measured();
        job.Clock.Advance(TimeSpan.FromDays(9));
        job.Say("W01", UnitFacts.OrderedOn, Today).Fine(Check, "W01");
        job.Say("W01", UnitFacts.OrderedOn, "2026-03-01");
        Assert.Equal("Ordered on is 2026-03-01, and the opening was measured on 2026-03-02.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void WhatIsCopiedFromPaperInOneDayIsNotHeldAgainstTheDayOfTyping() =>
        Jobs.Measured().Say("W01", UnitFacts.OrderedOn, "2026-02-10").Fine(Check, "W01");

    [Fact]
    public void ASheetWithoutMeasuresIsNotAPass() => Jobs.Walked().Say("W01", UnitFacts.OrderedOn, Today).Lacks(Check, "W01", "width, top");

    [Theory]
    [InlineData("framing-on", "demonstrated-on")]
    [InlineData("painted-on", "demonstrated-on")]
    [InlineData("framing-on", "binder-given-on")]
    public void NothingIsShownOrGivenBeforeItIsBuilt(string first, string then)
    {
        Assert.DoesNotContain(Check.Run(Say(On(Fact(first), Today), Fact(then), Today).House), r => r.Outcome is Outcome.Found);
        Assert.Single(Check.Run(Say(On(Fact(first), Today), Fact(then), "2026-03-01").House), r => r.Outcome is Outcome.Found);
    }

    [Fact]
    public void AnOrderComesBeforeItsBoxAndBeforeTheHandover()
    {
        Assert.StartsWith("Box expected on is 2026-01-31, and ordered on", Found(Ordered("2026-02-01").Say("W01", UnitFacts.ExpectedOn, "2026-01-31")),
            StringComparison.Ordinal);
        Assert.StartsWith("Reordered on is 2026-01-31, and ordered on", Found(Ordered("2026-02-01").Say("W01", UnitFacts.ReorderedOn, "2026-01-31")),
            StringComparison.Ordinal);
        Assert.StartsWith("Handover is 2026-01-31, and ordered on", Found(Say(Ordered("2026-02-01"), HouseFacts.HandoverOn, "2026-01-31")),
            StringComparison.Ordinal);
        Assert.StartsWith("Demonstrated on is 2026-01-31, and ordered on", Found(Say(Ordered("2026-02-01"), HouseFacts.DemonstratedOn, "2026-01-31")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void APanelIsConnectedAfterFramingAndBeforeItIsShown()
    {
        Assert.StartsWith("Connected on is 2026-02-01, and framing walk", Found(Say(Connected("2026-02-01"), HouseFacts.FramingOn, "2026-02-02")),
            StringComparison.Ordinal);
        Assert.StartsWith("Handover is 2026-01-31, and connected on", Found(Say(Connected("2026-02-01"), HouseFacts.HandoverOn, "2026-01-31")),
            StringComparison.Ordinal);
    }

    [Fact]
    public void ASealIsSeenBeforeTheWallCloses()
    {
        var job = Say(Jobs.Roughed(), HouseFacts.DrywallOn, "2026-02-09");
        var leg = job.Run("W01").Legs[0].Id;
        job.Do(j => Core.Decisions.SetFact.Typed(j.House, j.House.Find(leg)!, LegFacts.FireBarrier, "yes"));
        job.Do(j => Core.Decisions.SetFact.Typed(j.House, j.House.Find(leg)!, LegFacts.SealSeenOn, "2026-02-09"));
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
        job.Do(j => Core.Decisions.SetFact.Typed(j.House, j.House.Find(leg)!, LegFacts.SealSeenOn, "2026-02-10"));
        Assert.Equal("Drywall starts is 2026-02-09, and seal seen on, which comes first, is 2026-02-10.", Found(job));
    }

    [Fact]
    public void WhatIsDoneWasDoneWhenItWasWritten()
    {
        Assert.DoesNotContain(Check.Run(On(HouseFacts.BinderGivenOn, "2026-03-03").House), r => r.Outcome is Outcome.Found);
        Assert.Equal("Binder given on is 2026-03-04, and that was written on 2026-03-02, before it could be done.",
            Found(On(HouseFacts.BinderGivenOn, "2026-03-04")));
        Assert.StartsWith("Ordered on is 2030-01-01, and that was written on", Found(Ordered("2030-01-01")), StringComparison.Ordinal);
        Assert.StartsWith("Connected on is 2030-01-01, and that was written on", Found(Connected("2030-01-01")), StringComparison.Ordinal);
        Assert.DoesNotContain(Check.Run(On(HouseFacts.HandoverOn, "2030-01-01").House), r => r.Outcome is Outcome.Found);
    }

    [Fact]
    public void ABoxIsNotReadBeforeItsUnitIsOrdered()
    {
        var job = Ordered(Today).Say("W01", UnitFacts.BoxLabel, "W01");
        job.Clock.Advance(TimeSpan.FromDays(9));
        job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fine(Check, "W01");
        job.Say("W01", UnitFacts.OrderedOn, "2026-03-03");
        Assert.Equal("Ordered on is 2026-03-03, and its box was read on 2026-03-02.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void ABoxThatIsCopiedFromPaperWithItsOrderIsNotHeldAgainstTheDayOfTyping() =>
        Ordered("2026-03-03").Say("W01", UnitFacts.BoxLabel, "W01").Fine(Check, "W01");

    [Fact]
    public void TheFirstLoopIsReadBeforeTheSecond()
    {
        var job = Jobs.Walked().Say("W01", RunFacts.SecondLoop, "0.57").Say("W01", RunFacts.FirstLoop, "0.57");
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
        job = Jobs.Walked().Say("W01", RunFacts.SecondLoop, "0.57");
        job.Clock.Advance(TimeSpan.FromDays(1));
        job.Say("W01", RunFacts.FirstLoop, "0.57");
        Assert.Equal("First test, loop was written on 2026-03-03, and second test, loop, which comes after it, on 2026-03-02.",
            Found(job));
        job.Say("W01", RunFacts.SecondLoop, "0.58");
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
    }

    [Fact]
    public void AFirstLoopThatIsPutRightWasReadWhenItWasFirstWritten()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.SecondLoop, "0.57");
        job.Clock.Advance(TimeSpan.FromDays(1));
        job.Say("W01", RunFacts.FirstLoop, "0.58");
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
    }

    private static TestJob Ordered(string on) => Jobs.Measured().Say("W01", UnitFacts.OrderedOn, on);

    private static TestJob Connected(string on) => Jobs.Walked().WithPanel().SayOf("P1", PanelFacts.ConnectedOn, on);

    private static string Found(TestJob job) =>
        Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Single().Message.In(job.House);

    private static TestJob On(Fact fact, string day) => Say(new TestJob(), fact, day);

    private static TestJob Say(TestJob job, Fact fact, string day) => job.SayOf("Test house", fact, day);

    private static Fact Fact(string name) => FactTable.Find(ItemKind.House, name)!;

    // The first of its measures on the 2nd, another one on the 4th, the order of the 3rd typed on the 5th: it was measured before it was ordered.
    [Fact]
    public void TheFirstMeasureOfAWindowCounts()
    {
        var job = Jobs.Walked().Say("W01", WindowFacts.WidthTop, "36");
        job.Clock.Advance(TimeSpan.FromDays(2));
        job.Say("W01", WindowFacts.WidthBottom, "36");
        job.Clock.Advance(TimeSpan.FromDays(1));
        job.Say("W01", UnitFacts.OrderedOn, "2026-03-03");
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
    }

    [Theory]
    [InlineData("handover-on", "2026-03-01", "ordered-on", Phase.Order)]
    [InlineData("framing-on", "2026-03-20", "connected-on", Phase.Power)]
    public void TheDayThatIsAskedAboutIsTheOneToPutRight(string fact, string day, string field, Phase phase)
    {
        var job = Say(Ordered("2026-03-02").WithPanel().SayOf("P1", PanelFacts.ConnectedOn, "2026-03-03"), Fact(fact), day);
        var result = Check.Run(job.House).First(r => r.Outcome is Outcome.Found f && f.Mends.Field == field);
        Assert.Equal(phase, result.Check.Phase);
    }

    [Theory]
    [InlineData("framing-on", "demonstrated-on")]
    [InlineData("painted-on", "demonstrated-on")]
    [InlineData("framing-on", "binder-given-on")]
    public void NothingIsShownOrGivenBeforeItIsFramedAndPainted(string first, string then)
    {
        var job = Say(On(Fact(first), Today), Fact(then), Today);
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
        var result = Assert.Single(Check.Run(Say(job, Fact(then), "2026-03-01").House), r => r.Outcome is Outcome.Found);
        Assert.Equal((Phase.Handover, then), (result.Check.Phase, ((Outcome.Found)result.Outcome).Mends.Field));
    }

    [Theory]
    [InlineData("width-top")]
    [InlineData("width-middle")]
    [InlineData("width-bottom")]
    [InlineData("height-left")]
    [InlineData("height-middle")]
    [InlineData("height-right")]
    public void WhicheverMeasureWasTakenFirstAnOrderComesAfterIt(string measure)
    {
        var job = Jobs.Walked().Say("W01", FactTable.Find(ItemKind.Window, measure)!, "36");
        job.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal("Ordered on is 2026-03-01, and the opening was measured on 2026-03-02.", Found(job.Say("W01", UnitFacts.OrderedOn, "2026-03-01")));
        Assert.DoesNotContain(Check.Run(job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").House), r => r.Outcome is Outcome.Found);
    }

    [Theory]
    [InlineData("box-label", "W01")]
    [InlineData("delivered-width", "36")]
    [InlineData("delivered-height", "60")]
    [InlineData("serial", "77")]
    public void WhateverIsReadOfABoxIsReadAfterItsOrder(string read, string typed)
    {
        var job = Jobs.Measured().Say("W01", FactTable.Find(ItemKind.Unit, read)!, typed);
        job.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal("Ordered on is 2026-03-03, and its box was read on 2026-03-02.", Found(job.Say("W01", UnitFacts.OrderedOn, "2026-03-03")));
        Assert.DoesNotContain(Check.Run(job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").House), r => r.Outcome is Outcome.Found);
    }

    [Theory]
    [InlineData("demonstrated-on")]
    [InlineData("accepted-on")]
    [InlineData("binder-given-on")]
    public void WhatIsStillToComeIsNotDone(string fact)
    {
        string[] Told(string day) => [.. Check.Run(On(Fact(fact), day).House).Select(r => r.Outcome).OfType<Outcome.Found>()
            .Select(f => f.Message.Args.Count == 1 ? f.Mends.Field : "")];
        Assert.Empty(Told("2026-03-03"));
        Assert.Equal([fact], Told("2026-03-04"));
    }

    [Fact]
    public void AnOrderThatIsStillToComeOrASecondOneIsNotPlaced()
    {
        Assert.StartsWith("Reordered on is 2026-03-04, and that was written on 2026-03-02",
            Found(Ordered(Today).Say("W01", UnitFacts.ReorderedOn, "2026-03-04")), StringComparison.Ordinal);
        var job = Jobs.Roughed();
        var leg = job.Run("W01").Legs[0].Id;
        job.Do(j => SetFact.Typed(j.House, j.House.Find(leg)!, LegFacts.FireBarrier, "yes"));
        job.Do(j => SetFact.Typed(j.House, j.House.Find(leg)!, LegFacts.SealSeenOn, "2026-03-04"));
        Assert.StartsWith("Seal seen on is 2026-03-04, and that was written on 2026-03-02", Found(job), StringComparison.Ordinal);
        job.Do(j => SetFact.Typed(j.House, j.House.Find(leg)!, LegFacts.FireBarrier, "no"));
        Assert.DoesNotContain(Check.Run(job.House), r => r.Outcome is Outcome.Found);
    }

    [Fact]
    public void SeveralOfOnePhaseAreToldTogetherAndTheFirstIsPutRight()
    {
        var job = Ordered("2026-02-01").Say("W01", UnitFacts.ExpectedOn, "2026-01-31").Say("W01", UnitFacts.ReorderedOn, "2026-01-30");
        Assert.Equal("Box expected on is 2026-01-31, and ordered on, which comes first, is 2026-02-01. " +
            "Reordered on is 2026-01-30, and ordered on, which comes first, is 2026-02-01.", Found(job));
        var found = Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Single();
        Assert.Equal("expected-on", found.Mends.Field);
        Assert.StartsWith("Put right the date that is wrong", found.Mend.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void AnOrderWithoutMeasuresIsNotAPass() => Jobs.Walked().Say("W01", UnitFacts.OrderedOn, Today).Lacks(Check, "W01", "width, top");

    [Fact]
    public void ALoopThatWasReadTooLateIsReadAgain()
    {
        var job = Jobs.Walked().Say("W01", RunFacts.SecondLoop, "0.57");
        job.Clock.Advance(TimeSpan.FromDays(1));
        job.Say("W01", RunFacts.FirstLoop, "0.57");
        var result = Assert.Single(Check.Run(job.House), r => r.Outcome is Outcome.Found);
        Assert.Equal((Phase.CloseIn, "second-loop"), (result.Check.Phase, ((Outcome.Found)result.Outcome).Mends.Field));
        Assert.StartsWith("See of which day the reading is.", ((Outcome.Found)result.Outcome).Mend.In(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void ADateThatIsMissingIsToldBesideOnesThatAreInOrder()
    {
        var job = Say(Say(On(HouseFacts.PaintedOn, "2026-02-01"), HouseFacts.HandoverOn, Today), HouseFacts.AcceptedOn, Today);
        var atHandover = Assert.Single(Check.Run(job.House), r => r.Check.Phase == Phase.Handover);
        var missing = Assert.IsType<Outcome.NotChecked>(atHandover.Outcome);
        Assert.Equal("demonstrated on of the house", missing.Missing.In(job.House));
    }
}
