using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Kits;

/// <summary>The mark beside a value that was checked against the maker's sheet: it notes the edition of the sheet, where one is said.</summary>
/// <remarks>A mark of an older edition is kept and does not count: it says against what the value was checked. Old marks note no edition and count.</remarks>
public static class SheetMark
{
    private const string Yes = "yes";
    private const string OfEdition = "yes, edition ";

    /// <summary>The stored form of a mark that is made now, by the edition that is said of a part.</summary>
    public static string For(Item part) => For(EditionOf(part));

    /// <summary>The stored form of a mark against an edition; null where none is said.</summary>
    public static string For(string? edition) => edition is null ? Yes : OfEdition + edition;

    /// <summary>Whether a value of a part was checked against the edition of the sheet that is said of it.</summary>
    public static bool Holds(Item part, Fact fact) => Of(part, fact) is { } mark && Holds(mark, EditionOf(part));

    /// <summary>Whether a mark counts for an edition: it was made against that one, or nothing else is known.</summary>
    internal static bool Holds(string mark, string? edition) => Noted(mark) is not { } noted || edition is null || SameName.Comparer.Equals(noted, edition);

    /// <summary>The older edition that a value of a part was checked against; null where it was checked against this one, or never.</summary>
    public static string? OlderEdition(Item part, Fact fact) => Of(part, fact) is { } mark && !Holds(mark, EditionOf(part)) ? Noted(mark) : null;

    /// <summary>Whether a value of a part is another one than somebody checked: it was changed since.</summary>
    public static bool IsChangedSince(Item part, Fact fact) => part.Latest(Companion.Checked(fact.Name)) is { Stored: null } taken
        && part.Latest(fact) is { Stored: not null } value && value.Stamp >= taken.Stamp;

    /// <summary>
    /// The values of a part that count as checked, and would not were another edition said of it, or one for the first time: nobody knows whether it was
    /// that one.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="edition">The other edition.</param>
    internal static IEnumerable<Fact> Waiting(Item part, string edition) => EditionOf(part) is var now && SameName.Comparer.Equals(now, edition) ? []
        : SheetValues.Of(part.Kind).Where(f => Of(part, f) is { } mark && Holds(mark, now) && !SameName.Comparer.Equals(Noted(mark), edition));

    /// <summary>The values of a part that count as checked, and would not were another sheet said of it, or one for the first time.</summary>
    /// <param name="part">The part.</param>
    /// <param name="sheet">The other sheet.</param>
    internal static IEnumerable<Fact> WaitingForSheet(Item part, string sheet) =>
        SameName.Comparer.Equals(part.Latest(AboutSheet.Sheet)?.Stored, sheet) ? [] : SheetValues.Of(part.Kind).Where(f => Holds(part, f));

    /// <summary>The mark of what was checked against what is said of a part until now, once another edition is said: none where no edition was noted.</summary>
    internal static string? OfBefore(Item part, Fact fact) => EditionOf(part) is { } now ? For(now) : Noted(Of(part, fact)!) is null ? null : Of(part, fact);

    /// <summary>The stored mark of a value; null where there is none.</summary>
    internal static string? Of(Item part, Fact fact) => part.Latest(Companion.Checked(fact.Name))?.Stored;

    /// <summary>The edition that is said of a part; null where none is.</summary>
    internal static string? EditionOf(Item part) => part.Latest(AboutSheet.Edition)?.Stored;

    private static string? Noted(string mark) => mark.StartsWith(OfEdition, StringComparison.Ordinal) ? mark[OfEdition.Length..] : null;
}
