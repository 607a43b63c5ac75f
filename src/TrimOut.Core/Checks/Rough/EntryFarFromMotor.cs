using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cable leaves the wall near the motor: near its end along the head, and near the head.</summary>
/// <remarks>
/// <para>Why: from farther away the lead runs in sight along the head or up the jamb, and the tail is used up on the way.</para>
/// <para>To clear: move the entry while the wall is open; where the lead is hidden on its way, waive it and say by what. A cable that goes along the head
/// behind another unit of its window is held against the way to its motor only, unless it comes out where that unit's does: then it was measured from
/// the end of its own unit, and not from the jamb. One on the other side has a finding of its own.</para>
/// </remarks>
public sealed class EntryFarFromMotor : UnitCheck
{
    private static readonly Message FarAlong = new("The cable leaves the wall {0} along the head from the {1} end of the unit, where its motor is.", "along");
    private static readonly Message FarDown = new("The cable leaves the wall {0} below the head.", "down");
    private static readonly Message AtOnePlace =
        new("The cable leaves the wall where that of {0} does, and the {1} end of its own unit, where the motor is, is {2} from there.", "one-place");
    private static readonly Message CountFromJamb =
        new("Put the figure right: it counts from the jamb of the opening. If both cables come out there, mark each of them at the hole, and waive this.");
    private static readonly Message MoveAlong =
        new("Put the figure right; if it is right, move the entry to {0} or less from the {1} end of the unit while the wall is open.");
    private static readonly Message MoveUp = new("Put the figure right; if it is right, move the entry to {0} or less below the head while the wall is open.");
    private static readonly Message HideAlong =
        new("Put the figure right; if it is right, lead the cable along behind the head cover, and see that the tail reaches.");
    private static readonly Message HideUp =
        new("Put the figure right; if it is right, lead the cable up in a slot or a channel, and see that the tail reaches.");

    /// <summary>How far along the head from the motor's end the cable leaves the wall at the most: common practice, no published source.</summary>
    public static readonly Length MostAlong = Length.FromInches(12);

    /// <summary>How far below the head it leaves it at the most: common practice, no published source.</summary>
    public static readonly Length MostDown = Length.FromInches(8);

    /// <summary>Two entries of one opening that are nearer to each other come out at one place: common practice, no published source.</summary>
    public static readonly Length OnePlace = Length.FromInches(1);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("entry-far-from-motor", "Entry is far from the motor", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice,
            "along the head from the motor's end <= 12 in, or beside another unit >= 1 in from its entry; below the head <= 8 in"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (!subject.OnPanel)
            return new Outcome.DoesNotApply();
        var (along, down) = (OfAlong(subject), OfDown(subject));
        return Outcome.All(along as Outcome.Found, down as Outcome.Found) ?? NotChecked.All(along, down) ?? down;
    }

    private Outcome OfAlong(Unit unit)
    {
        if ((unit.MotorSide ?? unit.LeadSide) is not { } end)
            return unit.Kind is null ? NotChecked.Of(unit, UnitFacts.Kind) : NotChecked.Of(unit, UnitFacts.LeadSide);
        if (unit.EntrySide is not { } side)
            return NotChecked.Of(unit, UnitFacts.EntrySide);
        if (side != end)
            return new Outcome.Fine();
        if (unit.IsBehindOthers)
            return BesideOthers(unit, end);
        if (unit.EntryFromJamb is null)
            return NotChecked.Of(unit, UnitFacts.EntryFromJamb);
        if ((unit.EntryAlong, unit.MotorAlong(end)) is not ({ } entry, { } motor))
            return NotChecked.Of(unit.Window, WindowFacts.RoughWidth);
        var far = (entry - motor).Abs();
        var working = Working.Of(Info.Source.Formula, () => [("along the head", far.In(unit)), ("at the most", MostAlong.In(unit))]);
        var at = Arg.Value(UnitFacts.LeadSide, end);
        return far <= MostAlong
            ? new Outcome.Fine(working)
            : new Outcome.Found(FarAlong.With(far, at), Moment.WallOpen(unit) ? MoveAlong.With(Arg.AtMost(MostAlong), at) : HideAlong,
                FieldRef.To(unit.Item, Entry.FromJambFact(unit)), working);
    }

    /// <summary>What comes out beside another unit comes out at a place of its own.</summary>
    private Outcome BesideOthers(Unit unit, Side end)
    {
        var others = unit.Window.Units.Where(u => u.Id != unit.Id && u.OnPanel).ToList();
        var there = others.Where(o => At(unit.EntryAlong, o.EntryAlong) && At(unit.EntryBack, o.EntryBack)
            && At(unit.EntryBelowHead, o.EntryBelowHead)).ToList();
        if (there.Count == 0)
            return others.Find(o => o.EntryAlong is null) is { } other ? NotChecked.Of(other, Entry.FromJambFact(other)) : new Outcome.Fine();
        var far = (unit.EntryAlong!.Value - unit.MotorAlong(end)!.Value).Abs();
        return new Outcome.Found(AtOnePlace.With(Arg.All(there.Select(o => Arg.Name(o))), Arg.Value(UnitFacts.LeadSide, end), far), CountFromJamb,
            FieldRef.To(unit.Item, Entry.FromJambFact(unit)), Working.Of(Info.Source.Formula, () =>
            [
                ("from the left", unit.EntryAlong.Value.In(unit)), ("motor from the left", unit.MotorAlong(end)!.Value.In(unit)),
                .. there.Select(o => ($"{o.Tag} from the left", o.EntryAlong!.Value.In(unit))),
            ]));

        static bool At(Length? one, Length? other) => one is { } a && other is { } b && (a - b).Abs() < OnePlace;
    }

    private Outcome OfDown(Unit unit)
    {
        if (unit.EntryBelowHead is not { } down)
            return NotChecked.Of(unit, UnitFacts.EntryBelowHead);
        var working = Working.Of(Info.Source.Formula, () => [("below the head", down.In(unit)), ("at the most", MostDown.In(unit))]);
        return down <= MostDown
            ? new Outcome.Fine(working)
            : new Outcome.Found(FarDown.With(down), Moment.WallOpen(unit) ? MoveUp.With(Arg.AtMost(MostDown)) : HideUp,
                FieldRef.To(unit.Item, UnitFacts.EntryBelowHead), working);
    }
}
