using TrimOut.Core.Kits;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What lines of a parts list have in common: counts, names, and what is not known yet.</summary>
internal static class PartWords
{
    private const int MostNames = 8;

    private static readonly Message AsCalled = new("{0}");
    private static readonly Message AndMore = new("{0} and {1} more");
    private static readonly Message Colon = new("{0}: {1}");
    private static readonly Message Then = new("{0}; {1}");
    private static readonly Message OneRun = new("1 run");
    private static readonly Message Runs = new("{0} runs");
    private static readonly Message OneUnit = new("1 unit");
    private static readonly Message Units = new("{0} units");
    private static readonly Message OneRemote = new("1 remote");
    private static readonly Message Remotes = new("{0} remotes");
    private static readonly Message OneBox = new("1 box");
    private static readonly Message Boxes = new("{0} boxes");

    /// <summary>A part as it was typed.</summary>
    public static Sentence Typed(string name) => AsCalled.With(Arg.Typed(name));

    /// <summary>A part of the kit: a name of ours in the reader's words, a typed one as it was typed.</summary>
    public static Sentence Called(string name) => AsCalled.With(OfKit(name));

    /// <summary>The name of a part of the kit, in the same way, within a sentence.</summary>
    public static Arg OfKit(string name) => KitWords.Has(name) ? (Arg)new Message(name) : Arg.Typed(name);

    /// <summary>A count and what is counted.</summary>
    public static Arg ManyRuns(int count) => Many(count, OneRun, Runs);

    /// <inheritdoc cref="ManyRuns"/>
    public static Arg ManyUnits(int count) => Many(count, OneUnit, Units);

    /// <inheritdoc cref="ManyRuns"/>
    public static Arg ManyRemotes(int count) => Many(count, OneRemote, Remotes);

    /// <inheritdoc cref="ManyRuns"/>
    public static Arg ManyBoxes(int count) => Many(count, OneBox, Boxes);

    /// <summary>Names with commas, the first few of them.</summary>
    public static Arg Names(IEnumerable<string> names)
    {
        var all = names.ToList();
        var first = Arg.Typed(string.Join(", ", all.Take(MostNames)));
        return all.Count > MostNames ? AndMore.With(first, all.Count - MostNames) : first;
    }

    /// <summary>The first few of some sentences with commas.</summary>
    public static Sentence All(IReadOnlyList<Sentence> said)
    {
        var first = Arg.All(said.Take(MostNames).Select(s => (Arg)s));
        return said.Count > MostNames ? AndMore.With(first, said.Count - MostNames) : AsCalled.With(first);
    }

    /// <summary>A count with the names of what is counted.</summary>
    public static Sentence Counted(int count, IEnumerable<string> names) => Colon.With(count, Names(names));

    /// <summary>A sentence, and behind it of which something is not known yet; the sentence alone where there is none.</summary>
    public static Sentence But(this Sentence said, Message why, IEnumerable<string> names) =>
        names.ToList() is { Count: > 0 } some ? Then.With(said, Colon.With(why, Names(some))) : said;

    /// <summary>Two sentences.</summary>
    public static Sentence And(this Sentence said, Sentence more) => Then.With(said, more);

    private static Arg Many(int count, Message one, Message many) => count == 1 ? one : many.With(count);
}
