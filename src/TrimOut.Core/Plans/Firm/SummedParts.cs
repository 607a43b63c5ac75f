using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Serialization;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;

namespace TrimOut.Core.Plans.Firm;

/// <summary>How far a phase of a house is.</summary>
/// <param name="Done">Steps said to be done or not needed.</param>
/// <param name="Total">Steps that there are.</param>
/// <param name="Stops">Open stops.</param>
public readonly record struct SummedPhase(int Done, int Total, int Stops)
{
    /// <summary>The same as progress.</summary>
    public Progress Sum() => new(Done, Total);

    internal static SummedPhase Of(Progress sum, int stops) => new(sum.Done, sum.Total, stops);
}

/// <summary>What is next in a house, and who waits for whom.</summary>
/// <param name="Next">The next thing that the crew can do, with where; empty where others do something first, or all is done.</param>
/// <param name="Waiting">How many units wait for somebody else.</param>
public sealed record SummedHead(string Next, ImmutableArray<UnitsWaiting> Waiting)
{
    internal static SummedHead Of(HouseHead head) => new(
        head.Next is { } next ? $"{(next.Subject is JobItself ? "" : next.Subject.Name + " ")}{next.Step.Label}" : "",
        [.. head.Waiting.Select(w => new UnitsWaiting(w.For, w.Units))]);
}

/// <summary>Units that wait for somebody else.</summary>
/// <param name="For">Whom they wait for.</param>
/// <param name="Units">How many.</param>
public readonly record struct UnitsWaiting(WaitsFor For, int Units);

/// <summary>A visit that is planned.</summary>
/// <param name="On">Its day; null while none is agreed.</param>
/// <param name="From">When it begins, by the clocks of the house; null for all day.</param>
/// <param name="Lasts">Hours that it is to last; null where nobody said.</param>
/// <param name="What">What is done.</param>
/// <param name="Phase">The phase that it belongs to; null for none.</param>
/// <param name="Expected">Who is expected.</param>
/// <param name="Before">Phases that must be ready before and are not, each with who is not through it.</param>
public sealed record SummedVisit(
    DateOnly? On, TimeOnly? From, decimal? Lasts, string What, Phase? Phase, ImmutableArray<string> Expected, ImmutableArray<OpenPhase> Before);

/// <summary>A box that is not here, or that came wrong.</summary>
/// <param name="Tag">The tag of its unit.</param>
/// <param name="Expected">The day on which it is expected; null while none is known.</param>
/// <param name="Here">Whether it came.</param>
/// <param name="Reorder">Whether it is to be ordered again, and nobody did.</param>
/// <param name="Ordered">Whether the day of an order is noted.</param>
/// <param name="TooLate">By when it must be here, where it comes after that; null where it comes in time, or nothing says so.</param>
public readonly record struct SummedBox(string Tag, DateOnly? Expected, bool Here, bool Reorder, bool Ordered, SummedTooLate? TooLate);

/// <summary>A box that comes after the day on which it must be here.</summary>
/// <param name="Comes">The day on which it is expected; where none is noted, the first on which it can be here.</param>
/// <param name="Needed">The day on which it must be here.</param>
/// <param name="Visit">The visit to hang that it is needed for; empty where the handover says the day.</param>
public readonly record struct SummedTooLate(DateOnly Comes, DateOnly Needed, string Visit);

/// <summary>Somebody who is expected at a visit.</summary>
/// <param name="Name">The name.</param>
/// <param name="Telephone">The number that they answer.</param>
public readonly record struct SummedPerson(string Name, string Telephone);

/// <summary>What is due on a day.</summary>
public enum DueKind
{
    /// <summary>The day on which drywall starts; with it stands who is not through what must be in the walls before.</summary>
    Drywall,

    /// <summary>The handover; with it stands who is not through a phase before it.</summary>
    Handover,

    /// <summary>A visit.</summary>
    Visit,

    /// <summary>The last day to order units.</summary>
    Order,

    /// <summary>The day by which units that are not ordered are to be here, where nobody said how long their order takes.</summary>
    OrderHere,

    /// <summary>The last day to order parts and cable of a phase.</summary>
    CallOff,

    /// <summary>The day by which parts and cable of a phase are to be here, where nobody said how long they take.</summary>
    PartsHere,

    /// <summary>Units whose boxes did not arrive or came wrong, and that nobody ordered again: at once.</summary>
    Reorder,

    /// <summary>Boxes that are expected.</summary>
    Box,

    /// <summary>Boxes that come after the day on which they must be here, whenever that is.</summary>
    BoxTooLate,

    /// <summary>The yearly visit of a house in service.</summary>
    YearlyVisit,

    /// <summary>The last day of the crew's warranty.</summary>
    CrewWarranty,

    /// <summary>The last day of a maker's warranty.</summary>
    MakerWarranty,
}

/// <summary>Something that is due on a day, or at once.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="On">The day; null for at once.</param>
/// <param name="What">Which: the visit, tags of units, the phase or the kind of covering; empty where the kind says all.</param>
/// <param name="From">From which day on it is so; null for always. Of yearly visits the one that is so last counts.</param>
public sealed record SummedDay(DueKind Kind, DateOnly? On, string What, DateOnly? From = null)
{
    /// <summary>The visit that is due; null where something else is.</summary>
    [JsonIgnore]
    public SummedVisit? Visit { get; init; }

    /// <summary>Of boxes that come too late how they do; null where something else is due.</summary>
    [JsonIgnore]
    public SummedTooLate? TooLate { get; init; }

    /// <summary>Whether a warranty ends on it.</summary>
    public bool IsEnd => Kind is DueKind.CrewWarranty or DueKind.MakerWarranty;

    /// <summary>What it is, in words.</summary>
    public string InWords => Kind switch
    {
        DueKind.Drywall => What.Length == 0 ? "drywall starts" : $"drywall starts, not ready before it: {What}",
        DueKind.Handover => What.Length == 0 ? "handover" : $"handover, not ready before it: {What}",
        DueKind.Visit => $"visit: {What}",
        DueKind.Order => $"order {What}",
        DueKind.OrderHere => $"{What} not ordered, to be here by then; how long it takes is not known",
        DueKind.CallOff => $"call off parts for {What}",
        DueKind.PartsHere => $"parts for {What} to be here by then; how long parts take is not typed",
        DueKind.Reorder => $"order again {What}: did not arrive, or came wrong",
        DueKind.Box => $"box of {What} expected",
        DueKind.BoxTooLate when TooLate is { } late => $"box of {What} comes after {(late.Visit.Length == 0 ? "it must be here" : late.Visit)}: "
            + late.Comes.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        DueKind.YearlyVisit => "yearly visit",
        DueKind.CrewWarranty => "crew's warranty ends",
        _ => $"maker's warranty of {What} ends",
    };
}
