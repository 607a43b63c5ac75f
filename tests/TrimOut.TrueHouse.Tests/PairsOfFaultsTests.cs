using System.Globalization;
using TrimOut.TrueHouse.Tests.Runs;
using Xunit.Abstractions;

namespace TrimOut.TrueHouse.Tests;

/// <summary>A fault does not hide behind another one at another place.</summary>
public class PairsOfFaultsTests(ITestOutputHelper output)
{
    [Fact]
    public void AFaultThatIsFoundAloneIsFoundAsEarlyBesideAnother()
    {
        var pairs = Seeds.Pairs.AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(PairRun.Of).OfType<PairRun>().ToList();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{pairs.Count} pairs at two places each"));
        var hidden = pairs.SelectMany(p => p.Hidden().Select(h =>
            $"TRIMOUT_TRUE_SEED={p.Seed}: {p.Alone.First.Fault.Id} and {p.Alone.Second.Fault.Id}: "
            + $"{h.Fault.Id} is {(h.First is null ? "not" : "later")} found")).ToList();
        Assert.True(hidden.Count == 0, string.Join('\n', hidden));
        Assert.True(Seeds.Replayed is not null || pairs.Count >= Seeds.Pairs.Count / 5, "Too few pairs strike two places.");
    }
}
