using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Writing;

/// <summary>Facts as they stand on paper: never an empty place, which could be taken for a mistake.</summary>
internal static class Entries
{
    /// <summary>A fact as it is shown, or a dash where nothing was noted.</summary>
    public static Inline Entry(this Subject subject, Fact fact) => Printed(subject, fact) ?? Inline.Dash;

    /// <summary>A fact as it is shown, or "not yet" where it is still to come.</summary>
    public static Inline EntryOrNotYet(this Subject subject, Fact fact) => Printed(subject, fact) ?? Inline.NotYet;

    /// <summary>A day, "planned" where it comes after the day of the paper, or "not yet" where none is known.</summary>
    public static Inline DayOrNotYet(this Subject subject, Fact<DateOnly> fact, DateOnly paper) =>
        subject.Item.Get(fact) is { } day && day > paper ? Inline.Ours($"planned for {day.OnPaper()}") : subject.EntryOrNotYet(fact);

    /// <summary>A fact as it is shown, or a blank to write it in by hand.</summary>
    public static Inline EntryOrBlank(this Subject subject, Fact fact) => Printed(subject, fact) ?? Inline.Blank;

    /// <summary>A figure of the house, and that nobody typed it where it is what the program began with; a blank where there is none.</summary>
    public static Inline BegunEntry(this JobItself job, Fact fact, string unit = "") => Shown(job, fact) is not { } shown ? Inline.Blank
        : (unit.Length == 0 ? shown : Inline.Join(" ", [shown, unit])) is var figure && BegunWith.Is(job.Item, fact)
            ? Inline.Ours($"{figure} (what the program began with, typed by nobody)") : figure;

    /// <summary>
    /// Lengths that belong together, the unit of all behind the last one; a dash in the place of each that was not noted, and a single one where none was.
    /// </summary>
    public static Inline Sizes(this Subject subject, string between, params IReadOnlyList<Fact<Length>> facts)
    {
        var shown = facts.Select(f => subject.Shown(f) is null ? null : subject.Show(f)).ToList();
        if (shown.TrueForAll(l => l is null))
            return Inline.Dash;
        if (facts.Any(f => DisputeMarks.IsOn(subject, f)))
            return Inline.Join(between, [.. facts.Select(f => subject.Entry(f))]);
        var unit = shown[^1] is { } last ? last[(last.LastIndexOf(' ') + 1)..] : "";
        return unit.Length > 0 && unit.All(char.IsLetter) && shown.TrueForAll(s => s?.EndsWith($" {unit}", StringComparison.Ordinal) == true)
            ? Inline.Join(between, [.. shown.SkipLast(1).Select(s => Inline.Figure(s![..^(unit.Length + 1)])), Inline.Figure(shown[^1]!)])
            : Inline.Join(between, [.. facts.Select(f => subject.Entry(f))]);
    }

    /// <summary>A figure that was printed with a point, in the number style of the wording; a dash where there is none.</summary>
    public static Inline FigureOrDash(this string? printed) => printed is null ? Inline.Dash : Inline.Figure(printed);

    /// <summary>The text, or a dash where there is none.</summary>
    public static Inline OrDash(this string? text) => string.IsNullOrWhiteSpace(text) ? Inline.Dash : text;

    /// <summary>The parts that there are, or a dash where there is none.</summary>
    public static Inline JoinOrDash(this IEnumerable<Inline?> parts, string between = ", ") =>
        parts.OfType<Inline>().ToList() is { Count: > 0 } some ? Inline.Join(between, some) : Inline.Dash;

    /// <summary>The texts that there are, or a dash where there is none.</summary>
    public static Inline JoinOrDash(this IEnumerable<string?> parts, string between = ", ") =>
        string.Join(between, parts.Where(p => !string.IsNullOrWhiteSpace(p))).OrDash();

    /// <summary>What a part of the kit is called.</summary>
    public static Inline OnPaper(this KitSheet part) => OfKit(part.Name);

    /// <summary>
    /// A fact as it is shown; null where nothing was noted. A choice and the names of a blank kit are our own words; everything else was typed.
    /// </summary>
    public static Inline? Shown(this Subject subject, Fact fact) => subject.Show(fact) switch
    {
        "" => null,
        var text when string.IsNullOrWhiteSpace(text) => null,
        var text when fact is Fact<ItemRef> || FactTable.IsKit(fact.Subject) && fact is Fact<string> => OfKit(text),
        // The word for nothing in the way or no damage is offered, and typed as it stands there.
        "none" when fact is Fact<string> => Inline.Choice(fact.Label, "none"),
        var text when fact is Fact<string> or Fact<PartCounts> => text,
        var text when fact.Options(subject.House).Count > 0 || fact is Fact<Resistance> or Fact<Azimuth> && text.All(char.IsLetter) =>
            Inline.Choice(fact.Label, text),
        var text => Inline.Figure(text),
    };

    private static Inline? Printed(Subject subject, Fact fact) => Shown(subject, fact)?.Marked(
        subject is KitSheet part && !part.IsChecked(fact) && SheetValues.Of(part.Item.Kind).Contains(fact) ? [FieldRef.To(part.Item, fact)] : [], null)
        .InDispute(subject, fact);

    /// <summary>A text of the kit: ours in the reader's words, a typed one as it was typed.</summary>
    public static Inline OfKit(string text) => KitWords.Has(text) ? Inline.Ours(text) : text;
}
