using System.Collections.Concurrent;
using TrimOut.TrueHouse.Tests.Faults;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>
/// One house with a fault beside the same house without it: what is said of the one and not of the other, about the place of the fault, is what finds
/// it.
/// </summary>
/// <param name="Fault">The fault.</param>
/// <param name="Seed">The seed of the house.</param>
/// <param name="Trace">Where it struck.</param>
/// <param name="Shown">The first stage whose recorded facts show it; null where none ever does.</param>
/// <param name="Heard">What names it, with the stage in which it is first said: the first word, and the first stop.</param>
public sealed record FaultRun(Fault Fault, int Seed, Trace Trace, Stage? Shown, IReadOnlyList<Word> Heard)
{
    private static readonly ConcurrentDictionary<int, HashSet<(Stage Stage, string Check, string Name)>> Faultless = new();

    /// <summary>All sentences that are said in the house with the fault, about whatever place.</summary>
    public IReadOnlyList<(string Check, string Text)> Sentences { get; private init; } = [];

    /// <summary>The first word about it; null when nothing is ever said.</summary>
    public Word? First => Heard.Count == 0 ? null : Heard[0];

    /// <summary>The first stop about it.</summary>
    public Word? FirstStop => Heard.FirstOrDefault(w => w.Weight == 2);

    /// <summary>How many stages too late the first word comes; null when none comes or nothing shows the fault.</summary>
    public int? Late => First is { } first && Shown is { } shown ? Math.Max(0, first.Stage - shown) : null;

    /// <summary>Lets a fault strike the house of a seed; null where that house can't have it.</summary>
    public static FaultRun? Of(Fault fault, int seed)
    {
        var house = RandomHouse.Of(seed);
        return fault.Strike(house, DiceFor(fault, seed)) is not { } trace ? null : Of(fault, seed, trace, Walk.Through(house));
    }

    /// <summary>What is heard of one fault in a walk.</summary>
    public static FaultRun Of(Fault fault, int seed, Trace trace, Walk walk)
    {
        var twin = Faultless.GetOrAdd(seed, SaidWithout);
        return new FaultRun(fault, seed, trace, ShownIn(trace, walk.Book),
            [.. Stages.All.SelectMany(s => HeardAt(s, fault, trace, walk, twin)).DistinctBy(w => (w.By, w.Weight))])
        {
            Sentences = [.. walk.NewlySaid().Select(s => (s.Said.Check, $"{s.Said.Message} {s.Said.Mend}"))],
        };
    }

    /// <summary>The dice of a fault in the house of a seed.</summary>
    public static Dice DiceFor(Fault fault, int seed) => new((seed * 977) + fault.Id.Sum(c => c * 31));

    private static Stage? ShownIn(Trace trace, Book book)
    {
        if (trace.From is not null || trace.ShownBy.Count == 0)
            return trace.From;
        return trace.ShownBy.Max(s => book.WrittenIn(s.Name, s.Fact)
            ?? book.Refusals.FirstOrDefault(r => r.Name == s.Name && r.Fact == s.Fact)?.Stage
            ?? throw new InvalidOperationException($"{s.Fact.Label} of {s.Name} is to show the fault and was never written."));
    }

    private static IEnumerable<Word> HeardAt(Stage stage, Fault fault, Trace trace, Walk walk, HashSet<(Stage Stage, string Check, string Name)> twin)
    {
        foreach (var refusal in walk.Book.Refusals.Where(r => r.Stage == stage && IsAbout(trace, r.Name)))
            yield return new Word(stage, "refused when it is typed", 2, "refused", refusal.Reason, "");
        foreach (var said in walk.SaidAt(stage).OrderByDescending(s => s.Weight))
        {
            var name = walk.Book.NameOf(said.Subject);
            if (!twin.Contains((stage, said.Check, name)) && IsAbout(trace, name) && !fault.DoNotNameIt.Contains(said.Check))
                yield return new Word(stage, said.Check, said.Weight, said.Word, said.Message, said.Mend);
        }
    }

    private static HashSet<(Stage Stage, string Check, string Name)> SaidWithout(int seed)
    {
        var walk = Walk.Through(RandomHouse.Of(seed));
        return [.. Stages.All.SelectMany(s => walk.SaidAt(s).Select(said => (s, said.Check, walk.Book.NameOf(said.Subject))))];
    }

    private static bool IsAbout(Trace trace, string name) =>
        trace.About.Any(a => name.StartsWith(a, StringComparison.Ordinal) || a.StartsWith(name, StringComparison.Ordinal));
}

/// <summary>What is said of a fault.</summary>
/// <param name="Stage">When it is first said.</param>
/// <param name="By">The id of the check, or that the entry is refused.</param>
/// <param name="Weight">2 for a stop or a refusal, 1 for a caution, 0 for a note.</param>
/// <param name="Severity">The same as a word.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Mend">What to do.</param>
public sealed record Word(Stage Stage, string By, int Weight, string Severity, string Message, string Mend);
