using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>Neither conductor has a way to bare metal of the building.</summary>
/// <remarks>
/// <para>Why: a staple or a plate through the jacket to one conductor does nothing by itself, and neither the loop nor the open reading sees it. With
/// one more such place anywhere a panel switches off, and nobody knows why.</para>
/// <para>To clear: hold both ends off all metal and read again; if it stays, find the staple, the plate or the screw. The latest reading counts: the
/// second test once it is there. A wooden wall with no metal near the damage hides it.</para>
/// </remarks>
public sealed class ConductorTouchesBuilding : RunCheck
{
    private static readonly Message Reads = new("{0} were read from its conductors to bare metal of the building: a staple, a plate or a screw is in it.");
    private static readonly Message WhileOpen =
        new("Hold both ends off all metal and read again. If it stays, look along the way for the staple or the plate now, while the wall is open.");
    private static readonly Message WallClosed =
        new("Hold both ends off all metal and read again. If it stays, look along the way for the screw before the house is finished.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("conductor-touches-building", "A conductor has a way to metal of the building", Severity.Stop,
        Phase.RoughIn, new Source(Source.CommonPractice, "both conductors together, far end open, to bare metal of the building: open"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var fact = subject.Item.Get(RunFacts.SecondToFrame) is null ? RunFacts.FirstToFrame : RunFacts.SecondToFrame;
        if (subject.Item.Get(fact) is not { } read)
        {
            var first = NotChecked.WhereAsked(subject.Unit, "tested-first", subject, RunFacts.FirstToFrame);
            return first is Outcome.NotChecked ? first : NotChecked.WhereAsked(subject.Unit, "tested-second", subject, RunFacts.SecondToFrame);
        }
        return read == LoopReading.Open
            ? new Outcome.Fine()
            : new Outcome.Found(Reads.With(Arg.Loop(read)), Moment.WallOpen(subject.Unit) ? WhileOpen : WallClosed, FieldRef.To(subject.Item, fact));
    }
}
