using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Several units of one opening fit into it side by side, with the gaps between them and the ends that their sheets ask for.</summary>
/// <remarks>
/// <para>Why: each unit by itself is right, and together they do not go in.</para>
/// <para>To clear: make the parts smaller, with a gap between them. At framing it is judged by the rough width. Gaps and ends count here until all units have
/// an order width; from then on these are held to the gap.</para>
/// </remarks>
public sealed class PartsPastOpening : WindowCheck
{
    private static readonly Message PartsPast = new("The parts make {0} together; the opening is {1} at its narrowest.");
    private static readonly Message PartsPastPlumb = new("The parts make {0} together; {1} hang plumb in the opening.", "plumb");
    private static readonly Message PartsPastKnown =
        new("The parts that are known make {0} together; the opening is {1} wide at the most.", "known");
    private static readonly Message WithGapsPast = new(
        "The parts make {0} together, and {1} with what the sheets ask for between them and at the ends; the opening is {2} at its narrowest.", "gaps");
    private static readonly Message WithGapsPastPlumb = new(
        "The parts make {0} together, and {1} with what the sheets ask for between them and at the ends; {2} hang plumb in the opening.", "gaps-plumb");
    private static readonly Message WithGapsPastKnown = new(
        "The parts that are known make {0} together, and {1} with what the sheets ask for between them and at the ends; the opening is {2} wide at the most.",
        "gaps-known");
    private static readonly Message MistypedOrTooWide = new("Put right the part that was mistyped, or take {0} or more off the parts.");
    private static readonly Message TakeOff = new("Take {0} or more off the parts.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("parts-past-opening", "Units together are wider than the opening", Severity.Stop, Phase.Measure,
        new Source(Source.MakersSheet + "; but for gaps and ends common practice, no published source",
            "sum of the parts, as far as they are known, <= smallest of top, middle, bottom, or rough width until these are; and <= what hangs plumb; "
            + "until all have an order width, with the gaps between them and both end allowances"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Units.Length < 2 || subject.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        var (beside, silent) = Beside(subject);
        if (PastWhatIsKnown(subject, beside) is { } past)
            return past;
        if (subject.SmallestWidth is not { } narrowest)
            return NotChecked.Of(subject, WindowFacts.WidthTop);
        if (subject.Units.FirstOrDefault(u => u.Item.Get(UnitFacts.PartWidth) is null) is { } without)
        {
            return new Outcome.NotChecked(NotChecked.OfOther.With(Arg.Label(UnitFacts.PartWidth), Arg.Name(without)),
                FieldRef.To(without.Item, UnitFacts.PartWidth));
        }
        var opening = subject.WidthForSeveral ?? narrowest;
        var parts = subject.Units.Select(u => u.Item.Get(UnitFacts.PartWidth)!.Value).ToList();
        var (sum, narrower) = (Sum(parts), Sum(subject.Units.Select(NarrowerOf)));
        var working = Working.Of(Info.Source.Formula, () =>
        [
            .. parts.Select((p, at) => (subject.Units[at].Tag, p.In(subject))), ("sum", sum.In(subject)),
            .. IsHeldToGaps(subject) ? [] : new[] { ("gaps and ends", beside.In(subject)) }, ("opening", opening.In(subject)),
        ]);
        var at = FieldRef.To(subject.Units[^1].Item, UnitFacts.PartWidth);
        return sum > opening
            ? new Outcome.Found((opening < narrowest ? PartsPastPlumb : PartsPast).With(sum, Arg.AtMost(opening)),
                TakeOff.With(Arg.AtLeast(Length.Max(sum, narrower + beside) - opening)), at, working)
            : narrower + beside > opening
            ? new Outcome.Found((opening < narrowest ? WithGapsPastPlumb : WithGapsPast).With(narrower, narrower + beside, Arg.AtMost(opening)),
                TakeOff.With(Arg.AtLeast(narrower + beside - opening)), at, working)
            : silent ?? (Outcome)new Outcome.Fine(working);
    }

    /// <summary>Whether the gap is judged by order widths, which all are there.</summary>
    private static bool IsHeldToGaps(Window window) => window.Units.All(u => u.Item.Get(UnitFacts.OrderWidth) is not null);

    /// <summary>What gaps and ends take at the least, and what is not known of them; nothing where order widths are held to it.</summary>
    private static (Length AtLeast, Outcome.NotChecked? Silent) Beside(Window window) => IsHeldToGaps(window) ? (Length.Zero, null)
        : window.Mount is null ? (Length.Zero, NotChecked.Of(window, WindowFacts.Mount))
        : Neighbours.BesideThem(window);

    /// <summary>Its part, or what is ordered where that is less.</summary>
    private static Length NarrowerOf(Unit unit) => (unit.Item.Get(UnitFacts.PartWidth), unit.Item.Get(UnitFacts.OrderWidth)) switch
    {
        ({ } part, { } ordered) => Length.Min(part, ordered),
        ({ } part, _) => part,
        _ => Length.Zero,
    };

    private static Length Sum(IEnumerable<Length> lengths) => lengths.Aggregate(Length.Zero, (a, b) => a + b);

    /// <summary>What is too wide already while widths or parts are still to come: no measure to come makes the opening wider, or a part nothing.</summary>
    private static Outcome.Found? PastWhatIsKnown(Window window, Length beside)
    {
        var parts = window.Units.Where(u => u.Item.Get(UnitFacts.PartWidth) is not null).ToList();
        if (window.SmallestWidth is not null && parts.Count == window.Units.Length)
            return null;
        if (window.WidthAtMost is not { } most)
            return null;
        var (sum, narrower) = (Sum(parts.Select(u => u.Item.Get(UnitFacts.PartWidth)!.Value)), Sum(parts.Select(NarrowerOf)));
        return parts.Count == 0 ? null
            : sum > most ? Found(PartsPastKnown.With(sum, Arg.AtMost(most)), Length.Max(sum, narrower + beside))
            : narrower + beside > most
            ? Found(WithGapsPastKnown.With(narrower, narrower + beside, Arg.AtMost(most)), narrower + beside)
            : null;

        Outcome.Found Found(Sentence said, Length taken) =>
            new(said, MistypedOrTooWide.With(Arg.AtLeast(taken - most)), FieldRef.To(parts[^1].Item, UnitFacts.PartWidth));
    }
}
