using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>What came is whole.</summary>
/// <remarks>
/// <para>Why: damage that is not raised within days is the crew's.</para>
/// <para>To clear: raise it with the maker; write none once a whole one is there.</para>
/// </remarks>
public sealed class DeliveredDamaged : UnitCheck
{
    private static readonly Message CameWith = new("It came with: {0}.");
    private static readonly Message RaiseIt = new("Photograph it, raise it with the maker, and write none once a whole one is there.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("delivered-damaged", "Delivered damaged", Severity.Caution, Phase.Receive,
        new Source(Source.CommonPractice, "damage = none"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.Damage) is not { } damage ? NotChecked.Of(subject, UnitFacts.Damage)
        : AbsenceWords.SayNothing(damage) ? new Outcome.Fine()
        : AbsenceWords.SayNoMore(damage) ? NotChecked.Of(subject, UnitFacts.Damage)
        : new Outcome.Found(CameWith.With(Arg.Typed(damage)), RaiseIt, FieldRef.To(subject.Item, UnitFacts.Damage));
}
