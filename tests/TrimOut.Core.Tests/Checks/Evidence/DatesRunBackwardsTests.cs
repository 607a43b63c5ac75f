using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
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

    private static string Found(TestJob job) =>
        Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Single().Message.In(job.House);

    private static TestJob On(Fact fact, string day) => Say(new TestJob(), fact, day);

    private static TestJob Say(TestJob job, Fact fact, string day) => job.SayOf("Test house", fact, day);

    private static Fact Fact(string name) => FactTable.Find(ItemKind.House, name)!;
}
