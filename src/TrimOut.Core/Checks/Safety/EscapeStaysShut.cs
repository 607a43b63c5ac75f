using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Safety;

/// <summary>What hangs in an escape window can be opened without power.</summary>
/// <remarks>
/// <para>Why: a fire takes the power first, and somebody must get out.</para>
/// <para>To clear: another kind, or a unit with its own battery, or no covering on this window. The local authority says what an escape window needs.</para>
/// </remarks>
public sealed class EscapeStaysShut : UnitCheck
{
    private static readonly Message StaysShut = new("{0} is an escape window, and {1} stays where it is when the power fails.");
    private static readonly Message AnotherKind =
        new("Ask the local authority what this window needs; else plan a kind that is moved by hand, one with a battery, or none.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("escape-stays-shut", "Escape window is covered by what stays shut without power", Severity.Stop,
        Phase.WalkThrough, new Source("International Residential Code 2018, R310.1: opened from inside without keys, tools or special knowledge " +
            "(from memory); the code in force governs", "escape window = moved by hand, opens by itself, or battery"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Item.Get(WindowFacts.Escape) is not { } escape || escape == Answer.NotKnownYet)
            return NotChecked.Of(subject.Window, WindowFacts.Escape);
        if (escape == Answer.No)
            return new Outcome.Fine();
        if (subject.Power == PowerSource.Battery)
            return new Outcome.Fine();
        if (subject.Kind?.WithoutPower is not { } without)
            return NotChecked.Of(subject.Kind, CoveringKindFacts.WithoutPower, subject, UnitFacts.Kind);
        return without != WithoutPower.StaysPut
            ? new Outcome.Fine()
            : new Outcome.Found(StaysShut.With(Arg.Name(subject.Window), Arg.Name(subject.Kind)), AnotherKind, FieldRef.To(subject.Item, UnitFacts.Kind));
    }
}
