using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Shell;

/// <summary>What saved values brought up and nobody has seen yet, the worst first. A wrong reading is told while the meter is still on the cable.</summary>
/// <param name="Findings">The findings, as the house has them now.</param>
internal sealed record Caused(ImmutableArray<Finding> Findings)
{
    public static readonly Caused Nothing = new([]);

    private const int MostLines = 3;

    /// <summary>The finding that is shown; null when there is none.</summary>
    public Finding? Worst => Findings.FirstOrDefault();

    /// <summary>With what a change brought up: what was not there before, and what its own values are still wrong about.</summary>
    public Caused With(Change change, CheckReport before, CheckReport after)
    {
        var known = before.Findings.Where(f => f.Open).Select(Key).ToHashSet();
        var put = change.Edits.OfType<Edit.Put>().Select(p => new FieldRef(p.Item, p.Field)).ToHashSet();
        var raised = after.Findings.Where(f => f.Open && (!known.Contains(Key(f)) || (put.Contains(f.Found.Mends)
            && !before.Findings.Any(b => Key(b) == Key(f) && b.Found.Message.Equals(f.Found.Message))))).Select(Key);
        var unseen = Findings.Select(Key).Concat(raised).ToHashSet();
        return new([.. after.Findings.Where(f => f.Open && unseen.Contains(Key(f)))]);
    }

    /// <summary>What is left of it in the house as it is now.</summary>
    public Caused Still(CheckReport report)
    {
        if (Findings.IsEmpty)
            return this;
        var unseen = Findings.Select(Key).ToHashSet();
        return new([.. report.Findings.Where(f => f.Open && unseen.Contains(Key(f)))]);
    }

    /// <summary>After a look at the screen: a stop stays until somebody says that it was seen.</summary>
    public Caused LookedAt => new(Findings.RemoveAll(f => !FindingSigns.IsStop(f)));

    /// <summary>Without the one that is shown.</summary>
    public Caused Next => Findings.IsEmpty ? this : new(Findings.RemoveAt(0));

    /// <summary>The lines that it takes, and their tone.</summary>
    /// <param name="context">What is seen.</param>
    /// <param name="cells">How wide the screen is.</param>
    /// <param name="typing">Whether something is being typed: no key leads from there.</param>
    public (IReadOnlyList<string> Lines, Tone Tone) Lines(ScreenContext context, int cells, bool typing)
    {
        if (Worst is not { } worst)
            return ([], Tone.Text);
        var severity = worst.Check.Severity;
        var keys = typing ? "" : severity == Severity.Stop ? " (f fixes it, Esc: seen)" : " (f fixes it)";
        var more = Findings.Length == 1 ? "" : $" 1 of {Core.Units.NumberText.Plain(Findings.Length)}";
        var text = $"{(severity == Severity.Stop ? context.Glyphs.Stop + " " : "")}{UnitCard.WordOf(severity)}{more}{keys} " +
            $"{context.House.NameOf(worst.Subject)}: {worst.Found.Message.In(context.House)}";
        return ([.. TextWidth.Wrap(text, cells).Take(MostLines)], UnitCard.ToneOf(severity));
    }

    private static (string, string, Core.Phases.Phase, Severity) Key(Finding f) => (f.Check.Id, f.Subject.Id, f.Check.Phase, f.Check.Severity);
}
