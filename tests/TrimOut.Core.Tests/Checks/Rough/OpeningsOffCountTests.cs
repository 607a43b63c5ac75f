using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class OpeningsOffCountTests
{
    private static readonly OpeningsOffCount Check = new();

    private const string House = "Test house";

    public static Example Finds => new(() => Counted("2"), Mark);

    public static Example Passes => new(() => Counted("1"), Mark);

    [Fact]
    public void AsManyAsWereCountedIsFineLeftOutOrNot() =>
        Assert.IsType<Outcome.Fine>(Mark(Counted("1").Say("W01", WindowFacts.Covered, "no")).Of(Check, House));

    [Fact]
    public void AWindowThatNobodyRecordedIsAStop()
    {
        var found = Mark(Counted("2")).FaultOf(Check, House);
        Assert.Equal("2 openings were counted, and 1 are recorded.", found.Message);
        Assert.StartsWith("Go round once more", found.Mend, System.StringComparison.Ordinal);
    }

    [Fact]
    public void AWindowThatStandsThereTwiceIsAStopToo() =>
        Assert.StartsWith("Count again", Mark(Counted("1").Window("W02")).FaultOf(Check, House).Mend, System.StringComparison.Ordinal);

    [Fact]
    public void InTheMiddleOfTheWalkItWaits() => Assert.Equal("openings marked counted", Counted("2").MissingOf(Check, House));

    [Fact]
    public void AHouseWhoseOpeningsNobodyCountedIsNotAPass() => Assert.Equal("openings, counted of the house", Jobs.Walked().MissingOf(Check, House));

    private static TestJob Counted(string openings) => Jobs.Walked().SayOf(House, HouseFacts.Openings, openings);

    private static TestJob Mark(TestJob job) => job.Do(MarkStep.Done(new JobItself(job.House), StepList.Find("openings-counted")!));

    [Fact]
    public void BehindDrywallTheWindowThatIsMissingGetsNoCable()
    {
        Assert.EndsWith("before the wall closes, with a covering or left out.", Mark(Counted("2")).FaultOf(Check, House).Mend,
            System.StringComparison.Ordinal);
        Assert.EndsWith("left out, or with a covering on a battery or a plug.", Mark(Counted("2")).Mark("W01", "cable-found").FaultOf(Check, House).Mend,
            System.StringComparison.Ordinal);
    }
}
