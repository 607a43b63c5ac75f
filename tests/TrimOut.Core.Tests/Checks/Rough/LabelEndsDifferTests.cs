using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class LabelEndsDifferTests
{
    private static readonly LabelEndsDiffer Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.LabelAtPanel, "W10"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.LabelAtPanel, "w01"));

    [Fact]
    public void TheSameWordsAtBothEndsAreFine() => Jobs.Roughed().Say("W01", RunFacts.LabelAtPanel, "w01").Fine(Check, "W01");

    [Fact]
    public void OtherWordsAtOneEndAreACaution() =>
        Assert.Equal("It says \"W01\" at the window and \"W10\" in the mechanical room.", Jobs.Roughed().Say("W01", RunFacts.LabelAtPanel, "W10")
            .Fault(Check, "W01").Message);

    [Fact]
    public void AnUnknownLabelIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.LabelAtPanel).Lacks(Check, "W01", "label at panel");
}
