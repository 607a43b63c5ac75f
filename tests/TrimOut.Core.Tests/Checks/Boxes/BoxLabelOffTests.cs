using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class BoxLabelOffTests
{
    private static readonly BoxLabelOff Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.BoxLabel, "W10"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.BoxLabel, "W01"));

    [Theory]
    [InlineData("W01")]
    [InlineData("w-01")]
    public void ItsOwnTagIsFineHoweverItIsWritten(string label) => Jobs.Walked().Say("W01", UnitFacts.BoxLabel, label).Fine(Check, "W01");

    [Fact]
    public void AnotherTagIsAStop() =>
        Assert.Equal("The box says \"W10\"; this is W01.", Jobs.Walked().Say("W01", UnitFacts.BoxLabel, "W10").Fault(Check, "W01").Message);

    /// <summary>The maker wrote on the box what it was ordered by; where another window has that tag now, nobody knows whose it is.</summary>
    [Fact]
    public void TheTagThatItHadWhenItWasOrderedIsItsOwn()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", WindowFacts.Tag, "W20");
        job.Fine(Check, "W20");
        Assert.Equal("The box says \"W01\"; this is W20.", job.Window("W01").Fault(Check, "W20").Message);
    }

    [Fact]
    public void ABoxThatNobodyReadIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "box label");

    [Theory]
    [InlineData("W01 Kitchen")]
    [InlineData("Kitchen / W01")]
    [InlineData("N-7731-02")]
    [InlineData("n 7731 02, W01")]
    public void ItsRoomAndTheNumberThatTheMakerGaveItAloneAreItsLabelToo(string label) =>
        Jobs.Walked().Say("W01", UnitFacts.Acknowledgement, "N-7731-02").Say("W01", UnitFacts.BoxLabel, label).Fine(Check, "W01");

    [Theory]
    [InlineData("N-7731-03")]
    [InlineData("W02 Kitchen")]
    public void AnotherNumberAndAnotherTagAreNot(string label) =>
        Jobs.Walked().Say("W01", UnitFacts.Acknowledgement, "N-7731-02").Say("W01", UnitFacts.BoxLabel, label).Fault(Check, "W01");

    [Fact]
    public void TheNumberOfAWholeOrderTellsNoUnit() => Jobs.Walked("W02", Jobs.Walked()).Say("W01", UnitFacts.Acknowledgement, "N-7731")
        .Say("W02", UnitFacts.Acknowledgement, "N-7731").Say("W01", UnitFacts.BoxLabel, "N-7731").Fault(Check, "W01");
}
