using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class LabelTwiceTests
{
    private static readonly LabelTwice Check = new();

    public static Example Finds => new(() => Jobs.Roughed("W02", Jobs.Roughed()), j => j.Say("W02", RunFacts.LabelAtPanel, "W01"));

    public static Example Passes => new(() => Jobs.Roughed("W02", Jobs.Roughed()), j => j.Say("W02", RunFacts.LabelAtPanel, "W02 panel"));

    [Fact]
    public void ALabelOfItsOwnIsFine() => Jobs.Roughed("W02", Jobs.Roughed()).Fine(Check, "W01");

    [Fact]
    public void TheLabelOfAnotherCableIsAStopForBoth()
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed()).Say("W02", RunFacts.LabelAtPanel, "w01");
        Assert.Equal("\"W01\" is also on the cable of W02.", job.Fault(Check, "W01").Message);
        Assert.Equal("\"w01\" is also on the cable of W01.", job.Fault(Check, "W02").Message);
    }

    [Fact]
    public void ACableWithoutALabelIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "label at window");

    [Fact]
    public void TheEndThatHasTheLabelIsTheOneToPutRight()
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed()).Say("W02", RunFacts.LabelAtPanel, "w01");
        Assert.Equal("label-at-window", job.Fault(Check, "W01").Mends.Field);
        Assert.Equal("label-at-panel", job.Fault(Check, "W02").Mends.Field);
    }
}
