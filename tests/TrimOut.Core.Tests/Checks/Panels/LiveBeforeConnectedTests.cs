using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class LiveBeforeConnectedTests
{
    private static readonly LiveBeforeConnected Check = new();

    public static Example Finds => new(() => Live("20.4"), j => j.SayOf("P1", PanelFacts.ConnectedOn, "2026-03-09"));

    public static Example Passes => new(() => Live("20.4"), j => j.SayOf("P1", PanelFacts.ConnectedOn, "2026-02-27"));

    // The volts are read on 2 March 2026.
    [Fact]
    public void TheSameDayIsFine() => Assert.IsType<Outcome.Fine>(Live().SayOf("P1", PanelFacts.ConnectedOn, "2026-03-02").Of(Check, "P1"));

    [Fact]
    public void TheDayAfterIsAStop() => Assert.Equal("Volts were read on P1 on 2026-03-02, and it was connected on 2026-03-03.",
        Live().SayOf("P1", PanelFacts.ConnectedOn, "2026-03-03").FaultOf(Check, "P1").Message);

    [Fact]
    public void ADayThatNobodyWroteIsNotAPass() => Assert.Equal("connected on", Live().MissingOf(Check, "P1"));

    [Fact]
    public void APanelOnWhichNothingWasReadSaysNothing() => Assert.Empty(Check.Run(Jobs.Walked().WithPanel().House));

    [Fact]
    public void TheFirstOfSeveralReadingsCounts()
    {
        var job = Live();
        job.Clock.Advance(TimeSpan.FromDays(3));
        job.Say("W01", RunFacts.LoadedVolts, "11.5").SayOf("P1", PanelFacts.ConnectedOn, "2026-03-03");
        Assert.Equal("Volts were read on P1 on 2026-03-02, and it was connected on 2026-03-03.", job.FaultOf(Check, "P1").Message);
    }

    private static TestJob Live(string volts = "12") => Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.OpenVolts, volts);
}
