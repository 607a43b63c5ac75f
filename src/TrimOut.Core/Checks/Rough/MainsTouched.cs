using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A low-voltage cable never touches mains wiring that is neither sheathed nor in conduit.</summary>
/// <remarks>
/// <para>Why: one bruise puts mains on the motors and on whoever holds the bar.</para>
/// <para>To clear: move the cable away, or ask the electrician for a sleeve; never handle the mains wiring. The code in force governs.</para>
/// </remarks>
public sealed class MainsTouched : RunCheck
{
    private static readonly Message Touches = new("The cable touches mains wiring that is not sheathed.");
    private static readonly Message MoveAway =
        new("Keep off the mains wiring. Have the electrician see that it is dead, then move this cable away, or ask for a sleeve. The code in force governs.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("mains-touched", "Cable touches mains wiring", Severity.Stop, Phase.RoughIn,
        new Source("NFPA 70-2017, 725.136, from memory; the code in force governs", "distance > 0, or sheathed, or in conduit"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.MainsDistance) is not { } distance)
            return NotChecked.Of(subject, RunFacts.MainsDistance);
        if (distance > Length.Zero)
            return new Outcome.Fine();
        return subject.Item.Get(RunFacts.MainsSheathed) switch
        {
            null => NotChecked.Of(subject, RunFacts.MainsSheathed),
            YesNo.Yes => new Outcome.Fine(),
            _ => new Outcome.Found(Touches, MoveAway, FieldRef.To(subject.Item, RunFacts.MainsDistance)),
        };
    }
}
