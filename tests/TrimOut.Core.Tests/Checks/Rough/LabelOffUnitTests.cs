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

    [Fact]
    public void ATagThatItsWindowHadBeforeIsAnOldLabel()
    {
        var job = Two().Say("W01", WindowFacts.Tag, "W11");
        var found = job.Fault(Check, "W11");
        Assert.Equal("Its cable is labeled \"W01\", which was its tag once; its tag is W11 now.", found.Message);
        Assert.Equal("Make new labels that say W11, for both ends, and write here what they say.", found.Mend);
        job.Say("W11", RunFacts.LabelAtWindow, "W11").Say("W11", RunFacts.LabelAtPanel, "W11").Fine(Check, "W11");
    }

    [Fact]
    public void ATagThatWasPutBackIsNoOldOne()
    {
        var job = Two().Say("W01", WindowFacts.Tag, "W11").Say("W11", WindowFacts.Tag, "W01");
        job.Fine(Check, "W01");
        job.Say("W01", RunFacts.LabelAtWindow, "W11").Say("W01", RunFacts.LabelAtPanel, "w11");
        Assert.StartsWith("Its cable is labeled \"W11\", which was its tag once", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WordsThatNeverWereATagStayAfterATagIsChanged() => Two().Say("W01", RunFacts.LabelAtWindow, "Kitchen left")
        .Say("W01", RunFacts.LabelAtPanel, "Kitchen left").Say("W01", WindowFacts.Tag, "W11").Fine(Check, "W11");

    [Fact]
    public void AnOldTagThatAnotherUnitHasNowIsOfAnotherUnit() => Assert.Equal("Its cable is labeled \"W01\", which is the tag of another unit.",
        Two().Say("W01", WindowFacts.Tag, "W11").Say("W02", WindowFacts.Tag, "W01").Fault(Check, "W11").Message);

    [Fact]
    public void AnOldTagIsKnownWhereALabelHasOneSpaceAndTheTagHadTwo() =>
        Assert.Equal("Its cable is labeled \"Up 1\", which was its tag once; its tag is W11 now.", Two().Say("W01", WindowFacts.Tag, "Up  1")
            .Say("Up  1", WindowFacts.Tag, "W11").Say("W11", RunFacts.LabelAtWindow, "Up 1").Say("W11", RunFacts.LabelAtPanel, "Up 1")
            .Fault(Check, "W11").Message);

    private static TestJob Two() => Jobs.Roughed("W02", Jobs.Roughed());

    [Theory]
    [InlineData("label-at-panel", "label-at-window")]
    [InlineData("label-at-window", "label-at-panel")]
    public void TheLabelThatIsThereIsTheOneToPutRight(string without, string field)
    {
        var job = Two().Say("W01", RunFacts.LabelAtWindow, "W02").Say("W01", RunFacts.LabelAtPanel, "W02");
        Assert.Equal(field, job.Forget("W01", FactTable.Find(Core.Houses.ItemKind.Run, without)!).Fault(Check, "W01").Mends.Field);
    }

    [Theory]
    [InlineData("W01")]
    [InlineData("W01A")]
    public void OfSeveralUnitsAnOldTagIsKnownWithAndWithoutItsLetter(string label)
    {
        var job = Two().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        job.Say("W01A", RunFacts.LabelAtWindow, label).Say("W01A", RunFacts.LabelAtPanel, label).SayOf("W01", WindowFacts.Tag, "W11");
        Assert.Equal($"Its cable is labeled \"{label}\", which was its tag once; its tag is W11A now.", job.Fault(Check, "W11A").Message);
        job.SayOf("W11", WindowFacts.Tag, "W01").Fine(Check, "W01A");
    }
}
