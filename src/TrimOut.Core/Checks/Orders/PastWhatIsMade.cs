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
/// take at the least; until it is ordered, an outside mount counts with its overlaps, and before these are known without, for they only add.</para>
/// </remarks>
public sealed class PastWhatIsMade : UnitCheck
{
    private static readonly Message TooWide = new("It is to be {0} wide; {1} is made up to {2}.", "too-wide");
    private static readonly Message TooHigh = new("It is to be {0} high; {1} is made up to {2}.", "too-high");
    private static readonly Message TooWideAlready = new("It is to be {0} wide, overlaps not counted; {1} is made up to {2}.", "too-wide-already");
    private static readonly Message TooHighAlready =
        new("It is to be {0} high, what is above the opening not counted; {1} is made up to {2}.", "too-high-already");
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
        new Source(Source.MakersSheet + "; what plaster and trim take is common practice, no published source",
            "width <= widest, height <= highest; of a rough size 1/8 in is taken off for plaster and trim"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var wide = Judge(subject, Wide(subject), CoveringKindFacts.Widest, WindowFacts.OverlapEachSide, OthersWhileOpen, OthersBeforeOrder);
        var high = Judge(subject, High(subject), CoveringKindFacts.Highest, WindowFacts.HeadAbove, OtherKindWhileOpen, OtherKindBeforeOrder);
        return Outcome.All(wide as Outcome.Found, high as Outcome.Found) ?? NotChecked.All(wide, high) ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome Judge(Unit unit, Size size, Fact<Length> most, Fact more, Message open, Message closed) =>
        unit.Kind?[most] is not { } made ? NotChecked.Of(unit.Kind, most, unit, UnitFacts.Kind)
        : size.Asked is not { } asked ? NotChecked.Of(unit.Window, size.Rough)
        : asked > made
        ? new Outcome.Found((size.AtLeast ? size.Already : size.Past).With(Said(asked, size.LessPlaster), Arg.Name(unit.Kind), made),
            Mend(unit, open, closed), FieldRef.To(unit.Item, UnitFacts.Kind))
        : size.AtLeast ? NotChecked.Of(unit.Window, more)
        : new Outcome.Fine();

    private static Message Mend(Unit unit, Message open, Message closed) =>
        Moment.Hangs(unit) ? FigureOrWarranty : !Moment.NotOrdered(unit) ? AskMaker : Moment.WallOpen(unit) ? open : closed;

    // What is taken off is the same whatever was found, and so no figure.
    private static Arg Said(Length asked, bool lessPlaster) => !lessPlaster ? asked
        : Arg.Of([asked], LessPlaster.With(asked, asked + FinishedOffRough.Least, FinishedOffRough.Least));

    private static Size Wide(Unit unit) =>
        Of(unit, unit.OwnWidth, unit.PartWidth, UnitFacts.OrderWidth, unit.Window.SmallestWidth, new(WindowFacts.RoughWidth, TooWide, TooWideAlready));

    private static Size High(Unit unit) =>
        Of(unit, unit.Drop, unit.Window.KnownHeight, UnitFacts.OrderHeight, unit.Window.LargestHeight, new(WindowFacts.RoughHeight, TooHigh, TooHighAlready));

    private static Size Of(Unit unit, Length? whole, Length? opening, Fact<Length> ordered, Length? finished, Size size)
    {
        var rough = unit.Item.Get(ordered) is null && finished is null;
        return size with
        {
            Asked = (whole ?? opening) - (rough ? FinishedOffRough.Least : Length.Zero),
            LessPlaster = rough,
            AtLeast = whole is null,
        };
    }

    /// <summary>A size as far as it is known, and what is said of it.</summary>
    /// <param name="Rough">Where it comes from first.</param>
    /// <param name="Past">Said of one that is too large.</param>
    /// <param name="Already">Said of one that is too large before all of it is known.</param>
    private readonly record struct Size(Fact Rough, Message Past, Message Already)
    {
        /// <summary>The size; null while nothing is known of it.</summary>
        public Length? Asked { get; init; }

        /// <summary>Whether plaster and trim are taken off it.</summary>
        public bool LessPlaster { get; init; }

        /// <summary>Whether it can only become more: of an outside mount what it reaches past the opening is not known yet.</summary>
        public bool AtLeast { get; init; }
    }
}
