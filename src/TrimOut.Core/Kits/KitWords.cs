using System.Collections.Frozen;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>Names that the program itself gives to parts of a blank kit, whichever house they stand in. What somebody wrote over them is typed text.</summary>
public static class KitWords
{
    private static readonly FrozenSet<string> Names = Enum.GetValues<DisplayUnits>()
        .SelectMany(units => new Draft("").WithBlankKit(units).Edits.OfType<Edit.Put>())
        .Where(p => p.Field == CoveringKindFacts.Name.Name).Select(p => p.Value!).ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Own = Names.Where(v => v.All(c => char.IsLetter(c) || c == ' ')).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>All of them.</summary>
    public static IReadOnlyCollection<string> All => Own;

    /// <summary>Whether a name in the kit is one of ours.</summary>
    public static bool Has(string text) => Own.Contains(text);

    /// <summary>Whether a part of a blank kit has that name, in words or by a size: nobody typed it yet.</summary>
    public static bool IsNameOfBlank(string name) => Names.Contains(name);

    /// <summary>A text of the kit: ours in the words of a language, a typed one as it was typed.</summary>
    public static string In(Func<string, string> words, string text) => Has(text) ? words(text) : text;
}
