using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Safety;

public class FixedIntoBoardAloneTests
{
    private static readonly FixedIntoBoardAlone Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.FixedInto, "board alone"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.FixedInto, "wood"));

    [Theory]
    [InlineData("wood")]
    [InlineData("masonry")]
    [InlineData("steel")]
    [InlineData("hollow anchors")]
    public void WhatHoldsIsFine(string into) => Jobs.Walked().Say("W01", UnitFacts.FixedInto, into).Fine(Check, "W01");

    [Fact]
    public void PlasterboardAloneIsAStop() => Assert.Equal("Its brackets are fixed into drywall alone.",
        Jobs.Walked().Say("W01", UnitFacts.FixedInto, "board alone").Fault(Check, "W01").Message);

    [Fact]
    public void BracketsOfWhichNobodySaidAreNotAPass() => Jobs.Walked().Lacks(Check, "W01", "brackets fixed into");
}
