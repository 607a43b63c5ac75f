using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What a line of a parts list is about.</summary>
public enum PartGroup
{
    /// <summary>Units and what hides them.</summary>
    Coverings,

    /// <summary>Cable and boxes of it.</summary>
    Cable,

    /// <summary>Panels and other supplies.</summary>
    Supplies,

    /// <summary>Hubs, remotes and wall plates.</summary>
    Controls,

    /// <summary>What the sheets count for each unit and each run.</summary>
    SmallParts,

    /// <summary>What is to be had more than the house takes.</summary>
    Spares,
}

/// <summary>One line of a parts list.</summary>
/// <param name="Group">What it is about.</param>
/// <param name="Part">The part, as the kit calls it.</param>
/// <param name="Count">How many, or how much; null when it can't be counted yet.</param>
/// <param name="Unit">What is counted: empty for pieces, else ft or m.</param>
/// <param name="CountedFrom">What it was counted from, or what is missing.</param>
public sealed record PartLine(PartGroup Group, Sentence Part, decimal? Count, string Unit, Sentence CountedFrom)
{
    /// <summary>The phase that it is first needed in (common practice, no published source).</summary>
    public Phase NeededIn { get; init; } = Group switch
    {
        PartGroup.Cable => Phase.RoughIn,
        PartGroup.Supplies => Phase.Power,
        PartGroup.Controls => Phase.Pair,
        PartGroup.Spares => Phase.Handover,
        _ => Phase.Hang,
    };

    /// <summary>What the part is called by whoever wants some of it spare; empty for what is made to measure, and for what is no part yet.</summary>
    public string Name { get; init; } = "";

    /// <summary>The units that the maker makes it for; none for all that a supplier has.</summary>
    public ImmutableArray<Unit> MadeFor { get; init; } = [];

    /// <summary>The things of the house that are counted, one by one; none where it is counted from all that its phase is about.</summary>
    public ImmutableArray<CountedItem> Items { get; init; } = [];

    /// <summary>Whether something that is counted here is not known yet, so that it will be no fewer, and may be more.</summary>
    public bool AtLeast { get; init; }

    /// <summary>The values of makers' sheets that it was counted by and that nobody checked against their sheets, as they are labelled.</summary>
    public ImmutableArray<string> Unchecked { get; private init; } = [];

    /// <summary>The line, counted by these values of a sheet.</summary>
    internal PartLine By(Item sheet, params IEnumerable<Fact> values) => this with
    {
        Unchecked = [.. Unchecked.Union(values.Where(v => sheet.Latest(v)?.Stored is not null && !SheetMark.Holds(sheet, v)).Select(v => v.Label))],
    };

    /// <summary>The line, counted by these unchecked values.</summary>
    internal PartLine By(IEnumerable<Fact> notChecked) => this with { Unchecked = [.. Unchecked.Union(notChecked.Select(v => v.Label))] };

    /// <summary>The line, counted by what other lines were counted by.</summary>
    internal PartLine By(IEnumerable<PartLine> lines) => this with { Unchecked = [.. Unchecked.Union(lines.SelectMany(l => l.Unchecked))] };

    /// <summary>How many without the unit, as it is listed: a number, "at least" a number, or nothing where it can't be counted yet.</summary>
    public string Shown => Count is not { } count ? "" : AtLeast ? $"at least {NumberText.Plain(count)}" : NumberText.Plain(count);
}

/// <summary>One of the things that a line of a parts list is counted from.</summary>
/// <param name="Item">A unit, run, panel, hub or remote.</param>
/// <param name="Takes">How much of the part it takes, in what the line counts; null while that is not known.</param>
public readonly record struct CountedItem(Item Item, decimal? Takes = 1);
