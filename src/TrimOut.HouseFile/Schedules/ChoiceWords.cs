using TrimOut.Core.Facts;

namespace TrimOut.HouseFile.Schedules;

/// <summary>What offices write in German and Spanish for the sides and the mounts, whose columns are known by their German and Spanish headers too.</summary>
internal static class ChoiceWords
{
    private static readonly Dictionary<string, string> Sides = Of(
        ("left", ["links", "li", "izquierda", "izquierdo", "izq"]), ("right", ["rechts", "re", "derecha", "derecho", "der"]));

    private static readonly Dictionary<string, string> Mounts = Of(
        ("inside", ["innen", "adentro", "dentro", "interior"]), ("outside", ["außen", "aussen", "afuera", "fuera", "exterior"]));

    /// <summary>The choice that is meant, in our word; any other text as it is.</summary>
    /// <param name="fact">The detail.</param>
    /// <param name="text">What the schedule has.</param>
    public static string InOurs(Fact fact, string text) =>
        (fact == UnitFacts.LeadSide ? Sides : fact == WindowFacts.Mount ? Mounts : null)?.GetValueOrDefault(text.Trim().TrimEnd('.')) ?? text;

    private static Dictionary<string, string> Of(params (string Ours, string[] Theirs)[] words) =>
        words.SelectMany(w => w.Theirs.Select(t => (t, w.Ours))).ToDictionary(w => w.t, w => w.Ours, StringComparer.OrdinalIgnoreCase);
}
