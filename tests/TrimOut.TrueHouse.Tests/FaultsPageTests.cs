using TrimOut.Testing;
using TrimOut.TrueHouse.Tests.Runs;

namespace TrimOut.TrueHouse.Tests;

/// <summary>docs/faults.md is made from the runs of the gate: this test fails when it is stale, and writes it anew when TRIMOUT_WRITE_DOCS is set.</summary>
public class FaultsPageTests
{
    [Fact]
    public void TheFaultsPageSaysWhatTheRunsGave()
    {
        if (!Seeds.AsInTheGate)
            return;
        var path = Path.Combine(Repository.Root, "docs", "faults.md");
        var page = FaultsPage.Text(FaultRecord.All);
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            File.WriteAllText(path, page);
        Assert.Equal(page, File.ReadAllText(path));
    }
}
