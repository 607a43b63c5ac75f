using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>Says which fact is missing and where it is filled in.</summary>
internal static class Unknown
{
    /// <summary>A fact of an item.</summary>
    public static Outcome.NotChecked Of(Subject subject, Fact fact) => new(Named(subject, fact), FieldRef.To(subject.Item, fact));

    /// <summary>A fact of a part of the kit, or the part itself where none is chosen.</summary>
    /// <param name="sheet">The part; null when none is chosen.</param>
    /// <param name="fact">The fact.</param>
    /// <param name="chooser">The item that the part is chosen for.</param>
    /// <param name="choice">The fact that chooses it.</param>
    public static Outcome.NotChecked Of(KitSheet? sheet, Fact fact, Subject chooser, Fact choice) =>
        sheet is null ? Of(chooser, choice) : Of(sheet, fact);

    private static string Named(Subject subject, Fact fact)
    {
        var label = char.ToLowerInvariant(fact.Label[0]) + fact.Label[1..];
        return subject switch
        {
            KitSheet sheet => $"{label} of {sheet.Name} in the kit",
            JobItself => $"{label} of the house",
            _ => label,
        };
    }
}
