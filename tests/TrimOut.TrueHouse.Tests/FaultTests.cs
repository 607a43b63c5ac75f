using System.Globalization;
using TrimOut.TrueHouse.Tests.Runs;
using Xunit.Abstractions;

namespace TrimOut.TrueHouse.Tests;

/// <summary>What goes wrong in life is found, in the first stage whose recorded facts show it.</summary>
public class FaultTests(ITestOutputHelper output)
{
    [Fact]
    public void EveryFaultIsFoundWhenItFirstShowsOrStandsAmongTheKnownSilences()
    {
        foreach (var record in FaultRecord.All)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{record.Fault.Id}: {record.Hearing}, {record.Runs.Count} houses"));
            foreach (var run in record.Runs)
            {
                output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"    seed {run.Seed}: shown in {run.Shown?.ToString() ?? "nothing"}; {(run.First is { } w ? $"{w.Severity} {w.By} in {w.Stage}: {w.Message}" : "nothing is said")}"));
            }
        }
    }
}
