using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OutputPastPanelTests
{
    private static readonly OutputPastPanel Check = new();

    public static Example Finds => new(() => On("9"), j => j.Say("W01", RunFacts.Output, "11"));

    public static Example Passes => new(() => On("9"), j => j.Say("W01", RunFacts.Output, "10"));

    [Fact]
    public void TheLastOutputIsFine() => On("10").Fine(Check, "W01");

    [Fact]
    public void TheOneAfterItIsAStop() => Assert.Equal("It lands on output 11; P1 has 10.", On("11").Fault(Check, "W01").Message);

    [Fact]
    public void ARunThatIsOnNoPanelIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "panel");

    private static TestJob On(string output) => Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, output);
}
