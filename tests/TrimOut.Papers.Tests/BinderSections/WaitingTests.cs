using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.BinderSections;

/// <summary>A house of which little is known is not well: the owner is told so wherever he is told what is open.</summary>
public class WaitingTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TheBinderCountsTheChecksThatWaitAmongWhatIsOpen(bool ownerOnly)
    {
        var data = PaperData.Of(new TestJob().Window("W01").Scribe.Log, new DateOnly(2026, 9, 1)) with { OwnerOnly = ownerOnly };
        var waiting = data.Report.Missing.Length;
        Assert.True(waiting > 1);
        Assert.Contains($"{waiting} checks that could not be made yet", Binder.Paper.Write(data).Markdown, StringComparison.Ordinal);
        var page = Binder.Paper.Page(data);
        var said = Assert.Single(page.SaidUnder("Still to be checked"));
        Assert.Contains($": {waiting}.", said, StringComparison.Ordinal);
        Assert.True(data.Report.Unread.Length > 1);
        Assert.EndsWith($"by values that nobody checked against a maker's sheet: {data.Report.Unread.Length}. They are no pass yet.", said,
            StringComparison.Ordinal);
        Assert.DoesNotContain("None.", page.SaidUnder("Still to be fixed"));
    }

    [Theory]
    [InlineData("555 0177 Brindle")]
    [InlineData("Brindle 555 0177")]
    [InlineData("Brindle")]
    public void WhomToCallForAKindIsPrintedHoweverItWasTyped(string typed)
    {
        var job = new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.WarrantyCall, typed);
        var page = Binder.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        var call = page.TableUnder("Whom to call").Single(r => r[0].StartsWith("The maker's warranty", StringComparison.Ordinal));
        Assert.All(typed.Split(' '), word => Assert.Contains(word, string.Join(' ', call), StringComparison.Ordinal));
    }
}
