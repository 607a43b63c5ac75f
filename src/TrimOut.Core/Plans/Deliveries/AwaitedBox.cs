using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Deliveries;

/// <summary>A box that is not here yet, or that came and can't be hung: what is chased or ordered again.</summary>
/// <param name="Unit">The unit that it is for.</param>
/// <param name="Why">How it stands.</param>
/// <param name="Reorder">Whether it is to be ordered again, and nobody did.</param>
/// <param name="Overdue">Whether it was expected before the day that was asked for, and is not here.</param>
public sealed record AwaitedBox(Unit Unit, Sentence Why, bool Reorder, bool Overdue)
{
    private static readonly Message NotArrived = new("did not arrive");
    private static readonly Message Reordered = new("reordered on {0}");
    private static readonly Message ReorderedFor = new("reordered on {0}, expected on {1}");
    private static readonly Message Expected = new("expected on {0}");
    private static readonly Message Late = new("expected on {0}, not here");
    private static readonly Message NoDay = new("ordered, no day known");

    private const string OfAnother = "box-label-off";

    private static readonly ImmutableArray<Fact> Said =
        [UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight, UnitFacts.SizeReadFrom, UnitFacts.FinishAsOrdered, UnitFacts.LeadCameAt, UnitFacts.Damage];

    private static readonly ImmutableArray<string> CameWrong = ["delivered-size-off", "delivered-finish-off", "delivered-lead-off", "delivered-damaged"];

    /// <summary>All of a house, in walking order; of a box that another one came for nothing is said any more.</summary>
    /// <param name="house">The house.</param>
    /// <param name="report">What the checks say of it: what is waived is not ordered again.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public static IEnumerable<AwaitedBox> Of(House house, CheckReport report, DateOnly today) =>
        house.Units.Select(u => Of(u, report, today)).OfType<AwaitedBox>();

    private static AwaitedBox? Of(Unit unit, CheckReport report, DateOnly today)
    {
        var late = unit.BoxExpectedOn is { } day && day < today;
        if (unit.BoxIsHere)
        {
            var said = report.About(unit).Where(f => f.Open).ToLookup(f => f.Check.Id, f => f.Found.Message);
            // A box of another unit is no reason to order again: its own is looked for first.
            if (said[OfAnother].FirstOrDefault() is { } another)
                return new AwaitedBox(unit, another, Reorder: false, Overdue: false);
            var wrong = CameWrong.SelectMany(c => said[c]).FirstOrDefault();
            return unit.ComesAgain && unit.Item.Get(UnitFacts.ReorderedOn) is { } again ? Again(unit, again, late)
                : wrong is null ? null
                : OfTheOneBefore(unit) ? null
                : new AwaitedBox(unit, wrong, Reorder: true, Overdue: false);
        }
        return unit.BoxDidNotCome ? new AwaitedBox(unit, NotArrived.With(), Reorder: true, late)
            : unit.Item.Get(UnitFacts.ReorderedOn) is { } reordered ? Again(unit, reordered, late)
            : unit.BoxExpectedOn is { } expected ? new AwaitedBox(unit, (late ? Late : Expected).With(Day(expected)), Reorder: false, late)
            : unit.Item.Get(UnitFacts.OrderedOn) is not null ? new AwaitedBox(unit, NoDay.With(), Reorder: false, Overdue: false)
            : null;
    }

    /// <summary>Whether another one came since it was ordered again, and what is wrong was written of the one before.</summary>
    private static bool OfTheOneBefore(Unit unit) => unit.Item.Latest(UnitFacts.ReorderedOn) is { Stored: not null } again
        && !Said.Any(f => unit.Item.Latest(f) is { Stored: not null } head && head.IsAfter(again));

    private static AwaitedBox Again(Unit unit, DateOnly on, bool late) =>
        new(unit, unit.BoxExpectedOn is { } expected ? ReorderedFor.With(Day(on), Day(expected)) : Reordered.With(Day(on)), Reorder: false, late);

    private static Arg Day(DateOnly day) => Arg.Value(UnitFacts.ExpectedOn, day);
}
