using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Under the raised stack or roll one can walk through where a door or a way through is.</summary>
/// <remarks>
/// <para>Why: a bar at the height of a forehead is found with the forehead. A roll hangs as far down as it is thick, whatever covers it.</para>
/// <para>To clear: mount it higher on the wall, or choose a kind with a smaller stack, or one that rolls.</para>
/// </remarks>
public sealed class StackInTheWay : UnitCheck
{
    private static readonly Message TooLow = new("Raised, it leaves {0} clear; {1} are wanted.");
    private static readonly Message MountHigher = new("Mount it outside and higher, or choose a kind that stacks less or rolls.");

    private static readonly Message AskMaker = new("Ask the maker today for a kind that stacks less or rolls, or mount it outside and higher.");
    private static readonly Message TellOwner =
        new("It hangs: set it higher on the wall if it can be, or show it to the owner and waive this with what was agreed.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("stack-in-the-way", "Raised stack hangs below the clear height", Severity.Caution, Phase.Measure,
        new Source(Source.MakersSheet, "height of the opening - (fixed part + share x drop, or the roll, - head above) >= clear height wanted"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Window.Item.Get(WindowFacts.ClearHeight) is not { } wanted)
            return new Outcome.DoesNotApply();
        var (figures, unknown) = subject.Kind?.RaisedForm == RaisedForm.Roll ? RaisedRoll.Of(subject) : RaisedStack.Of(subject);
        if (figures is not { } stack)
            return unknown as Outcome ?? new Outcome.DoesNotApply();
        if ((subject.Window.SmallestHeight ?? subject.Window.RoughHeight) is not { } opening)
            return NotChecked.Of(subject.Window, WindowFacts.RoughHeight);
        var below = Length.Max(stack.BelowHead, Length.Zero);
        var working = stack.Working(subject, Info.Source.Formula,
            ("height of the opening", opening.In(subject)), ("clear", (opening - below).About(subject)), ("wanted", wanted.In(subject)));
        return opening - below >= wanted
            ? new Outcome.Fine(working)
            : new Outcome.Found(TooLow.With(Arg.AtMost(opening - below), wanted),
                Moment.Hangs(subject) ? TellOwner : Moment.NotOrdered(subject) ? MountHigher : AskMaker,
                FieldRef.To(subject.Window.Item, WindowFacts.ClearHeight), working);
    }
}
