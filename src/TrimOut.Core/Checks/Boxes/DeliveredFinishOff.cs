using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>What came has the fabric and the colour that were ordered.</summary>
/// <remarks>
/// <para>Why: beside its neighbour everybody sees it, and once it has hung nobody takes it back.</para>
/// <para>To clear: raise it with the maker; say yes once the right one is there.</para>
/// </remarks>
public sealed class DeliveredFinishOff : UnitCheck
{
    private static readonly Message OtherFinish = new("It did not come in the ordered fabric and color: {0}, {1}.");
    private static readonly Message OtherThanAgreed = new("It did not come in the ordered fabric and color.");
    private static readonly Message RaiseIt =
        new("See whether it belongs to another window; else photograph the print on the box and raise it with the maker.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("delivered-finish-off", "Came in another fabric or color", Severity.Caution, Phase.Receive,
        new Source(Source.CommonPractice, "fabric and color on the box = as ordered"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) => subject.Item.Get(UnitFacts.FinishAsOrdered) switch
    {
        null => NotChecked.WhereAsked(subject, "box-matched", subject, UnitFacts.FinishAsOrdered),
        YesNo.Yes => new Outcome.Fine(),
        _ => new Outcome.Found(
            (subject.Item.Get(UnitFacts.Fabric), subject.Item.Get(UnitFacts.Colour)) is ({ } fabric, { } colour)
                ? OtherFinish.With(Arg.Typed(fabric), Arg.Typed(colour))
                : OtherThanAgreed,
            RaiseIt, FieldRef.To(subject.Item, UnitFacts.FinishAsOrdered)),
    };
}
