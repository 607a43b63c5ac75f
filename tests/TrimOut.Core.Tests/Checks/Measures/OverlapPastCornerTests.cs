using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class OverlapPastCornerTests
{
    private static readonly OverlapPastCorner Check = new();

    public static Example Finds => new(() => Outside(), j => j.Say("W01", WindowFacts.ToCornerRight, "1 1/2\""));

    public static Example Passes => new(() => Outside(), j => j.Say("W01", WindowFacts.ToCornerRight, "4\""));

    [Fact]
    public void AtTheCornerItIsFine() => Outside().Say("W01", WindowFacts.ToCornerLeft, "2").Fine(Check, "W01");

    [Fact]
    public void JustPastItIsAStop()
    {
        var found = Outside().Say("W01", WindowFacts.ToCornerLeft, "1 15/16").Fault(Check, "W01");
        Assert.Equal("It overlaps the opening by 2\", and the corner on the left is 1 15/16\" away.", found.Message);
        Assert.Equal("Overlap it by 1 15/16\" or less, or mount it inside.", found.Mend);
    }

    [Fact]
    public void OnAStraightWallTheNeighbourIsHeldAgainstItInstead()
    {
        var job = Jobs.Measured("W02", Outside()).Say("W01", WindowFacts.ToCornerRight, "1").Say("W02", WindowFacts.Mount, "outside")
            .Say("W02", WindowFacts.OverlapEachSide, "2").Say("W02", WindowFacts.ToCornerLeft, "1");
        job.Fault(Check, "W01");
        job.Fault(Check, "W02");
        job.Say("W01", WindowFacts.MeetsRight, "W02").Say("W01", WindowFacts.CornerAngle, "180");
        job.Fine(Check, "W01");
        job.Fine(Check, "W02");
    }

    [Fact]
    public void WithoutACornerThereIsNothingToPass() => Outside().Silent(Check, "W01");

    [Fact]
    public void AnUnknownOverlapIsNotAPass() =>
        Outside().Say("W01", WindowFacts.ToCornerRight, "3").Forget("W01", WindowFacts.OverlapEachSide).Lacks(Check, "W01", "overlap each side");

    private static TestJob Outside() => Jobs.Measured().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "2");

    // 2 in of overlap: the nearer of the corners that it passes is the most that it may be.
    [Theory]
    [InlineData("2", "", "")]
    [InlineData("1 15/16", "", "Overlap it by 1 15/16\" or less, or mount it inside.")]
    [InlineData("1", "1 1/2", "Overlap it by 1\" or less, or mount it inside.")]
    [InlineData("1 1/2", "1", "Overlap it by 1\" or less, or mount it inside.")]
    [InlineData("1 1/2", "3", "Overlap it by 1 1/2\" or less, or mount it inside.")]
    public void TheNearerCornerIsTheMost(string right, string left, string mend)
    {
        var job = Outside().Say("W01", WindowFacts.ToCornerRight, right);
        if (left.Length > 0)
            job.Say("W01", WindowFacts.ToCornerLeft, left);
        if (mend.Length == 0)
        {
            job.Fine(Check, "W01");
            return;
        }
        var found = job.Fault(Check, "W01");
        Assert.Equal(mend, found.Mend);
        Assert.Contains(("corner right", $"{right}\""), found.Working!.Inputs);
        Assert.Contains(("corner left", left.Length > 0 ? $"{left}\"" : "none"), found.Working!.Inputs);
    }

    [Theory]
    [InlineData("W02", "135")]
    [InlineData("", "180")]
    public void ACornerIsStraightOnlyWhereAnotherWindowMeetsItSo(string meets, string angle)
    {
        var job = Jobs.Measured("W02", Outside()).Say("W01", WindowFacts.ToCornerRight, "1").Say("W01", WindowFacts.CornerAngle, angle);
        if (meets.Length > 0)
            job.Say("W01", WindowFacts.MeetsRight, meets);
        job.Fault(Check, "W01");
    }
}
