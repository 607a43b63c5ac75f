using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class HoleNearEdgeTests
{
    private static readonly HoleNearEdge Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.HoleEdge, "1\"").Say("W01", RunFacts.NailPlates, "no"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.HoleEdge, "1\"").Say("W01", RunFacts.NailPlates, "yes"));

    // 1 1/4 in (32 mm): NFPA 70-2017, 300.4(A).
    [Fact]
    public void AnInchAndAQuarterIsFine() => Jobs.Roughed().Say("W01", RunFacts.HoleEdge, "1 1/4").Fine(Check, "W01");

    [Fact]
    public void ALittleLessWithoutAPlateIsACaution()
    {
        var found = Jobs.Roughed().Say("W01", RunFacts.HoleEdge, "1 15/64").Say("W01", RunFacts.NailPlates, "no").Fault(Check, "W01");
        Assert.Equal("A hole comes within 1 15/64\" of the edge and has no nail plate; 1 1/4\" is good practice, and the rule in some editions.",
            found.Message);
    }

    // A hole bored through the middle of a 3 1/2 in stud leaves 1 1/4 in when it is 1 in across, and less when it is 1 1/16 in.
    [Theory]
    [InlineData(16, true)]
    [InlineData(17, false)]
    public void AnInchHoleInTheMiddleOfAStudIsTheLargest(int sixteenths, bool fine)
    {
        var edge = (Length.FromInches(3, 1, 2) - Length.FromInches(0, sixteenths, 16)) / 2;
        var job = Jobs.Roughed().Say("W01", RunFacts.HoleEdge, edge.ToString()).Say("W01", RunFacts.NailPlates, "no");
        Assert.Equal(fine, job.Judge(Check, "W01") is Outcome.Fine);
    }

    [Fact]
    public void APlateMakesItFine() => Jobs.Roughed().Say("W01", RunFacts.HoleEdge, "1/2").Say("W01", RunFacts.NailPlates, "yes").Fine(Check, "W01");

    [Fact]
    public void NearTheEdgeAnUnknownPlateIsNotAPass() => Jobs.Roughed().Say("W01", RunFacts.HoleEdge, "1/2").Lacks(Check, "W01", "nail plates");

    // A hole of 1 1/2 in whose middle is 2 in from the edge comes within 1 1/4 in; one of 1 9/16 in comes nearer.
    [Theory]
    [InlineData("1 1/2", true)]
    [InlineData("1 9/16", false)]
    public void ADistanceToTheMiddleCountsLessHalfTheDrill(string drill, bool fine)
    {
        var job = ToMiddle().Say("W01", RunFacts.HoleDrill, drill);
        Assert.Equal(fine, job.Judge(Check, "W01") is Outcome.Fine);
    }

    [Fact]
    public void ADistanceToTheMiddleOfAHoleOfUnknownWidthIsNotAPass() => ToMiddle().Lacks(Check, "W01", "width of the drill");

    [Fact]
    public void ADistanceOfWhichNobodySaidWhereToIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.HoleTo).Lacks(Check, "W01", "edge measured to");

    private static TestJob ToMiddle() =>
        Jobs.Roughed().Say("W01", RunFacts.HoleEdge, "2").Say("W01", RunFacts.HoleTo, "middle").Say("W01", RunFacts.NailPlates, "no");

    [Fact]
    public void APlateIsNailedOnlyWhileTheWallIsOpen()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.HoleEdge, "1").Say("W01", RunFacts.NailPlates, "no");
        Assert.StartsWith("Nail a steel plate over it", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("The wall is closed", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }
}
