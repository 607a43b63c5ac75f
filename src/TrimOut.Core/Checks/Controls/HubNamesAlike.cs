using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Controls;

/// <summary>Names at the hub differ in more than a letter, a space or a mark.</summary>
/// <remarks>
/// <para>Why: Den left and Den lefft are one name to a hurried eye. Names that differ in a number are well told apart.</para>
/// <para>To clear: rename one at the hub and here.</para>
/// </remarks>
public sealed class HubNamesAlike : WideCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-names-alike", "Two names at the hub are too much alike", Severity.Caution, Phase.Pair,
        "names at the hub", new Source(Source.CommonPractice, "names without spaces and marks are not the same, nor do they differ in one letter more, less or other, digits aside"));

    /// <inheritdoc/>
    public override ImmutableArray<Fact> Watches { get; } = [UnitFacts.HubName, UnitFacts.Position, WindowFacts.Tag, WindowFacts.Covered];

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var named = house.Units.Select(u => (Unit: u, Name: u.Item.Get(UnitFacts.HubName))).Where(n => n.Name is not null).ToList();
        var bySketch = named.SelectMany(n => Sketches(Plain(n.Name!)).Select(s => (Sketch: s, n.Unit, Name: n.Name!))).ToLookup(n => n.Sketch);
        foreach (var (unit, name) in named)
        {
            var plain = Plain(name!);
            var alike = Sketches(plain).SelectMany(s => bySketch[s])
                .FirstOrDefault(o => o.Unit.Id != unit.Id && !string.Equals(o.Name, name, StringComparison.OrdinalIgnoreCase) && Alike(plain, Plain(o.Name)));
            yield return Result(unit, alike.Unit is null ? new Outcome.Fine() : new Outcome.Found(
                $"It is called \"{name}\" at the hub, and {alike.Unit.Tag} \"{alike.Name}\".", "Give one of the two a name that nobody mistakes.", FieldRef.To(unit.Item, UnitFacts.HubName)));
        }
    }

    /// <summary>Whether two plain names are the same or one letter apart; a digit more, less or other tells them apart.</summary>
    internal static bool Alike(string a, string b)
    {
        if (a.Length < b.Length)
            (a, b) = (b, a);
        var head = 0;
        while (head < b.Length && a[head] == b[head])
            head++;
        var tail = 0;
        while (tail < b.Length - head && a[^(tail + 1)] == b[^(tail + 1)])
            tail++;
        var (leftA, leftB) = (a[head..^tail], b[head..^tail]);
        return leftA.Length <= 1 && leftB.Length <= 1 && !(leftA + leftB).Any(char.IsAsciiDigit);
    }

    private static string Plain(string name) => string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    /// <summary>The name and the name with each letter left out: names one letter apart share one of them.</summary>
    private static IEnumerable<string> Sketches(string plain) =>
        Enumerable.Range(0, plain.Length).Select(at => plain.Remove(at, 1)).Prepend(plain).Distinct();
}
