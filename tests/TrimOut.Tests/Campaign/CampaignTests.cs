using System.Globalization;
using Xunit.Abstractions;

namespace TrimOut.Tests.Campaign;

/// <summary>
/// Damaged houses before everything that reads one: no loss in silence, no crash, no hang. TRIMOUT_CAMPAIGN_CASES sets how many (one of
/// each sort when unset), TRIMOUT_CAMPAIGN_SEED the seed, TRIMOUT_CAMPAIGN_FROM the case to begin with, TRIMOUT_CAMPAIGN_KEEP a folder for
/// the files of cases that went wrong.
/// </summary>
[Collection(nameof(OneProcess))]
public sealed class CampaignTests(ITestOutputHelper output) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-").FullName;
    private readonly string? _data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _data);
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public void LookingNeverShowsLessThanWasSavedWithoutSayingSo()
    {
        var (cases, seed, from) = (Number("CASES", Damage.Sorts.Count), Number("SEED", 1), Number("FROM", 0));
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", Path.Combine(_folder, "data"));
        var place = Directory.CreateDirectory(Path.Combine(_folder, "place")).FullName;
        var (present, old) = (Scene.Present(), Scene.FirstForm());
        var (judge, oldJudge) = (new Judge(present, place), new Judge(old, place));
        var hit = new Dictionary<string, int>(StringComparer.Ordinal);
        var counts = new SortedDictionary<string, int[]>(StringComparer.Ordinal);
        var wrong = new List<string>();
        for (var number = from; number < from + cases; number++)
        {
            var damaged = Damage.Of(present, old, number, seed);
            foreach (var sort in damaged.Hit)
                hit[sort] = hit.GetValueOrDefault(sort) + 1;
            var before = wrong.Count;
            foreach (var (verb, outcome, why) in (damaged.IsFirstForm ? oldJudge : judge).Of(damaged))
            {
                counts.TryAdd(verb, new int[Enum.GetValues<Outcome>().Length]);
                counts[verb][(int)outcome]++;
                if (outcome is not (Outcome.Whole or Outcome.Said))
                    wrong.Add(string.Create(CultureInfo.InvariantCulture, $"seed {seed} case {number} ({damaged.What}), {verb}: {outcome}: {why}"));
            }
            if (wrong.Count > before && Environment.GetEnvironmentVariable("TRIMOUT_CAMPAIGN_KEEP") is { Length: > 0 } keep)
                Scene.Write(Path.Combine(Directory.CreateDirectory(keep).FullName, $"seed-{seed}-case-{number}.trimout"), damaged.Pair);
        }
        foreach (var (verb, by) in counts)
            output.WriteLine($"{verb,-24} {Said(by)}");
        var all = Enum.GetValues<Outcome>().Select(o => counts.Values.Sum(c => c[(int)o])).ToArray();
        output.WriteLine($"{cases} cases, {all.Sum()} runs, seed {seed}: {Said(all)}");
        Assert.True(wrong.Count == 0, string.Join("\n", wrong.Take(20)));
        output.WriteLine($"{hit.Count} of {Damage.Sorts.Count} sorts of damage changed something, {hit.Values.DefaultIfEmpty().Min()} to " +
            $"{hit.Values.DefaultIfEmpty().Max()} times each");
        if (cases < Damage.Sorts.Count)
            return;
        Assert.All(Damage.Sorts, s => Assert.True(hit.GetValueOrDefault(s) > 0, $"{s} never hit anything"));
        Assert.All(counts, c => Assert.True(c.Value[(int)Outcome.Said] > 0, $"{c.Key} never said anything"));
    }

    [Fact]
    public void EveryVerbThatReadsAHouseIsJudged()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", Path.Combine(_folder, "data"));
        var judged = new Judge(Scene.Present(), Directory.CreateDirectory(Path.Combine(_folder, "place")).FullName).Names.ToHashSet(StringComparer.Ordinal);
        // Both ways into the screens are run as their verb runs them, without a terminal. What the office exchanges needs a server.
        Assert.Empty(CommandLine.Build().Subcommands.Select(v => v.Name).Except([.. Judge.ReadNoHouse, .. judged, "open", "office"]));
    }

    private static string Said(int[] counts) => string.Join(", ", Enum.GetValues<Outcome>().Select(o => $"{counts[(int)o]} {o}"));

    private static int Number(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_CAMPAIGN_" + name), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number : otherwise;

    [Fact]
    public void ASeedMakesTheSameCasesToTheByte()
    {
        var (one, two) = ((Scene.Present(), Scene.FirstForm()), (Scene.Present(), Scene.FirstForm()));
        Assert.Equal(one.Item1.Now.File, two.Item1.Now.File);
        Assert.Equal(one.Item1.Truth, two.Item1.Truth);
        for (var number = 0; number < 2 * Damage.Sorts.Count; number++)
        {
            var (a, b) = (Damage.Of(one.Item1, one.Item2, number, 1), Damage.Of(two.Item1, two.Item2, number, 1));
            Assert.Equal(a.What, b.What);
            Assert.True(a.Pair.File.AsSpan().SequenceEqual(b.Pair.File), a.What);
            Assert.True((a.Pair.Journal ?? []).AsSpan().SequenceEqual(b.Pair.Journal ?? []), a.What);
            Assert.Equal(a.Sides.Select(s => (s.Name, Convert.ToHexString(s.Bytes))), b.Sides.Select(s => (s.Name, Convert.ToHexString(s.Bytes))));
        }
    }
}

/// <summary>Tests that run the program within this process, and so have its console to themselves.</summary>
[CollectionDefinition(nameof(OneProcess), DisableParallelization = true)]
public sealed class OneProcess;
