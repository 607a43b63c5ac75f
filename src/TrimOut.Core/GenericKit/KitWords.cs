using System.Collections.Frozen;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Core.GenericKit;

/// <summary>Names and texts of the generic kit: our own words, whichever house they stand in. What somebody wrote over them is typed text.</summary>
public static class KitWords
{
    private static readonly FrozenSet<string> Own = new Draft("").WithGenericKit(DisplayUnits.Inches).Edits.OfType<Edit.Put>()
        .Where(p => p.Field == CoveringKindFacts.Name.Name || p.Field == CoveringKindFacts.PairCue.Name || p.Field == CoveringKindFacts.PresetCue.Name
            || p.Field == CoveringKindFacts.LimitsHow.Name)
        .Select(p => p.Value!).Where(v => v.Any(char.IsLetter)).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>All of them.</summary>
    public static IReadOnlyCollection<string> All => Own;

    /// <summary>Whether a text of the kit is one of ours.</summary>
    public static bool Has(string text) => Own.Contains(text);

    /// <summary>A text of the kit: ours in the words of a language, a typed one as it was typed.</summary>
    public static string In(Func<string, string> words, string text) => Has(text) ? words(text) : text;
}
