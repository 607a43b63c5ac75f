using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class DepthTooShallowTests
{
    private static readonly DepthTooShallow Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "2\""));

    public static Example Passes => new(() => Jobs.Measured(), j => j.Say("W01", WindowFacts.Depth, "2 1/2\""));

    // The generic roller needs 2 1/2 in.
    [Fact]
    public void JustDeepEnoughIsFine() => Jobs.Measured().Say("W01", WindowFacts.Depth, "2 1/2").Fine(Check, "W01");

    [Fact]
    public void ALittleLessIsAStop() =>
        Assert.Equal("The opening is 2 31/64\" deep; Roller needs 2 1/2\".", Jobs.Measured().Say("W01", WindowFacts.Depth, "2 31/64")
            .Fault(Check, "W01").Message);

    [Fact]
    public void AnOutsideMountNeedsNoReveal() => Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void AnUnknownDepthIsNotAPass() => Jobs.Measured().Forget("W01", WindowFacts.Depth).Lacks(Check, "W01", "depth");

    [Fact]
    public void OnceOrderedTheMakerIsAsked()
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.Depth, "2");
        Assert.StartsWith("Order a kind that needs less depth", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Ask the maker", job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkingTellsBothDepths() =>
        Assert.Equal("depth 2\", depth needed 2 1/2\"", Jobs.Measured().Say("W01", WindowFacts.Depth, "2").Fault(Check, "W01").Worked);

    [Fact]
    public void WhatIsMissingIsNamed()
    {
        Jobs.Measured().Forget("W01", WindowFacts.Mount).Lacks(Check, "W01", "mount");
        Jobs.Measured().SayOf("Roller", CoveringKindFacts.DepthNeeded, "").Lacks(Check, "W01", "depth needed of Roller in the kit");
        Jobs.Measured().Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
    }
}
