using System.Reflection;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Papers.Tests.Templates;

/// <summary>Everything that the program itself says in the findings of a house, gathered from the code, so that a language can be held to all of it.</summary>
internal static class OurWords
{
    /// <summary>The words of all messages: every static field that holds one, private ones too.</summary>
    public static IReadOnlyList<string> Messages { get; } =
        [.. typeof(Message).Assembly.GetTypes().Where(t => !t.ContainsGenericParameters)
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(f => f.FieldType == typeof(Message)).Select(f => ((Message)f.GetValue(null)!).English).Distinct()];

    /// <summary>What checks, facts, choices, steps, items and the parts of a blank kit are called.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. AllChecks.All.Select(c => c.Info.Title)
            .Concat(Enum.GetNames<Severity>()).Concat(StepList.All.Select(s => s.Label))
            .Concat(Enum.GetValues<ItemKind>().Where(HasAName).Select(k => KebabCase.Of(k)))
            .Concat(KitWords.All).Concat(Units).Distinct()];

    /// <summary>The units that are words, or written otherwise elsewhere.</summary>
    public static IEnumerable<string> Units => ["in", "ft", "ohm", "C", "degrees", "deg", "mm2"];

    /// <summary>The units that are written alike in every language.</summary>
    public static IReadOnlyList<string> SameUnits => ["V", "A", "mm", "m", "s", "AWG"];

    /// <summary>A label by itself, and with its subject before it, which goes first.</summary>
    public static IEnumerable<(string Named, string Alone)> Labels => FactTable.All.Select(f => ($"{Subject(f)}: {f.Label}", f.Label)).Distinct();

    /// <summary>A choice by itself, and with its fact before it, which goes first; what is marked on a jacket is the same everywhere.</summary>
    public static IEnumerable<(string Named, string Alone)> Choices => FactTable.All.Where(f => f.IsChoice)
        .SelectMany(f => f.Options(House.Empty).Where(o => f != CableTypeFacts.Listing || o.Shown.Contains(' ', StringComparison.Ordinal))
        .Select(o => ($"{f.Label}: {o.Shown}", o.Shown)))
        .Concat(CompassPoints.Select(p => ($"{WindowFacts.Facing.Label}: {p}", p)))
        .Distinct();

    private static IEnumerable<string> CompassPoints => Enumerable.Range(0, 16).Select(at => new Azimuth(at * 22.5m).Point);

    private static bool HasAName(ItemKind kind) => FactTable.Find(kind, "name") is not null && kind != ItemKind.House;

    private static string Subject(Fact fact)
    {
        var kind = KebabCase.Of(fact.Subject).Replace('-', ' ');
        return char.ToUpperInvariant(kind[0]) + kind[1..];
    }
}
