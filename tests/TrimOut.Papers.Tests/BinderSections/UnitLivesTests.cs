using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.BinderSections;

public class UnitLivesTests
{
    private const string Heading = "What was done in service";

    [Fact]
    public void TheHistoryOfAUnitReadsAsALifeFromItsFirstSerialOn()
    {
        var rows = Binder.Paper.Page(FinishedHouse.Data(ServedHouse.Build().Scribe.Log) with { Date = new DateOnly(2027, 4, 1) })
            .TableUnder(Heading).ToList();
        Assert.Equal(["W01", "W02A", "W02A", "Bedside"], rows.Select(r => r[0]).SkipLast(1));
        Assert.Equal(["W02A", "2026-09-30", "handed over", "\u2013", "\u2013", "\u2013", "SN-W02A", "\u2013", "\u2013"], rows[1]);
        Assert.Equal(["W02A", "2027-03-02", "replaced", "R. Example", "motor grinds", "SN-W02A", "SN-NEW", "C-17", "not yet"], rows[2]);
    }

    [Fact]
    public void WhereNothingWasDoneNothingIsSaid() =>
        Assert.DoesNotContain(Heading, Binder.Paper.Write(FinishedHouse.Data()).Markdown, StringComparison.Ordinal);
}
