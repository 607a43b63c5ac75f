using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Facts;

/// <summary>Who stands for something with a name, and a length that may be typed as none.</summary>
public class SomebodyTests
{
    [Theory]
    [InlineData("0", false)]
    [InlineData("12-34", false)]
    [InlineData("J.", true)]
    [InlineData("Özil 2", true)]
    [InlineData("山田", true)]
    public void ANameHasALetter(string typed, bool taken)
    {
        var job = new TestJob();
        foreach (var fact in (Fact[])[HouseFacts.AcceptedBy, HouseFacts.DemonstratedTo])
            Assert.Equal(taken, SetFact.Typed(job.House, job.House.Job, fact, typed).Ok);
        Assert.Equal(taken, PanelFacts.ConnectedBy.ReadTyped(typed, job.House).Ok);
    }

    [Fact]
    public void AnOldFileKeepsWhatWasWritten() =>
        Assert.Equal("0", new TestJob().Do(job => new Core.History.Draft("As it was").PutStored(job.House.Job.Id, HouseFacts.AcceptedBy.Name, "0"))
            .House.Job.Get(HouseFacts.AcceptedBy));

    [Theory]
    [InlineData("none", true)]
    [InlineData("keine", true)]
    [InlineData("nobody", false)]
    [InlineData("-", false)]
    public void NoFreeCordIsZero(string typed, bool taken)
    {
        var job = new TestJob().Window("W01");
        var read = UnitFacts.FreeCord.ReadTyped(typed, job.House);
        Assert.Equal(taken ? "0 mm" : null, read.Ok ? read.Value : null);
    }
}
