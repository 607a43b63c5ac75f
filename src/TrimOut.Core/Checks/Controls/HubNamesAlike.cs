using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>Names at the hub differ in more than a letter, a space or a mark.</summary>
/// <remarks>
/// <para>Why: Den left and Den lefft are one name to a hurried eye. Names that differ in a number are well told apart.</para>
/// <para>To clear: rename one at the hub and here.</para>
/// </remarks>
public sealed class HubNamesAlike : HouseCheck
{
    private static readonly Message TooMuchAlike = new("It is called \"{0}\" at the hub, and {1} \"{2}\".");
    private static readonly Message RenameOne = new("Give one of the two a name that nobody mistakes.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("hub-names-alike", "Two names at the hub are too much alike", Severity.Caution, Phase.Pair,
        new Source(Source.CommonPractice, "names without spaces and marks are not the same, nor do they differ in one letter more, less or other, digits aside"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var named = house.Units.Select(u => (Unit: u, Name: u.Item.Get(UnitFacts.HubName))).Where(n => n.Name is not null).ToList();
        var alike = new Dictionary<string, Plain>(StringComparer.OrdinalIgnoreCase);
        // Names that are alike have the same digits, and in most houses the digits tell nearly all names apart.
        foreach (var names in named.Select((n, at) => new Plain(at, n.Name!)).DistinctBy(n => n.Name, StringComparer.OrdinalIgnoreCase).GroupBy(n => n.Digits))
            Compare([.. names], alike);
        foreach (var (unit, name) in named)
        {
            yield return Result(unit, !alike.TryGetValue(name!, out var other) ? new Outcome.Fine() : new Outcome.Found(
                TooMuchAlike.With(Arg.Typed(name!), Arg.Name(named[other.At].Unit), Arg.Typed(other.Name)), RenameOne,
                FieldRef.To(unit.Item, UnitFacts.HubName)));
        }
    }

    private static void Compare(Plain[] names, Dictionary<string, Plain> alike)
    {
        if (names.Length < 2)
            return;
        var bySketch = new Dictionary<ulong, Entry>(names.Length * 16);
        foreach (var name in names)
        {
            foreach (var sketch in name.Sketches)
                bySketch[sketch] = new Entry(name, bySketch.GetValueOrDefault(sketch));
        }
        foreach (var name in names)
        {
            if (First(name, bySketch) is { } other)
                alike.Add(name.Name, other);
        }
    }

    private static Plain? First(Plain name, Dictionary<ulong, Entry> bySketch)
    {
        Plain? first = null;
        foreach (var sketch in name.Sketches)
        {
            for (var entry = bySketch[sketch]; entry is not null; entry = entry.Next)
            {
                if (entry.Name != name && (first is null || entry.Name.At < first.At) && Alike(name.Text, entry.Name.Text))
                    first = entry.Name;
            }
        }
        return first;
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

    /// <summary>The names that share a sketch.</summary>
    private sealed record Entry(Plain Name, Entry? Next);

    /// <summary>A name without spaces and marks, in small letters.</summary>
    private sealed class Plain
    {
        public Plain(int at, string name)
        {
            (At, Name, Text) = (at, name, string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant());
            Digits = string.Concat(Text.Where(char.IsAsciiDigit));
        }

        public int At { get; }

        public string Name { get; }

        public string Text { get; }

        /// <summary>Hashes of the text and of the text with each letter left out: names one letter apart share one of them.</summary>
        public ulong[] Sketches => field ??= SketchesOf(Text);

        /// <summary>Its digits, in their order.</summary>
        public string Digits { get; }

        private static ulong[] SketchesOf(string text)
        {
            const ulong Base = 1_000_003;
            var sketches = new ulong[text.Length + 1];
            unchecked
            {
                // What stands behind each letter, hashed from the end; then the head grows as the left-out letter moves on.
                ulong tail = 0, power = 1, head = 0;
                var (tails, powers) = (new ulong[text.Length + 1], new ulong[text.Length + 1]);
                for (var at = text.Length; at >= 0; at--)
                {
                    (tails[at], powers[at]) = (tail, power);
                    if (at > 0)
                        (tail, power) = (tail + (text[at - 1] + 1UL) * power, power * Base);
                }
                for (var at = 0; at < text.Length; at++)
                {
                    sketches[at] = head * powers[at + 1] + tails[at + 1];
                    head = head * Base + text[at] + 1;
                }
                sketches[^1] = head;
            }
            return sketches;
        }
    }
}
