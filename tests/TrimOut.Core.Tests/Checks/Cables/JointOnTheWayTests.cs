using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class JointOnTheWayTests
{
    private static readonly JointOnTheWay Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.OnePiece, "no"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.OnePiece, "yes"));

    [Fact]
    public void OnePieceIsFine() => Jobs.Roughed().Say("W01", RunFacts.OnePiece, "yes").Fine(Check, "W01");

    [Fact]
    public void AJointIsAStopAndMeansAnewCableWhileTheWallIsOpen()
    {
        var found = Jobs.Roughed().Say("W01", RunFacts.OnePiece, "no").Fault(Check, "W01");
        Assert.Equal("The cable is not one piece from its box: there is a joint on its way.", found.Message);
        Assert.Equal("Pull one piece now, while the wall is open.", found.Mend);
    }

    [Fact]
    public void BehindPlasterItComesIntoABoxInReach() =>
        Assert.StartsWith("Find the joint", Jobs.Roughed().Say("W01", RunFacts.OnePiece, "no").Mark("W01", "cable-found").Fault(Check, "W01").Mend,
            System.StringComparison.Ordinal);

    [Fact]
    public void ACableOfWhichNobodySaidIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "one piece");
}
