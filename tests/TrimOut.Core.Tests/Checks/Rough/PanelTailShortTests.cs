using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class PanelTailShortTests
{
    private static readonly PanelTailShort Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtPanel, "6\""));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtPanel, "60\""));

    // A new house plans 72 in.
    [Fact]
    public void HalfOfWhatIsPlannedIsFine() => Jobs.Roughed().Say("W01", RunFacts.TailAtPanel, "36\"").Fine(Check, "W01");

    [Fact]
    public void ASixteenthLessIsACaution()
    {
        var found = Jobs.Roughed().Say("W01", RunFacts.TailAtPanel, "35 15/16\"").Fault(Check, "W01");
        Assert.Equal("The tail at the panel is 35 15/16\"; 72\" is planned.", found.Message);
        Assert.StartsWith("Pull 36 1/16\" more to the mechanical room now", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void BehindTheDrywallThePanelMoves() => Assert.StartsWith("Hang the panel",
        Jobs.Roughed().Say("W01", RunFacts.TailAtPanel, "6\"").Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);

    [Fact]
    public void ATailThatNobodyMeasuredIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.TailAtPanel).Lacks(Check, "W01", "tail at panel");

    [Fact]
    public void WithoutAPlanNothingIsShort() =>
        Jobs.Roughed().SayOf("Test house", HouseFacts.PanelTail, "").Lacks(Check, "W01", "tail at panel, planned of the house");

    [Fact]
    public void TheWorkingTellsTheTailAndThePlan() =>
        Assert.Equal("tail at panel 6\", planned 72\"", Jobs.Roughed().Say("W01", RunFacts.TailAtPanel, "6").Fault(Check, "W01").Worked);

    [Fact]
    public void ARunThatBranchesOffHasNoTailAtThePanel() =>
        Jobs.Roughed("W02", Jobs.Roughed()).Say("W02", RunFacts.TailAtPanel, "6").Say("W02", RunFacts.BranchesOff, "W01").Silent(Check, "W02");
}
