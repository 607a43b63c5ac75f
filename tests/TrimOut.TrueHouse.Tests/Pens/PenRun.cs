using System.Collections.Concurrent;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Pens;

/// <summary>One value of a faultless house, written otherwise than it was seen.</summary>
/// <param name="Seed">The house.</param>
/// <param name="Name">What it is of.</param>
/// <param name="Fact">The fact.</param>
/// <param name="Slip">The slip.</param>
/// <param name="Seen">What was seen.</param>
/// <param name="Typed">What was written.</param>
/// <param name="Wrong">What comes out otherwise by the book; nothing where the job is the same.</param>
/// <param name="Heard">The stage and what is said of it first, in words; null when nothing is.</param>
public sealed record PenRun(int Seed, string Name, Fact Fact, PenSlip Slip, string Seen, string Typed, string? Wrong, string? Heard)
{
    private static readonly ConcurrentDictionary<int, Without> Twins = new();

    /// <summary>Every slip of every fact that is written in the house of a seed, at one place of it each.</summary>
    public static IEnumerable<PenRun> Of(int seed)
    {
        var twin = Twins.GetOrAdd(seed, Without.Of);
        var metric = RandomHouse.Of(seed).Metric;
        foreach (var entries in twin.Seen.GroupBy(s => s.Key.Fact).OrderBy(g => g.Key.Subject).ThenBy(g => g.Key.Name, StringComparer.Ordinal))
        {
            foreach (var slip in Enum.GetValues<PenSlip>())
            {
                var dice = new Dice((seed * 31) + (entries.Key.Name.Sum(c => c) * 7) + (int)slip);
                var at = dice.Of([.. entries]);
                var others = entries.Where(e => e.Key.Key != at.Key.Key).Select(e => e.Value).ToList();
                if (slip.Of(entries.Key, at.Value, others, metric, dice) is { } typed)
                    yield return Of(seed, twin, at.Key.Key, entries.Key, slip, at.Value, typed);
            }
        }
    }

    private static PenRun Of(int seed, Without twin, string name, Fact fact, PenSlip slip, string seen, string typed)
    {
        var house = RandomHouse.Of(seed);
        house.Slips.Writes(name, fact, typed);
        var (installer, done, heard) = (new Installer(house), new DoneByTheBook(), (string?)null);
        foreach (var stage in Stages.All)
        {
            try
            {
                installer.Write(stage);
            }
            catch (Exception e) when (e is NullReferenceException or InvalidOperationException or KeyNotFoundException)
            {
                // Who walks on has no line on the sheet for what stands before him, and asks.
                return new PenRun(seed, name, fact, slip, seen, typed, "a line is missing", $"{stage.Full()}: no line for it");
            }
            done.Note(installer, stage);
            if (heard is null && installer.Book.Refusals.Count > 0)
                heard = $"{stage.Full()}: refused: {installer.Book.Refusals[0].Reason}";
            if (heard is null && (stage is Stage.Sized or Stage.Handover || installer.Book.WrittenIn(name, fact) == stage))
            {
                heard = Said.Of(installer.Book.House).Where(s => s.Weight > 0 && !twin.Said.Contains((stage, s.Check, s.Subject)))
                    .Select(s => $"{stage.Full()}: {s.Word} {s.Check}").FirstOrDefault();
            }
        }
        return new PenRun(seed, name, fact, slip, seen, typed, done.OtherThan(twin.Done).FirstOrDefault(), heard);
    }

    /// <summary>The same house without the slip.</summary>
    private sealed record Without(IReadOnlyDictionary<(string Key, Fact Fact), string> Seen, DoneByTheBook Done, HashSet<(Stage, string, string)> Said)
    {
        public static Without Of(int seed)
        {
            var (installer, done, said) = (new Installer(RandomHouse.Of(seed)), new DoneByTheBook(), new HashSet<(Stage, string, string)>());
            foreach (var stage in Stages.All)
            {
                installer.Write(stage);
                done.Note(installer, stage);
                said.UnionWith(Recording.Said.Of(installer.Book.House).Where(s => s.Weight > 0).Select(s => (stage, s.Check, s.Subject)));
            }
            return new Without(installer.Truth.Slips.Seen, done, said);
        }
    }
}
