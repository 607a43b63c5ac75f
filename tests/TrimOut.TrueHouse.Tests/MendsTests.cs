using System.Globalization;
using TrimOut.TrueHouse.Tests.Mends;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;
using Xunit.Abstractions;

namespace TrimOut.TrueHouse.Tests;

/// <summary>A person who does what a mend says is rid of the finding, and makes no new one.</summary>
public class MendsTests(ITestOutputHelper output)
{
    [Fact]
    public void AfterTheMendTheFindingIsGoneAndNothingNewIsWrong()
    {
        var wrong = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var carriedOut = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var run in FaultRecord.All.SelectMany(r => r.Runs).Where(r => r.First is { Mend.Length: > 0 }))
        {
            var house = RandomHouse.Of(run.Seed);
            run.Fault.Strike(house, FaultRun.DiceFor(run.Fault, run.Seed));
            var walk = Walk.Through(house, run.First!.Stage);
            var before = walk.SaidAt(run.First.Stage);
            var said = before.First(s => s.Check == run.First.By && s.Message == run.First.Message);
            if (!HowToMend.All.TryGetValue(said.Check, out var mend) || !mend(new Mending(walk, run.First.Stage, said)))
                continue;
            carriedOut[said.Check] = carriedOut.GetValueOrDefault(said.Check) + 1;
            var after = Said.Of(walk.Book.House);
            var replay = $"TRIMOUT_TRUE_SEED={run.Seed} TRIMOUT_TRUE_FAULT={run.Fault.Id}: \"{said.Message}\" \"{said.Mend}\"";
            if (after.FirstOrDefault(s => s.Check == said.Check && s.Subject == said.Subject) is { } still)
                wrong.TryAdd($"{said.Check} stays", $"{replay}: it says now: {still.Message}");
            foreach (var worse in after.Where(s => s.Weight > 0 && !before.Any(b => b.Check == s.Check && b.Subject == s.Subject)))
                wrong.TryAdd($"{said.Check} makes {worse.Word} {worse.Check}", $"{replay}: new: {worse.Message}");
        }
        output.WriteLine(string.Join(", ", carriedOut.Select(c => string.Create(CultureInfo.InvariantCulture, $"{c.Key} {c.Value}"))));
        foreach (var (what, how) in wrong)
            output.WriteLine($"{what}: {how}");
        var newly = wrong.Where(w => !KnownBadMends.All.ContainsKey(w.Key)).Select(w => $"{w.Key}: {w.Value}").ToList();
        if (Seeds.AsInTheGate)
            newly.AddRange(KnownBadMends.All.Keys.Where(k => !wrong.ContainsKey(k))
                .Select(k => $"{k}: does not happen now: take it out of the known bad mends"));
        Assert.True(newly.Count == 0, string.Join('\n', newly));
    }
}
