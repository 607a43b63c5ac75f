using System.Globalization;
using TrimOut.TrueHouse.Tests.Faults;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;
using Xunit.Abstractions;

namespace TrimOut.TrueHouse.Tests;

/// <summary>What goes wrong in life is found, in the first stage whose recorded facts show it.</summary>
public class FaultTests(ITestOutputHelper output)
{
    [Fact]
    public void EveryFaultIsFoundWhenItFirstShowsOrStandsAmongTheKnownSilences()
    {
        foreach (var record in FaultRecord.All)
            Print(record);
        if (Seeds.Replayed is not null)
            return;
        var heard = FaultRecord.All.Where(r => r.Hearing is not (Hearing.Found or Hearing.Unseen)).ToDictionary(r => r.Fault.Id, r => r.Hearing);
        var newly = heard.Where(h => !KnownSilences.All.ContainsKey(h.Key)).Select(h => $"{h.Key}: {h.Value}, and is no known silence").ToList();
        if (Seeds.AsInTheGate)
        {
            newly.AddRange(KnownSilences.All.Where(k => !heard.ContainsKey(k.Key)).Select(k => $"{k.Key}: is found now: take it out of the known silences"));
            newly.AddRange(KnownSilences.All.Where(k => heard.TryGetValue(k.Key, out var now) && now != k.Value)
                .Select(k => $"{k.Key}: is known as {k.Value} and is {heard[k.Key]} now"));
        }
        Assert.True(newly.Count == 0, string.Join('\n', newly));
    }

    [Fact]
    public void EveryFaultStrikesInSeveralHousesInWhichItIsLargerThanWhatReadingsMayBeOff() =>
        Assert.All(FaultRecord.All, r => Assert.True(Seeds.Replayed is not null || r.Runs.Count == Seeds.EachFault, $"{r.Fault.Id}: {r.Runs.Count} houses"));

    [Fact]
    public void AFaultThatNoFactShowsNamesTheReadingOrTheStepThatWould() => Assert.All(FaultRecord.All.Where(r => r.Runs.Count > 0), r =>
        Assert.True((r.Fault.WouldShow is not null) == (r.Hearing == Hearing.Unseen),
            $"{r.Fault.Id} is {r.Hearing}: a fact that shows it must be named by the fault, or a reading that would."));

    [Fact]
    public void TheCatalogueHasEightyFaultsOrMoreEachInAFileOfItsOwn()
    {
        Assert.True(Catalogue.All.Count >= 80);
        var folder = Path.Combine(TrimOut.Testing.Repository.Root, "tests", "TrimOut.TrueHouse.Tests", "Faults");
        var files = Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories).Select(Path.GetFileNameWithoutExtension).ToHashSet();
        Assert.All(Catalogue.All, f => Assert.Contains(f.GetType().Name, files));
        Assert.Equal(Catalogue.All.Count, Catalogue.All.Select(f => f.Id).Distinct().Count());
    }

    [Fact]
    public void AReplayedFaultTellsAllThatIsSaid()
    {
        var (seed, id) = (Seeds.Replayed ?? 1001, Seeds.ReplayedFault ?? "short-midway");
        var house = RandomHouse.Of(seed);
        var trace = Catalogue.Find(id).Strike(house, FaultRun.DiceFor(Catalogue.Find(id), seed));
        Assert.NotNull(trace);
        var shownBy = string.Join(", ", trace.ShownBy.Select(s => $"{s.Fact.Label} of {s.Name}"));
        output.WriteLine($"{id} about {string.Join(", ", trace.About)}, shown by {shownBy}");
        var walk = Walk.Through(house);
        foreach (var refusal in walk.Book.Refusals)
            output.WriteLine($"{refusal.Stage}: refused: {refusal.Name} {refusal.Fact?.Label} \"{refusal.Typed}\": {refusal.Reason}");
        var story = walk.NewlySaid()
            .Select(s => $"{s.Stage}: {s.Said.Word} {s.Said.Check} of {walk.Book.NameOf(s.Said.Subject)}: {s.Said.Message} {s.Said.Mend}").ToList();
        story.ForEach(output.WriteLine);
        Assert.True(Seeds.Replayed is not null || story.Count > 0, "Nothing is told.");
    }

    private void Print(FaultRecord record)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{record.Fault.Id}: {record.Hearing}, {record.Runs.Count} houses"));
        foreach (var run in record.Runs)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"    TRIMOUT_TRUE_SEED={run.Seed} TRIMOUT_TRUE_FAULT={run.Fault.Id}: shown in {run.Shown?.ToString() ?? "nothing"}; {Said(run)}"));
        }
    }

    private static string Said(FaultRun run) => run.First is { } word ? $"{word.Severity} {word.By} in {word.Stage}: {word.Message}" : "nothing is said";
}
