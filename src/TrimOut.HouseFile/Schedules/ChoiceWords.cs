using TrimOut.Core.Facts;

namespace TrimOut.HouseFile.Schedules;

/// <summary>What offices write in German and Spanish for the sides and the mounts, whose columns are known by their German and Spanish headers too.</summary>
internal static class ChoiceWords
{
    private static readonly Dictionary<string, string> Sides = new(StringComparer.OrdinalIgnoreCase)
    {
        ["links"] = "left", ["li"] = "left", ["izquierda"] = "left", ["izquierdo"] = "left", ["izq"] = "left",
        ["rechts"] = "right", ["re"] = "right", ["derecha"] = "right", ["derecho"] = "right", ["der"] = "right",
    };

    private static readonly Dictionary<string, string> Mounts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["innen"] = "inside", ["adentro"] = "inside", ["dentro"] = "inside", ["interior"] = "inside",
        ["außen"] = "outside", ["aussen"] = "outside", ["afuera"] = "outside", ["fuera"] = "outside", ["exterior"] = "outside",
    };

    /// <summary>The choice that is meant, in our word; any other text as it is.</summary>
    /// <param name="fact">The detail.</param>
    /// <param name="text">What the schedule has.</param>
    public static string InOurs(Fact fact, string text) =>
        (fact == UnitFacts.LeadSide ? Sides : fact == WindowFacts.Mount ? Mounts : null)?.GetValueOrDefault(text.Trim().TrimEnd('.')) ?? text;
}
