using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>With nothing connected, the voltage of the panel stands at the window end.</summary>
/// <remarks>
/// <para>Why: without current nothing is lost on the way, so another voltage means another cable, a dead output or a wrong supply.</para>
/// <para>To clear: see that the panel is on and that this run is the one on this output.</para>
/// </remarks>
public sealed class OpenVoltsOffSupply : RunCheck
{
    private static readonly Message Off = new("{0} were read with nothing connected; the supply gives {1}. {2}");
    private static readonly Message NoPower = new("No power comes: the panel is off, the output is dead, a conductor is cut, or this is another run.");
    private static readonly Message AnotherSupply = new("This may be another supply, or something is connected that should not be.");
    private static readonly Message ReadAgain = new("See that the panel is on and that this run is on this output; then read again.");

    /// <summary>The part by which an unloaded supply may be off: common practice, no published source.</summary>
    public const decimal Share = 0.1m;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("open-volts-off-supply", "Open-circuit volts are not the supply's", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice, "open-circuit volts within 10 % of the supply"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.OpenVolts) is not { } open)
            return NotChecked.Of(subject, RunFacts.OpenVolts);
        if (subject.Supply is not { } supply)
            return NotChecked.Of(subject, RunFacts.Panel);
        var volts = Math.Abs(open.Volts);
        var working = Working.Of(Info.Source.Formula, () => [("read", open.ToString()), ("supply", supply.ToString())]);
        return Math.Abs(volts - supply.Volts) <= supply.Volts * Share
            ? new Outcome.Fine(working)
            : new Outcome.Found(Off.With(open, supply, volts < 1 ? NoPower : AnotherSupply), ReadAgain, FieldRef.To(subject.Item, RunFacts.OpenVolts), working);
    }
}
