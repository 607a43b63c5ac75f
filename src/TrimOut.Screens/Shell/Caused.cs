using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Shell;

/// <summary>
/// What saved values brought up and nobody has seen yet: of the latest change first, the worst first, then what is older. A wrong reading is told while the
/// meter is still on the cable, whatever else stands.
/// </summary>
/// <param name="Findings">The findings, as the house has them now.</param>
/// <param name="Latest">How many of them, from the first on, the latest change brought up.</param>
internal sealed record Caused(ImmutableArray<Finding> Findings, int Latest)
{
    public static readonly Caused Nothing = new([], 0);

    private const int MostLines = 3;

    /// <summary>The finding that is shown; null when there is none.</summary>
    public Finding? Shown => Findings.FirstOrDefault();

    /// <summary>With what a change brought up: what was not there before, and what its own values are still wrong about.</summary>
    public Caused With(Change change, CheckReport before, CheckReport after)
    {
        var known = before.Findings.Where(f => f.Open).Select(Key).ToHashSet();
        var put = change.Edits.OfType<Edit.Put>().Select(p => new FieldRef(p.Item, p.Field)).ToHashSet();
        // A check may tell all that is wrong with one thing in one finding, which leads to the first of it: a fault more of it is new all the same.
        var touched = put.Select(p => p.Item).ToHashSet();
        List<Finding> raised = [.. after.Findings.Where(f => f.Open && (!known.Contains(Key(f)) || (Touches(f)
            && !before.Findings.Any(b => Key(b) == Key(f) && b.Found.Message.Equals(f.Found.Message)))))];
        var latest = raised.Select(Key).ToHashSet();
        return new Caused([.. raised, .. Findings.Where(f => !latest.Contains(Key(f)))], raised.Count).Still(after);

        bool Touches(Finding f) => put.Contains(f.Found.Mends) || (touched.Contains(f.Subject.Id) && FactTable.IsKit(f.Subject.Kind));
    }

    /// <summary>What is left of it in the house as it is now.</summary>
    public Caused Still(CheckReport report)
    {
        if (Findings.IsEmpty)
            return this;
        var unseen = Findings.Select(Key).Distinct().ToList();
        var now = report.Findings.Where(f => f.Open).ToLookup(Key);
        var latest = Findings.Take(Latest).Select(Key).ToHashSet();
        ImmutableArray<Finding> all = [.. unseen.SelectMany(key => now[key].OrderBy(f => Raised(f) is >= 0 and var at ? at : int.MaxValue))];
        return new(all, all.Count(f => latest.Contains(Key(f))));

        // Of several that one check says of one thing, the one that came last stays in front.
        int Raised(Finding f) => Findings.ToList().FindIndex(r => Key(r) == Key(f) && r.Found.Message.Equals(f.Found.Message));
    }

    /// <summary>After a look at the screen: a stop stays until somebody says that it was seen.</summary>
    public Caused LookedAt => new(Findings.RemoveAll(f => !FindingSigns.IsStop(f)), Findings.Take(Latest).Count(FindingSigns.IsStop));

    /// <summary>Without the one that is shown, and what else the same check says of the same thing.</summary>
    public Caused Next
    {
        get
        {
            if (Findings.IsEmpty)
                return this;
            var seen = Key(Findings[0]);
            return new(Findings.RemoveAll(f => Key(f) == seen), Findings.Take(Latest).Count(f => Key(f) != seen));
        }
    }

    /// <summary>The lines that it takes, and their tone.</summary>
    /// <param name="context">What is seen.</param>
    /// <param name="cells">How wide the screen is.</param>
    /// <param name="typing">Whether something is being typed: no key leads from there.</param>
    public (IReadOnlyList<string> Lines, Tone Tone) Lines(ScreenContext context, int cells, bool typing)
    {
        if (Shown is not { } worst)
            return ([], Tone.Text);
        var severity = worst.Check.Severity;
        var (others, older) = (Math.Max(Latest, 1) - 1, Findings.Length - Math.Max(Latest, 1));
        string?[] beside =
        [
            others > 0 ? $"{NumberText.Plain(others)} more" : null,
            older > 0 ? $"{NumberText.Plain(older)} older {(AllStops(older) ? UnitCard.WordOf(Severity.Stop) + " " : "")}{(older == 1 ? "stays" : "stay")}"
                : null,
            typing ? null : severity != Severity.Stop ? "f fixes it" : Findings.Length == 1 ? "f fixes it, Esc: seen" : "f fixes it, Esc: all seen",
        ];
        var said = string.Join("; ", beside.OfType<string>()) is { Length: > 0 } some ? $" ({some})" : "";
        var text = $"{(severity == Severity.Stop ? context.Glyphs.Stop + " " : "")}{UnitCard.WordOf(severity)}{said} " +
            $"{context.House.NameOf(worst.Subject)}: {context.Report.Said(worst)}";
        return ([.. TextWidth.Wrap(text, cells).Take(MostLines)], UnitCard.ToneOf(severity));
    }

    private bool AllStops(int last) => Findings.Skip(Findings.Length - last).All(FindingSigns.IsStop);

    private static (string, string, Core.Phases.Phase, Severity) Key(Finding f) => (f.Check.Id, f.Subject.Id, f.Check.Phase, f.Check.Severity);
}
