using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Several units of one opening fit into it side by side.</summary>
/// <remarks>
/// <para>Why: each unit by itself is right, and together they do not go in.</para>
/// <para>To clear: make the parts smaller, with a gap between them. At framing it is judged by the rough width.</para>
/// </remarks>
public sealed class PartsPastOpening : WindowCheck
{
    private static readonly Message PartsPast = new("The parts make {0} together; the opening is {1} at its narrowest.");
    private static readonly Message PartsPastPlumb = new("The parts make {0} together; {1} hang plumb in the opening.", "plumb");
    private static readonly Message PartsPastKnown =
        new("The parts that are known make {0} together; the opening is {1} wide at the most.", "known");
    private static readonly Message MistypedOrTooWide = new("Put right the part that was mistyped, or take {0} or more off the parts.");
    private static readonly Message TakeOff = new("Take {0} or more off the parts.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("parts-past-opening", "Units together are wider than the opening", Severity.Stop, Phase.Order,
        new Source(Source.CommonPractice, "sum of the parts, as far as they are known, <= smallest of top, middle, bottom, or rough width until these are; "
            + "and <= what hangs plumb"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Units.Length < 2 || subject.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (PastWhatIsKnown(subject) is { } past)
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
        var sum = parts.Aggregate(Length.Zero, (a, b) => a + b);
        var working = Working.Of(Info.Source.Formula, () =>
            [.. parts.Select((p, at) => (subject.Units[at].Tag, p.In(subject))), ("sum", sum.In(subject)), ("opening", opening.In(subject))]);
        return sum <= opening
            ? new Outcome.Fine(working)
            : new Outcome.Found((opening < narrowest ? PartsPastPlumb : PartsPast).With(sum, Arg.AtMost(opening)), TakeOff.With(Arg.AtLeast(sum - opening)),
                FieldRef.To(subject.Units[^1].Item, UnitFacts.PartWidth), working);
    }

    /// <summary>What is too wide already while widths or parts are still to come: no measure to come makes the opening wider, or a part nothing.</summary>
    private static Outcome.Found? PastWhatIsKnown(Window window)
    {
        var parts = window.Units.Where(u => u.Item.Get(UnitFacts.PartWidth) is not null).ToList();
        if (window.SmallestWidth is not null && parts.Count == window.Units.Length)
            return null;
        if (window.WidthAtMost is not { } most)
            return null;
        var sum = parts.Aggregate(Length.Zero, (a, u) => a + u.Item.Get(UnitFacts.PartWidth)!.Value);
        return sum <= most ? null : new Outcome.Found(PartsPastKnown.With(sum, Arg.AtMost(most)), MistypedOrTooWide.With(Arg.AtLeast(sum - most)),
            FieldRef.To(parts[^1].Item, UnitFacts.PartWidth));
    }
}
