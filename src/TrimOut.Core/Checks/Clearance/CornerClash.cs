using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>Units on two walls of a bay do not run into each other in the corner, nor neighbors on one wall in the middle of it.</summary>
/// <remarks>
/// <para>Why: each is ordered by its own wall, and in the corner both want the same place.</para>
/// <para>To clear: let one or both end farther from the corner, or choose a head that stands out less. An inside mount stands out only by what does
/// not fit its opening.</para>
/// </remarks>
public sealed class CornerClash : WindowCheck
{
    private static readonly Message PastCorner = new("{0} ends {1} past the corner.");
    private static readonly Message LessOverlap = new("Make the overlap on that side smaller, or order it narrower.");
    private static readonly Message Meet =
        new("{0} ends {1} from the corner and stands out {2}, {3} ends {4} from it and stands out {5}: at {6} they run into each other.");
    private static readonly Message OneWall = new("{0} and {1} hang on one wall with {2} between their openings, and together reach {3} over it.");
    private static readonly Message TakeOffOverlaps = new("Take {0} or more off their overlaps together, or mount one of the two inside.");
    private static readonly Message MeetsItself = new("{0} is said to meet itself at a corner on the right.");
    private static readonly Message OtherFloor = new("{0} is said to meet {1} at a corner, and that is on another floor.", "other-floor");
    private static readonly Message OtherRoom = new("{0} in {1} is said to meet {2} at a corner, and that is in {3}.", "other-room");
    private static readonly Message EachAtRight = new("{0} and {1} are each said to meet the other at its right: one of them is at the left.", "each-at-right");
    private static readonly Message TwoMeetOne = new("{0} and {1} are both said to meet {2} at their right: it has one left end.", "two-meet-one");
    private static readonly Message ReadTheCorner = new("Stand in the room and look: keep what is right of {0}, and take the other away.");
    private static readonly Message RoomOrCorner =
        new("Put right the room or the window at its right around the corner; if one corner lies between two rooms, waive this.");
    private static readonly Message NameTheOther = new("Write the window at its right around the corner, or take this away.");
    private static readonly Message EndFarther = new("End {0} {1} farther from the corner, or {2} {3}, or share it; or choose heads that stand out less.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("corner-clash", "Two units meet in a corner", Severity.Stop, Phase.Measure,
        new Source("Plane geometry of two rectangles at an angle; the sheet gives the depths", "alike: from the corner >= stands out / tan(angle / 2)"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject) =>
        subject.Item.Get(WindowFacts.MeetsRight)?.Id == subject.Id
            ? new Outcome.Found(MeetsItself.With(Arg.Name(subject)), NameTheOther, FieldRef.To(subject.Item, WindowFacts.MeetsRight)) :
        subject.Item.Get(WindowFacts.MeetsRight) is { } meets && subject.Units.Length > 0 &&
        subject.House.FindWindow(meets.Id) is { LeftOut: false, Units.Length: > 0 } other
            ? Judge(subject, other)
            : new Outcome.DoesNotApply();

    private Outcome Judge(Window left, Window right)
    {
        if (left.Room?.Floor is { } floor && right.Room?.Floor is { } another && !SameName.Comparer.Equals(floor, another))
            return new Outcome.Found(OtherFloor.With(Arg.Name(left), Arg.Name(right)), NameTheOther, FieldRef.To(left.Item, WindowFacts.MeetsRight));
        if (NoSuchCorner(left, right) is { } slip)
            return slip;
        var clash = Clash(left, right);
        return left.Room is { } here && right.Room is { } there && here.Id != there.Id
            ? Outcome.All(new Outcome.Found(OtherRoom.With(Arg.Name(left), Arg.Name(here), Arg.Name(right), Arg.Name(there)), RoomOrCorner,
                FieldRef.To(left.Item, WindowFacts.MeetsRight)), clash as Outcome.Found)!
            : clash;
    }

    /// <summary>What can't be whatever is measured: two windows each at the right of the other, and two at the left of one.</summary>
    private static Outcome.Found? NoSuchCorner(Window left, Window right)
    {
        if (right.Item.Get(WindowFacts.MeetsRight)?.Id == left.Id)
        {
            return new Outcome.Found(EachAtRight.With(Arg.Name(left), Arg.Name(right)), ReadTheCorner.With(Arg.Name(left)),
                FieldRef.To(left.Item, WindowFacts.MeetsRight));
        }
        return right.RoomId is { } room && left.House.Look(Lookups.WindowsByRoom, room).Where(w => w != left.Id).Select(w => left.House.FindWindow(w)!)
                .Where(w => !w.LeftOut && w.Item.Get(WindowFacts.MeetsRight)?.Id == right.Id).ToList() is [var other, ..] others
            ? new Outcome.Found(TwoMeetOne.With(Arg.Name(left), Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(other)), Arg.Name(right)),
                ReadTheCorner.With(Arg.Name(left)), FieldRef.To(left.Item, WindowFacts.MeetsRight))
            : null;
    }

    private Outcome Clash(Window left, Window right)
    {
        if (left.Item.Get(WindowFacts.CornerAngle) is not { } angle)
            return NotChecked.Of(left, WindowFacts.CornerAngle);
        if (angle == 180)
            return OnOneWall(left, right);
        var (mine, unknown) = SideOf(left.Units[^1], WindowFacts.ToCornerRight);
        if (mine is not { } a)
            return unknown!;
        var (theirs, missing) = SideOf(right.Units[0], WindowFacts.ToCornerLeft);
        if (theirs is not { } b)
            return OfOther(right, missing!);
        var past = ((Unit Unit, CornerSide Side)[])[(left.Units[^1], a), (right.Units[0], b)];
        // Whoever lets one end past the corner has seen how the other one ends there.
        if (Outcome.All(past.Where(p => p.Side.FromCorner < Length.Zero && angle < 180).Select(p => new Outcome.Found(
            PastCorner.With(Arg.Name(p.Unit), -p.Side.FromCorner)
                .StandingFor([Arg.Number(angle, "degrees"), a.StandsOut, b.FromCorner, b.StandsOut, a.FromCorner]), LessOverlap,
            FieldRef.To(p.Unit.Window.Item, WindowFacts.OverlapEachSide)))) is { } over)
            return over;
        var (shortMine, shortTheirs) = (Mitre.Short(a, b, angle), Mitre.Short(b, a, angle));
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("angle", NumberText.Show(angle, "deg")), ($"{left.Units[^1].Tag} ends", $"{a.FromCorner.In(left)} from the corner"),
                ("stands out", a.StandsOut.In(left)),
            ($"{right.Units[0].Tag} ends", $"{b.FromCorner.In(left)} from the corner"), ("stands out", b.StandsOut.In(left)),
            ("alike, each would need", Mitre.FromCorner(Length.Max(a.StandsOut, b.StandsOut), angle).About(left)),
        ]);
        return shortMine == Length.Zero || shortTheirs == Length.Zero
            ? new Outcome.Fine(working)
            : new Outcome.Found(
                Meet.With(Arg.Name(left.Units[^1]), a.FromCorner, a.StandsOut,
                    Arg.Name(right.Units[0]), b.FromCorner, b.StandsOut, Arg.Number(angle, "degrees")),
                EndFarther.With(Arg.Name(left.Units[^1]), Arg.AtLeast(shortMine), Arg.Name(right.Units[0]), Arg.AtLeast(shortTheirs)),
                FieldRef.To(left.Item, WindowFacts.ToCornerRight), working);
    }

    /// <summary>On a straight wall the two only need to end before each other, however far they stand out.</summary>
    private static Outcome OnOneWall(Window left, Window right)
    {
        if (left.Mount == Mount.Inside && right.Mount == Mount.Inside)
            return new Outcome.DoesNotApply();
        foreach (var (window, fact) in ((Window, Fact<Length>)[])[(left, WindowFacts.ToCornerRight), (right, WindowFacts.ToCornerLeft)])
        {
            Fact? blank = window.Mount is null ? WindowFacts.Mount
                : window.Mount == Mount.Outside && window.Item.Get(WindowFacts.OverlapEachSide) is null ? WindowFacts.OverlapEachSide
                : window.Item.Get(fact) is null ? fact : null;
            if (blank is not null)
                return window == left ? NotChecked.Of(left, blank) : OfOther(right, NotChecked.Of(right, blank));
        }
        var between = left.Item.Get(WindowFacts.ToCornerRight)!.Value + right.Item.Get(WindowFacts.ToCornerLeft)!.Value;
        var taken = Overlap(left) + Overlap(right);
        var working = Working.Of("on one wall: both overlaps <= wall between the openings", () =>
            [("between", between.In(left)), ("overlaps", taken.In(left))]);
        return taken <= between
            ? new Outcome.Fine(working)
            : new Outcome.Found(OneWall.With(Arg.Name(left.Units[^1]), Arg.Name(right.Units[0]), between, taken),
                TakeOffOverlaps.With(Arg.AtLeast(taken - between)),
                FieldRef.To(left.Item, WindowFacts.OverlapEachSide), working);
    }

    private static Outcome.NotChecked OfOther(Window other, Outcome.NotChecked missing) =>
        missing with { Missing = NotChecked.OfOther.With(missing.Missing, Arg.Name(other)) };

    private static Length Overlap(Window window) =>
        window.Mount == Mount.Outside ? window.Item.Get(WindowFacts.OverlapEachSide)!.Value : Length.Zero;

    private static (CornerSide? Side, Outcome.NotChecked? Unknown) SideOf(Unit unit, Fact<Length> toCorner)
    {
        var window = unit.Window;
        if (window.Item.Get(toCorner) is not { } from)
            return (null, NotChecked.Of(window, toCorner));
        if (window.Mount is not { } mount)
            return (null, NotChecked.Of(window, WindowFacts.Mount));
        if (mount == Mount.Inside)
        {
            var (figures, unknown) = Measures.Cover.Of(unit);
            return figures is { } cover ? (new CornerSide(from, Length.Max(cover.Reach - cover.Depth, Length.Zero)), null) : (null, unknown);
        }
        if (unit.Kind is not { } kind)
            return (null, NotChecked.Of(unit, UnitFacts.Kind));
        if (unit.HeadCover is not { } head)
            return (null, NotChecked.Of(unit, UnitFacts.HeadCover));
        if (head.Depth is null && !head.IsNone)
            return (null, NotChecked.Of(head, HeadCoverFacts.Depth));
        if ((head.Depth ?? kind[CoveringKindFacts.DepthFlush]) is not { } reach)
            return (null, NotChecked.Of(kind, CoveringKindFacts.DepthFlush));
        return window.Item.Get(WindowFacts.OverlapEachSide) is { } overlap
            ? (new CornerSide(from - overlap, reach), null)
            : (null, NotChecked.Of(window, WindowFacts.OverlapEachSide));
    }
}
