using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>With the far end open there is no way from one conductor to the other.</summary>
/// <remarks>
/// <para>Why: this reading sees what the loop does not: a short in the last feet before the window, and a leak through a bruised or wet jacket. It does
/// not see a joint, nor a conductor that touches the frame of the building alone.</para>
/// <para>To clear: hold both ends apart and read again; if it stays, find the place, or pull a new cable while the wall is open. The latest reading
/// counts: the second test once it is there.</para>
/// </remarks>
public sealed class ConductorsNotApart : RunCheck
{
    private static readonly Message Reads = new("With the far end open {0} were read from one conductor to the other: {1}");
    private static readonly Message Touch = new("they touch on the way, or the far end is not open.");
    private static readonly Message Leak = new("something leaks, a bruised jacket or damp.");
    private static readonly Message NowWallOpen =
        new("Hold both ends apart and read again. If it stays, find the place or pull a new cable now, while the wall is open.");
    private static readonly Message WallClosed =
        new("Hold both ends apart and read again. If it stays, look along the way for the screw or the damp before the house is finished.");

    /// <summary>Below this the conductors touch; above it something leaks.</summary>
    private const decimal TouchOhms = 100;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("conductors-not-apart", "Conductors do not read open with the far end open", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "both ends open: the meter finds no way through"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var fact = subject.Item.Get(RunFacts.SecondApart) is null ? RunFacts.FirstApart : RunFacts.SecondApart;
        if (subject.Item.Get(fact) is not { } read)
            return (Outcome?)Asks(subject, "tested-first", RunFacts.FirstApart) ?? (Outcome?)Asks(subject, "tested-second", RunFacts.SecondApart)
                ?? new Outcome.DoesNotApply();
        return read == LoopReading.Open
            ? new Outcome.Fine()
            : new Outcome.Found(Reads.With(Arg.Loop(read), read.Ohms < TouchOhms ? Touch : Leak),
                Moment.WallOpen(subject.Unit) ? NowWallOpen : WallClosed, FieldRef.To(subject.Item, fact));
    }

    /// <summary>What is missing, unless its phase was complete before this reading was asked for.</summary>
    private static Outcome.NotChecked? Asks(HomeRun run, string step, Fact fact) =>
        StepList.Shipped.Asks(StepList.Find(step)!, run.Unit, fact) ? NotChecked.Of(run, fact) : null;
}
