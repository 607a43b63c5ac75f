using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class NoSpareCableTests
{
    private static readonly NoSpareCable Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.SpareCables, "0"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.SpareCables, "1").Say("W01", RunFacts.SpareEnds, "beside it"));

    [Fact]
    public void OneSpareCableIsFine() => Jobs.Roughed().Say("W01", RunFacts.SpareCables, "1").Say("W01", RunFacts.SpareEnds, "beside it").Fine(Check, "W01");

    [Fact]
    public void NoneIsANoteWithWhatIsCheapWhileTheWallIsOpen() =>
        Assert.Equal("Pull a second cable beside it while the wall is open, or waive this and say why.",
            Jobs.Roughed().Say("W01", RunFacts.SpareCables, "0").Fault(Check, "W01").Mend);

    [Fact]
    public void OnceTheWallIsClosedTheOwnerIsTold() => Assert.StartsWith("The wall is closed: tell the owner",
        Jobs.Roughed().Say("W01", RunFacts.SpareCables, "0").Say("W01", RunFacts.TailFound, "36\"").Fault(Check, "W01").Mend, StringComparison.Ordinal);

    [Theory]
    [InlineData("metal")]
    [InlineData("plastic")]
    public void AWayThatLiesInConduitAllAlongNeedsNone(string conduit) => InConduit(conduit).Fine(Check, "W01");

    [Fact]
    public void NoConduitIsNone() => InConduit("none").Fault(Check, "W01");

    [Fact]
    public void ACableOfWhichNobodySaidIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "spare cables");

    [Fact]
    public void SpareCablesThatNobodyFindsAreNotAPass() => Jobs.Roughed().Say("W01", RunFacts.SpareCables, "2").Lacks(Check, "W01", "spare ends at");

    [Fact]
    public void AWayOfWhichALegLiesInNoConduitNeedsOne()
    {
        var job = InConduit("metal");
        job.Legs("W01", ("10 ft", CablePlace.InWall)).Fault(Check, "W01");
    }

    private static TestJob InConduit(string conduit) => Jobs.Roughed().Say("W01", RunFacts.SpareCables, "0")
        .Do(j => SetFact.Typed(j.House, j.Run("W01").Legs[0].Item, LegFacts.Conduit, conduit));
}
