using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>What is said about the sheet that the values of a part were checked against: every sort of part has these facts.</summary>
public static class AboutSheet
{
    /// <summary>Which sheet.</summary>
    public const string Sheet = "sheet";

    /// <summary>Its edition.</summary>
    public const string Edition = "edition";

    /// <summary>Who checked the values against it.</summary>
    public const string HeldBy = "held-by";

    /// <summary>When.</summary>
    public const string HeldOn = "held-on";

    /// <summary>The most characters of whoever checked, and of an edition.</summary>
    public const int LongestName = 40;

    /// <summary>The names of these facts.</summary>
    public static ImmutableArray<string> Names { get; } = [Sheet, Edition, HeldBy, HeldOn];

    /// <summary>The names of those that say which sheet it is.</summary>
    public static ImmutableArray<string> WhichSheet { get; } = [Sheet, Edition];

    /// <summary>Whether a fact is one of them.</summary>
    public static bool Is(Fact fact) => FactTable.IsKit(fact.Subject) && Names.Contains(fact.Name);

    /// <summary>One of these facts of a sort of part.</summary>
    public static Fact Of(ItemKind kind, string name) => FactTable.Find(kind, name)!;

    internal static Fact[] Declared(Declare of) =>
    [
        of.Text(Sheet, "Maker's sheet", "The sheet that the values were checked against, by its title or number."),
        of.Text(Edition, "Edition", "The edition of that sheet, as it stands on it.", null, LongestName),
        of.Text(HeldBy, "Checked by", "Who checked the values against it.", null, LongestName),
        of.Date(HeldOn, "Checked on", "When that was."),
    ];
}
