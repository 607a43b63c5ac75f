using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>Handles, cranks and tiles stay behind the plane in which the unit hangs.</summary>
/// <remarks>
/// <para>Why: the bar catches on the handle, and the motor tears at it.</para>
/// <para>To clear: a folding handle, less setback, or an outside mount. Where nothing is said to be in the way and yet how far it stands out is written,
/// or the depth was read to it, one of the two is a slip: it is judged as if something were there.</para>
/// </remarks>
public sealed class HandleInHangingPlane : UnitCheck
{
    private static readonly Message InTheWay = new("{0}: it stands out {1} in a depth of {2}, and the unit takes up {3} from the room face: {4} too much.");
    private static readonly Message SaidNone =
        new("Nothing is said to be in the way, and yet {0} of a depth of {1} are left free; the unit takes up {2} from the room face.", "said-none");
    private static readonly Message SayWhich =
        new("Look again: say what is in the way, or clear how far it stands out and say that the depth was read to the glass.");
    private static readonly Message MendInside = new("Change to a folding handle, set the unit back less, or mount it outside.");
    private static readonly Message MendInsideAndRead =
        new("Change to a folding handle and read the depth again, set the unit back less, or mount it outside.");
    private static readonly Message MendOutside = new("Change to a folding handle, or bring the brackets forward.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("handle-in-hanging-plane", "Something is in the way of the unit", Severity.Stop, Phase.Measure,
        new Source(Source.MakersSheet, "setback + bracket back <= depth - stands out; outside: stands out <= depth"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var window = subject.Window;
        if (window.Item.Get(WindowFacts.InTheWay) is not { } thing)
            return NotChecked.Of(window, WindowFacts.InTheWay);
        var none = AbsenceWords.SayNothing(thing);
        if (none && !IsReadOf(window))
            return new Outcome.Fine();
        if (!none && AbsenceWords.SayNoMore(thing))
            return NotChecked.Of(window, WindowFacts.InTheWay);
        if ((window.Item.Get(WindowFacts.InTheWayDepth) ?? (none ? Length.Zero : null)) is not { } standsOut)
            return NotChecked.Of(window, WindowFacts.InTheWayDepth);
        if (window.Depth is not { } depth)
            return NotChecked.Of(window, WindowFacts.Depth);
        if (window.Mount is not { } mount)
            return NotChecked.Of(window, WindowFacts.Mount);
        var rear = Length.Zero;
        if (mount == Mount.Inside)
        {
            if (subject.Kind?[CoveringKindFacts.EndBracketBack] is not { } back)
                return NotChecked.Of(subject.Kind, CoveringKindFacts.EndBracketBack, subject, UnitFacts.Kind);
            if ((subject.Setback ?? subject.Kind[CoveringKindFacts.Setback]) is not { } setback)
                return NotChecked.Of(subject.Kind, CoveringKindFacts.Setback);
            rear = setback + back;
        }
        var front = depth - standsOut;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("depth", depth.In(subject)), ("stands out", standsOut.In(subject)),
            ("its front from the room face", front.In(subject)), ("rear of the unit from the room face", rear.In(subject)),
        ]);
        return rear <= front
            ? new Outcome.Fine(working)
            : none
            ? new Outcome.Found(SaidNone.With(front, depth, rear), SayWhich, FieldRef.To(window.Item, WindowFacts.InTheWay), working)
            : new Outcome.Found(InTheWay.With(Arg.Typed(thing), standsOut, depth, rear, rear - front), mount == Mount.Outside ? MendOutside
                    : window.Item.Get(WindowFacts.DepthTo) == DepthTo.FirstThing ? MendInsideAndRead : MendInside,
                FieldRef.To(window.Item, WindowFacts.InTheWayDepth), working);
    }

    /// <summary>Whether what is in the way was measured, or measured to, whatever is said of it.</summary>
    private static bool IsReadOf(Window window) =>
        window.Item.Get(WindowFacts.InTheWayDepth) > Length.Zero || window.Item.Get(WindowFacts.DepthTo) == DepthTo.FirstThing;
}
