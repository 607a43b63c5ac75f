using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>The lead of a unit that came leaves it on the side where the cable is.</summary>
/// <remarks>
/// <para>Why: a lead at the other end crosses the whole head in sight, and is too short.</para>
/// <para>To clear: look again as it will hang; else raise it with the maker before it is hung.</para>
/// </remarks>
public sealed class DeliveredLeadOff : UnitCheck
{
    private static readonly Message OtherEnd = new("Its lead leaves on the {0}; the lead side is {1}.");
    private static readonly Message RaiseIt =
        new("Hold it up as it will hang and look again. If it stays, see whether it belongs to another window; else raise it with the maker.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("delivered-lead-off", "Came with its lead at the other end", Severity.Stop, Phase.Receive,
        new Source(Source.CommonPractice, "end of the lead = lead side"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.LeadCameAt) is not { } came ? NotChecked.WhereAsked(subject, "looked-over", subject, UnitFacts.LeadCameAt)
        : subject.LeadSide is not { } planned ? NotChecked.Of(subject, UnitFacts.LeadSide)
        : came == planned ? new Outcome.Fine()
        : new Outcome.Found(OtherEnd.With(Arg.Value(UnitFacts.LeadCameAt, came), Arg.Value(UnitFacts.LeadSide, planned)), RaiseIt,
            FieldRef.To(subject.Item, UnitFacts.LeadCameAt));
}
