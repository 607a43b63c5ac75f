using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>One leg of a line of them.</summary>
/// <param name="Direction">Which way it goes.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Place">What is around it; null where that was not said.</param>
public sealed record QuickLeg(LegDirection Direction, Length Length, CablePlace? Place);

/// <summary>One line that adds the legs of a home run, from the panel on: <c>up 8, across 46 in wall, down 3</c>.</summary>
/// <remarks>
/// Each leg is its direction, its length as cable is measured in the house, and what is around it; nothing is taken over from the leg before.
/// A place that stands alone at the end of the line is that of all its legs that have none: <c>up 8, across 46, down 3, in wall</c>.
/// </remarks>
public static class QuickLegs
{
    /// <summary>A line as it is typed in a house.</summary>
    public static string Example(House house) => house.DisplayUnits == DisplayUnits.Inches
        ? "up 8, across 46 in wall, down 3 1/2 ft" : "up 2.4, across 14 in wall, down 1.1";

    /// <summary>Reads a line.</summary>
    public static Result<ImmutableArray<QuickLeg>> Read(string line, House house)
    {
        var legs = ImmutableArray.CreateBuilder<QuickLeg>();
        var (bare, other) = ((string?)null, (string?)null);
        var texts = line.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var text in texts)
        {
            var leg = Leg(text, house);
            if (!leg.Ok && legs.Count > 0 && legs.Count == texts.Length - 1 && PlaceAlone(text, house) is { } around)
                return legs.Select(l => l.Place is null ? l with { Place = around } : l).ToImmutableArray();
            if (!leg.Ok)
                return new Refusal($"Leg {NumberText.Plain(legs.Count + 1)}: {leg.Reason}");
            legs.Add(leg.Value.Leg);
            if (IsBare(leg.Value.Typed))
                bare ??= leg.Value.Typed;
            else if (IsMetric(leg.Value.Typed) != (house.DisplayUnits == DisplayUnits.Millimetres))
                other ??= leg.Value.Typed;
        }
        if (bare is not null && other is not null)
            return new Refusal($"One leg is {other}, and {bare} has no unit: write {bare} m or {bare} ft.");
        return legs.Count == 0 ? new Refusal($"Type the legs from the panel on, such as {Example(house)}.") : legs.ToImmutable();
    }

    /// <summary>The change that adds the legs of a line behind those that a run has; a place alone is said of all its legs that have none.</summary>
    public static Result<Draft> Add(HomeRun run, string line) => Around(run, line) is var (place, open)
        ? open.Aggregate(new Draft($"{LegFacts.Place.Label} of {run.Name}: {LegFacts.Place.Show(place, run.House)}"),
            (draft, leg) => draft.Put(leg.Id, LegFacts.Place, place))
        : Read(line, run.House).Then<Draft>(legs =>
    {
        var draft = new Draft($"{NumberText.Counted(legs.Length, "leg")} of {run.Name}: {InWords(legs, run.House)}");
        foreach (var leg in legs)
        {
            draft = draft.New(ItemKind.Leg, run.Id, out var id).Put(id, LegFacts.Direction, leg.Direction).Put(id, LegFacts.Length, leg.Length)
                .PutIf(id, LegFacts.Place, leg.Place);
        }
        return draft;
    });

    /// <summary>What was understood of a line, with the length of all of it.</summary>
    public static Result<string> Echo(HomeRun run, string line) => Around(run, line) is var (place, open)
        ? $"{LegFacts.Place.Show(place, run.House)}: around {NumberText.Counted(open.Count, "leg")} of which nothing is said"
        : Read(line, run.House).Then<string>(legs => Echo(run, legs));

    /// <summary>A place that was typed alone, and the legs of a run that have none; null for any other line, and where each leg has one.</summary>
    private static (CablePlace Place, IReadOnlyList<Leg> Open)? Around(HomeRun run, string line) => PlaceAlone(line.Trim(), run.House) is { } place
        && run.Legs.Where(l => l.Place is null).ToList() is { Count: > 0 } open ? (place, open) : null;

    private static CablePlace? PlaceAlone(string text, House house) =>
        text.Length > 2 && char.IsLetter(text[0]) && LegFacts.Place.ReadTyped(text, house) is { Ok: true } stored
            ? KebabCase.Read<CablePlace>(stored.Value) : null;

    private static string Echo(HomeRun run, ImmutableArray<QuickLeg> legs)
    {
        var all = legs.Aggregate(Length.Zero, (sum, leg) => sum + leg.Length);
        var open = legs.Count(l => l.Place is null);
        return $"{InWords(legs, run.House)}: {all.ShowRounded(run.House.DisplayUnits, LengthScale.Run)}{(run.Legs.IsEmpty ? "" : " more")}"
            + (open == 0 ? "" : $"; what is around {NumberText.Counted(open, "leg")} is not said");
    }

    /// <summary>The legs of a run as a line that reads the same; null where it has none, or one without a direction or a length.</summary>
    public static string? LineOf(HomeRun run) => run.Legs.IsEmpty || run.Legs.Any(l => l.Direction is null || l.Length is null) ? null
        : InWords([.. run.Legs.Select(l => new QuickLeg(l.Direction!.Value, l.Length!.Value, l.Item.Get(LegFacts.Place)))], run.House);

    /// <summary>The lines of other runs that can be taken over: those of the same room first, then the nearest on the walk, each once.</summary>
    public static IReadOnlyList<string> OfNeighbours(HomeRun run)
    {
        var runs = run.House.Runs;
        var at = runs.IndexOf(runs.First(r => r.Id == run.Id));
        return [.. runs.Select((r, index) => (Run: r, Away: Math.Abs(index - at))).Where(r => r.Away > 0)
            .OrderBy(r => r.Run.Unit.Window.Room?.Id != run.Unit.Window.Room?.Id).ThenBy(r => r.Away).Select(r => LineOf(r.Run)).OfType<string>().Distinct()];
    }

    private static string InWords(IEnumerable<QuickLeg> legs, House house) => string.Join(", ", legs.Select(l => string.Join(' ',
        new[] { LegFacts.Direction.Show(l.Direction, house), l.Length.Show(house.DisplayUnits, LengthScale.Run),
            l.Place is { } place ? LegFacts.Place.Show(place, house) : null }.OfType<string>())));

    private static Result<(QuickLeg Leg, string Typed)> Leg(string text, House house)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        // "through floor" is two words; one is enough of it.
        var named = words.Length > 1 && LegFacts.Direction.ReadTyped($"{words[0]} {words[1]}", house).Ok ? 2 : 1;
        var way = LegFacts.Direction.ReadTyped(string.Join(' ', words.Take(named)), house);
        if (!way.Ok)
            return new Refusal($"\"{words[0]}\" is none of: {LegFacts.Direction.Hint}.");
        var rest = words[named..];
        var (place, measured) = Place(rest, house);
        if (measured.Length == 0)
            return new Refusal($"say how long it is, such as {Example(house).Split(',')[0]}.");
        var typed = string.Join(' ', measured);
        return LegFacts.Length.ReadTyped(typed, house).Then<(QuickLeg, string)>(stored => (new QuickLeg(
            KebabCase.Read<LegDirection>(way.Value)!.Value, LengthText.Read(stored, DisplayUnits.Millimetres).Value, place), typed));
    }

    private static bool IsBare(string length) => length.All(c => char.IsAsciiDigit(c) || c is '.');

    private static bool IsMetric(string length) => length.TrimEnd('.').EndsWith('m');

    /// <summary>What is around a leg stands last; <c>46 in wall</c> is 46 of the house's own, in a wall, and <c>46 in</c> is 46 inches.</summary>
    private static (CablePlace? Place, string[] Length) Place(string[] words, House house)
    {
        for (var count = Math.Min(4, words.Length - 1); count > 0; count--)
        {
            var last = string.Join(' ', words[^count..]);
            if (PlaceAlone(last, house) is { } place)
                return (place, words[..^count]);
        }
        return (null, words);
    }
}
