using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>What was ordered has an order width and an order height.</summary>
/// <remarks>
/// <para>Why: the maker makes a size of its own, or waits for one while nobody calls; and no box can be held against a blank.</para>
/// <para>To clear: write the size that went to the maker, or take back the day of an order that did not go out.</para>
/// </remarks>
public sealed class OrderedWithoutSize : UnitCheck
{
    private static readonly Message Without = new("It is ordered, and this is blank: {0}.");
    private static readonly Message WriteWhatWent =
        new("Write the size that went to the maker, off the order or its acknowledgement. If none went, call the maker today.");
    private static readonly Message WriteWhatHangs =
        new("Write the size that was ordered, off the order or its acknowledgement: the owner orders a spare by it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("ordered-without-size", "Ordered without a size", Severity.Stop, Phase.Order,
        new Source(Source.CommonPractice, "a day of the order, or an acknowledgement = an order width and an order height"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        !subject.IsOrdered ? new Outcome.DoesNotApply()
        : subject.BlankOfOrderSize is not [var first, ..] blank ? new Outcome.Fine()
        : new Outcome.Found(Without.With(Arg.All(blank.Select(f => Arg.Label(f)))), Moment.Hangs(subject) ? WriteWhatHangs : WriteWhatWent,
            FieldRef.To(subject.Item, first));
}
