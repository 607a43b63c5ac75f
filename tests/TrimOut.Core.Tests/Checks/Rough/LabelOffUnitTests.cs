using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class LabelOffUnitTests
{
    private static readonly LabelOffUnit Check = new();

    public static Example Finds => new(() => Two(), j => j.Say("W01", RunFacts.LabelAtWindow, "W02").Say("W01", RunFacts.LabelAtPanel, "W02"));

    public static Example Passes => new(() => Two(),
        j => j.Say("W01", RunFacts.LabelAtWindow, "Kitchen left").Say("W01", RunFacts.LabelAtPanel, "Kitchen left"));

    [Fact]
    public void ItsOwnTagIsFine() => Two().Fine(Check, "W01");

    [Fact]
    public void AnotherUnitsTagAtBothEndsIsACaution() => Assert.Equal("Its cable is labeled \"w02\", which is the tag of another unit.",
        Two().Say("W01", RunFacts.LabelAtWindow, "w02").Say("W01", RunFacts.LabelAtPanel, "w02").Fault(Check, "W01").Message);

    [Fact]
    public void ATagWithALetterIsAUnitsToo()
    {
        var job = Two();
        job.Do(AddItems.Unit(job.House, job.Unit("W02").Window.Id));
        job.Say("W01", RunFacts.LabelAtWindow, "W02B").Forget("W01", RunFacts.LabelAtPanel).Fault(Check, "W01");
        job.Say("W01", RunFacts.LabelAtWindow, "W02C").Fine(Check, "W01");
    }

    [Fact]
    public void EndsThatDifferAreAnotherChecks() => Two().Say("W01", RunFacts.LabelAtPanel, "W02").Silent(Check, "W01");

    [Fact]
    public void ACableWithoutALabelIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "label at window");

    private static TestJob Two() => Jobs.Roughed("W02", Jobs.Roughed());
}
