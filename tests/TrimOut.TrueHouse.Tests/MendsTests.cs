using System.Globalization;
using TrimOut.Core.Checks;
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
        foreach (var (run, word) in ToMend())
        {
            var house = RandomHouse.Of(run.Seed);
            run.Fault.Strike(house, FaultRun.DiceFor(run.Fault, run.Seed));
            var walk = Walk.Through(house, word.Stage);
            var before = walk.SaidAt(word.Stage);
            var said = before.First(s => s.Check == word.By && s.Message == word.Message);
            if (!HowToMend.All.TryGetValue(said.Check, out var mend) || !mend(new Mending(walk, word.Stage, said)))
                continue;
            carriedOut[said.Check] = carriedOut.GetValueOrDefault(said.Check) + 1;
            HowToMend.ShowAgainWhatWasMoved(walk, word.Stage, before);
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
        if (Seeds.AsInTheGate)
        {
            newly.AddRange(HowToMend.All.Keys.Except(carriedOut.Keys).Except(KnownBadMends.NeverCarriedOut.Keys)
                .Select(k => $"{k}: its mend is never carried out"));
        }
        Assert.True(newly.Count == 0, string.Join('\n', newly));
    }

    [Fact]
    public void EveryCheckHasWhatAPersonDoesWhoReadsItsMend() => Assert.Equal(HowToMend.OnlyOfTwoCopies.Order(),
        AllChecks.All.Select(c => c.Info.Id).Except(HowToMend.All.Keys).Order());

    /// <summary>The first word of each fault; and of checks that are never the first to speak, each first word there is.</summary>
    private static IEnumerable<(FaultRun Run, Word Word)> ToMend()
    {
        var runs = FaultRecord.All.SelectMany(r => r.Runs).Where(r => r.First is { Mend.Length: > 0 }).ToList();
        var first = runs.Select(r => r.First!.By).ToHashSet();
        return runs.SelectMany(r => r.Heard.Where(w => w.Mend.Length > 0 && (w == r.First || !first.Contains(w.By))).Select(w => (r, w)));
    }
}
