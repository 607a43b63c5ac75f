using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class NoBoxLongEnoughTests
{
    private static readonly NoBoxLongEnough Check = new();

    public static Example Finds => new(() => Boxes("75 ft"), j => j.SayOf("A", BoxFacts.Left, "60 ft"));

    public static Example Passes => new(() => Boxes("75 ft"), j => j.SayOf("A", BoxFacts.Left, "90 ft"));

    // 60 ft of legs with a tenth more for bends, and 9 ft of tails.
    [Fact]
    public void ABoxThatJustHoldsItIsFine() => Assert.IsType<Outcome.Fine>(Boxes("75 ft").Of(Check, "16/2"));

    [Fact]
    public void TwoBoxesThatHoldItTogetherAreACaution()
    {
        var found = Boxes("74 ft").Add(ItemKind.Box, "B").SayOf("B", BoxFacts.Cable, "16/2").SayOf("B", BoxFacts.Left, "74 ft").FaultOf(Check, "16/2");
        Assert.Equal("W01 needs 75 ft in one piece; the most that is left in a box is 74'-0\".", found.Message);
        Assert.StartsWith("Bring a box with 75 ft or more", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void ABoxOfUnknownRestIsNotAPass() => Assert.Equal("left in it", Boxes("").MissingOf(Check, "16/2"));

    [Fact]
    public void ARunOfUnknownLengthIsNotAPass()
    {
        var job = Boxes("75 ft").Forget("W01", RunFacts.TailAtWindow).Forget("W01", WindowFacts.RoughWidth);
        Assert.Equal("tail at window", job.MissingOf(Check, "16/2"));
    }

    // The longest of the runs against the fullest of the boxes, whichever stands first.
    [Theory]
    [InlineData("20 ft", "75 ft", true)]
    [InlineData("75 ft", "20 ft", true)]
    [InlineData("74 ft", "20 ft", false)]
    public void TheLongestRunIsHeldAgainstTheFullestBox(string first, string second, bool fine)
    {
        var job = Boxes(first).Add(ItemKind.Box, "B").SayOf("B", BoxFacts.Cable, "16/2").SayOf("B", BoxFacts.Left, second);
        Jobs.Walked("W02", job).Say("W02", RunFacts.Cable, "16/2").Legs("W02", ("5 ft", CablePlace.InWall)).Say("W02", RunFacts.TailAtWindow, "36\"")
            .Say("W02", RunFacts.TailAtPanel, "72\"");
        Assert.Equal(fine, job.Of(Check, "16/2") is Outcome.Fine);
    }

    [Fact]
    public void OfSeveralThatAreTooLongTheLongestIsNamed()
    {
        var job = Boxes("20 ft");
        Jobs.Walked("W02", job).Say("W02", RunFacts.Cable, "16/2").Legs("W02", ("30 ft", CablePlace.InWall)).Say("W02", RunFacts.TailAtWindow, "36\"")
            .Say("W02", RunFacts.TailAtPanel, "72\"");
        Assert.StartsWith("W01 needs 75 ft", job.FaultOf(Check, "16/2").Message, StringComparison.Ordinal);
    }

    private static TestJob Boxes(string left)
    {
        var job = Jobs.Roughed().Add(ItemKind.Box, "A").SayOf("A", BoxFacts.Cable, "16/2");
        return left.Length == 0 ? job : job.SayOf("A", BoxFacts.Left, left);
    }
}
