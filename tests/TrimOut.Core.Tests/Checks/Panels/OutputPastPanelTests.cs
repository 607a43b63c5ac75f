using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OutputPastPanelTests
{
    private static readonly OutputPastPanel Check = new();

    public static Example Finds => new(Own, j => j.Say("W01", RunFacts.Output, "8"));

    public static Example Passes => new(Own, j => j.Say("W01", RunFacts.Output, "7"));

    [Fact]
    public void TheLastOutputIsFine() => On("10").Fine(Check, "W01");

    [Fact]
    public void TheOneAfterItIsAStop() => Assert.Equal("It lands on output 11; P1 has 10.", On("11").Fault(Check, "W01").Message);

    [Fact]
    public void ARunThatIsOnNoPanelIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "panel");

    private static TestJob On(string output) => Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, output);

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => On("5").SayOf("Invented supply", PanelTypeFacts.Outputs, "7");
}
