using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>While a unit moves, no more volts are read than with nothing connected.</summary>
/// <remarks>
/// <para>Why: a current always costs volts on the way, so the two are changed over or one is misread, and a bad splice looks like a good one.</para>
/// <para>To clear: read both again, and write each in its own field.</para>
/// </remarks>
public sealed class LoadedAboveOpen : RunCheck
{
    private static readonly Message Above = new("{0} were read while it moved and {1} with nothing connected: they are changed over, or one is misread.");
    private static readonly Message ReadAgain = new("Read both again: with nothing connected, then while the unit moves. Write each in its own field.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loaded-above-open", "Loaded volts are above open-circuit volts", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice, "loaded volts <= open-circuit volts + what both readings may be off, 0.5 % and 0.02 V each"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.LoadedVolts) is not { } loaded)
            return NotChecked.Of(subject, RunFacts.LoadedVolts);
        if (subject.Item.Get(RunFacts.OpenVolts) is not { } open)
            return NotChecked.Of(subject, RunFacts.OpenVolts);
        var most = Math.Abs(open.Volts) + LoadedVoltsLow.Tolerance(open, loaded).Volts;
        return Math.Abs(loaded.Volts) <= most
            ? new Outcome.Fine()
            : new Outcome.Found(Above.With(loaded, open), ReadAgain, FieldRef.To(subject.Item, RunFacts.LoadedVolts));
    }
}
