using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>A covering is no wider and no higher than its kind is made.</summary>
/// <remarks>
/// <para>Why: the plan ends on the day of the order, with one cable in a closed wall where two were needed.</para>
/// <para>To clear: another kind, or several units side by side with a cable each. Until it is measured, a rough size counts less what plaster and trim
/// take at the least; until it is ordered, an outside mount counts with its overlaps.</para>
/// </remarks>
public sealed class PastWhatIsMade : UnitCheck
{
    private static readonly Message TooWide = new("It is to be {0} wide; {1} is made up to {2}.", "too-wide");
    private static readonly Message TooHigh = new("It is to be {0} high; {1} is made up to {2}.", "too-high");
    private static readonly Message LessPlaster = new("{0} ({1} less {2} for plaster and trim)");
    private static readonly Message OthersWhileOpen =
        new("Plan a kind that is made so wide, or several units side by side with a cable each, now while the wall is open.");
    private static readonly Message OtherKindWhileOpen = new("Plan a kind that is made so high, now while the wall is open.");
    private static readonly Message OthersBeforeOrder =
        new("Choose a kind that is made so wide before anything is ordered. Several units side by side need a cable each.");
    private static readonly Message OtherKindBeforeOrder = new("Choose a kind that is made so high before anything is ordered.");

    private static readonly Message AskMaker = new("Ask the maker today whether it is made so; if not, change the order before anything is cut.");
    private static readonly Message FigureOrWarranty =
        new("It hangs, so its size or the sheet's figure is misread: put that right; if both are right, ask the maker whether the warranty holds.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("past-what-is-made", "Wider or higher than its kind is made", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet, "width <= widest, height <= highest; of a rough size 1/8 in is taken off"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var wide = Judge(subject, Wide(subject), CoveringKindFacts.Widest, WindowFacts.RoughWidth, TooWide, OthersWhileOpen, OthersBeforeOrder);
        var high = Judge(subject, High(subject), CoveringKindFacts.Highest, WindowFacts.RoughHeight, TooHigh, OtherKindWhileOpen, OtherKindBeforeOrder);
        return Outcome.All(wide as Outcome.Found, high as Outcome.Found) ?? wide as Outcome.NotChecked ?? high as Outcome.NotChecked
            ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome Judge(Unit unit, (Length? Size, bool LessPlaster) of, Fact<Length> most, Fact known, Message past, Message open,
        Message closed) =>
        unit.Kind?[most] is not { } made ? NotChecked.Of(unit.Kind, most, unit, UnitFacts.Kind)
        : of.Size is not { } asked ? NotChecked.Of(unit.Window, unit.Window.Item.Get((Fact<Length>)known) is null ? known : WindowFacts.OverlapEachSide)
        : asked <= made ? new Outcome.Fine()
        : new Outcome.Found(past.With(Said(asked, of.LessPlaster), Arg.Name(unit.Kind), made), Mend(unit, open, closed),
            FieldRef.To(unit.Item, UnitFacts.Kind));

    private static Message Mend(Unit unit, Message open, Message closed) =>
        Moment.Hangs(unit) ? FigureOrWarranty : !Moment.NotOrdered(unit) ? AskMaker : Moment.WallOpen(unit) ? open : closed;

    // What is taken off is the same whatever was found, and so no figure.
    private static Arg Said(Length asked, bool lessPlaster) => !lessPlaster ? asked
        : Arg.Of([asked], LessPlaster.With(asked, asked + FinishedOffRough.Least, FinishedOffRough.Least));

    /// <summary>How wide it is to be, as far as that is known.</summary>
    private static (Length?, bool) Wide(Unit unit) => Less(unit, unit.OwnWidth, UnitFacts.OrderWidth, unit.Window.SmallestWidth);

    /// <summary>How high it is to be, as far as that is known.</summary>
    private static (Length?, bool) High(Unit unit) => Less(unit, unit.Drop, UnitFacts.OrderHeight, unit.Window.LargestHeight);

    private static (Length?, bool) Less(Unit unit, Length? size, Fact<Length> ordered, Length? finished) =>
        unit.Item.Get(ordered) is null && finished is null ? (size - FinishedOffRough.Least, true) : (size, false);
}
