using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Sun;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A preset that a timer calls closes before the sun has left the glass, and opens no glass into low sun.</summary>
/// <remarks>
/// <para>Why: a shade that closes after the sun has gone keeps out nothing but the view, and one that opens too early blinds whoever sits there. The times of a
/// timer are typed once and never looked at again. What closes after sunset is for the night, and is not judged.</para>
/// <para>To clear: let the preset run at another time, or move the windows of that side to another preset; the sun sheet has the times.</para>
/// </remarks>
public sealed class ScheduleOffSun() : Check<Remote>(Subjects.Remotes)
{
    private static readonly Message ClosesLate = new("{0} on {1} closes {2} at {3}, by day, when the sun has left that glass: at {4} at the latest.", "late");
    private static readonly Message CloseBefore = new("Let {0} run before the sun comes to that side, or move {1} to another preset.");
    private static readonly Message OpensIntoGlare = new("{0} on {1} opens {2} at {3}, while low sun shines in: from {4} to {5} in {6}.", "glare");
    private static readonly Message OpenAfter = new("Let {0} run at {1} or later, or move {2} to another preset.");

    /// <summary>From so many per cent open on a preset opens a unit, and below it closes it: common practice, no published source.</summary>
    public const int Opens = 50;

    /// <summary>Low sun that is gone in fewer minutes is let be: common practice, no published source.</summary>
    public const int GlareLet = 15;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("schedule-off-sun", "Timer does not go with the sun", Severity.Note, Phase.Limits,
        new Source(Source.CommonPractice, "closes before the sun has left the glass, opens after low sun has; on the 15th of each month of the timer"));

    /// <inheritdoc/>
    public override Outcome Judge(Remote subject)
    {
        var presets = subject.Presets.Where(p => p.RunsAt is not null && p.Positions.Any()).ToList();
        if (presets.Count == 0)
            return new Outcome.DoesNotApply();
        if (HouseSun.Missing(subject.House) is [var missing, ..])
            return NotChecked.Of(new JobItself(subject.House), missing);
        var sun = HouseSun.Of(subject.House)!;
        var unknown = presets.SelectMany(p => p.Positions).Select(p => p.Unit.Window).FirstOrDefault(w => Facade.Of(w) is null);
        Outcome otherwise = unknown is null ? new Outcome.Fine() : new Outcome.NotChecked(
            NotChecked.OfOther.With(Arg.Label(WindowFacts.Facing, small: false), Arg.Name(unknown)), FieldRef.To(unknown.Item, WindowFacts.Facing));
        return Outcome.All(presets.SelectMany(p => Found(subject, p, sun))) ?? otherwise;
    }

    private static IEnumerable<Outcome.Found?> Found(Remote remote, Preset preset, HouseSun sun)
    {
        var months = preset.RunsIn.ToList();
        var at = preset.RunsAt!.Value.Hour * 60 + preset.RunsAt.Value.Minute;
        foreach (var side in preset.Positions.GroupBy(p => (Facade: Facade.Of(p.Unit.Window), Opens: p.PercentOpen >= Opens)))
        {
            if (side.Key.Facade is not { } facade)
                continue;
            var year = sun.Of(facade);
            var units = Arg.All(side.Select(p => Arg.Name(p.Unit)));
            yield return side.Key.Opens ? IntoGlare(remote, preset, units, at, [.. months.Select(m => year.Months[(int)m])])
                : TooLate(remote, preset, units, at, [.. months.Select(m => year.Months[(int)m])]);
        }
    }

    private static Outcome.Found? TooLate(Remote remote, Preset preset, Arg units, int at, List<FacadeMonth> months)
    {
        var sunny = months.Where(m => !m.Closed.IsEmpty).ToList();
        if (sunny.Count == 0 || months.Exists(m => m.Up.IsEmpty || at >= m.Up[^1].To) || sunny.Exists(m => at <= m.Closed[^1].To))
            return null;
        return new Outcome.Found(
            ClosesLate.With(Arg.Name(preset), Arg.Name(remote), units, Clock(at), Clock(sunny.Max(m => m.Closed[^1].To))),
            CloseBefore.With(Arg.Name(preset), units), FieldRef.To(preset.Item, PresetFacts.RunsAt));
    }

    private static Outcome.Found? IntoGlare(Remote remote, Preset preset, Arg units, int at, List<FacadeMonth> months)
    {
        if (Worst(months, at) is not { } found)
            return null;
        var (worst, span) = found;
        var after = span.To;
        while (Worst(months, after) is { } next)
            after = next.Glare.To;
        return new Outcome.Found(
            OpensIntoGlare.With(Arg.Name(preset), Arg.Name(remote), units, Clock(at), Clock(span.From), Clock(span.To),
                Arg.Value(PresetFacts.RunsFrom, (Month)(worst - 1))),
            OpenAfter.With(Arg.Name(preset), Clock(after), units), FieldRef.To(preset.Item, PresetFacts.RunsAt));
    }

    /// <summary>The low sun that shines at a time and is there longest of all months; null where none does for long.</summary>
    private static (int Month, ClockSpan Glare)? Worst(List<FacadeMonth> months, int at) =>
        (from month in months
         from glare in month.Glare
         where glare.From <= at && glare.To - at > GlareLet
         orderby glare.To descending
         select ((int, ClockSpan)?)(month.Month, glare)).FirstOrDefault();

    private static Arg Clock(int minutes) => Arg.Value(PresetFacts.RunsAt, TimeOnly.MinValue.AddMinutes(Math.Min(minutes, ClockSpan.Day - 1)));
}
