using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Photos;

/// <summary>When steps of units were marked, and so which unit was worked on at a time.</summary>
/// <remarks>
/// Marks that were made on several units at once say of none of them when it was worked on, and are left out there. A picture that was taken on another day,
/// or with nothing marked near it, says nothing.
/// </remarks>
internal sealed class MarkTimes
{
    private const string Pulled = "cable-pulled";

    /// <summary>A mark that is farther away says nothing of where a picture was taken: common practice, no published source.</summary>
    private static readonly TimeSpan Near = TimeSpan.FromHours(2);

    /// <summary>A mark so far away still tells the phase.</summary>
    private static readonly TimeSpan SameDay = TimeSpan.FromHours(12);

    /// <summary>What was done is marked by the next day: common practice, no published source.</summary>
    private static readonly TimeSpan Late = TimeSpan.FromDays(1);

    private readonly List<Mark> _all;
    private readonly List<Mark> _ofOne;

    public MarkTimes(House house, StepList steps)
    {
        var byField = steps.Steps.ToDictionary(s => s.Field, StringComparer.Ordinal);
        _all = [.. house.Units.SelectMany(u => u.Item.AllOf(UnitFacts.Step).Where(m => m.Head.Stored is not null && byField.ContainsKey(m.Field))
            .Select(m => new Mark(u, byField[m.Field], m.Head)))];
        _ofOne = [.. _all.GroupBy(m => m.Head.Id).Where(g => g.Select(m => m.Unit.Id).Distinct().Count() == 1).SelectMany(g => g)];
    }

    /// <summary>The unit that was worked on when a picture was taken, with what shows it; or no unit, and why none can be told.</summary>
    public (Unit? Unit, string Why) At(FoundPhoto photo)
    {
        var near = _ofOne.Select(m => (Mark: m, Away: m.After(photo))).Where(m => m.Away.Duration() <= Near).ToList();
        var before = near.Where(m => m.Away <= TimeSpan.Zero).OrderBy(m => m.Away).Select(m => (Mark?)m.Mark).LastOrDefault();
        var after = near.Where(m => m.Away > TimeSpan.Zero).OrderBy(m => m.Away).Select(m => (Mark?)m.Mark).FirstOrDefault();
        var taken = $"its time, {Shown(photo.Taken!.Value)}";
        if ((before ?? after) is not { } one)
            return (null, $"no tag or label in it, and no step of one unit was marked within {Near.TotalHours:0} hours of {taken}");
        if (before is null || after is null)
            return (one.Unit, $"by {taken}: {(before is null ? "before" : "after")} {Said(one)}");
        if (before.Unit.Id == after.Unit.Id)
            return (before.Unit, $"by {taken}: between {Said(before)} and \"{after.Step.Label}\" at {Clock(after)}");
        var (since, until) = (before.After(photo).Duration(), after.After(photo));
        return since * 2 <= until ? (before.Unit, $"by {taken}: soon after {Said(before)}, long before {Said(after)}")
            : until * 2 <= since ? (after.Unit, $"by {taken}: soon before {Said(after)}, long after {Said(before)}")
            : (null, $"no tag or label in it, and {taken}, lies between {Said(before)} and {Said(after)}");
    }

    /// <summary>The phase that a unit was in when a picture was taken, by the mark that is nearest; null where none is of that day.</summary>
    public Phase? PhaseOf(Unit unit, FoundPhoto photo) => photo.Taken is null ? null
        : _all.Where(m => m.Unit.Id == unit.Id && m.After(photo).Duration() <= SameDay).OrderBy(m => m.After(photo).Duration())
            .Select(m => (Phase?)m.Step.Phase).FirstOrDefault();

    /// <summary>
    /// The furthest phase of a unit in which something was done before a picture was taken, at any time where that is not known; null for none.
    /// </summary>
    public Phase? Furthest(Unit unit, FoundPhoto photo) => _all.Where(m => m.Unit.Id == unit.Id && m.Head.Value is StepMark { NotNeededBecause: null }
        && (photo.Taken is null || m.After(photo) <= TimeSpan.Zero)).Select(m => (Phase?)m.Step.Phase).Max();

    /// <summary>Why a picture can't be one of the open wall of a unit with its cable in it, by the time that its file says; null where it can.</summary>
    public string? AgainstOpenWall(Unit unit, FoundPhoto photo)
    {
        if (photo.Taken is not { } taken)
            return null;
        var done = _all.Where(m => m.Unit.Id == unit.Id && m.Head.Value is StepMark { NotNeededBecause: null }).ToList();
        return done.Find(m => m.Step.Id == Pulled) is { } pulled && pulled.After(photo) > Late ? $"its time, {Shown(taken)}, lies before {Dated(pulled)}"
            : done.Where(m => m.Step.Phase is Phase.CloseIn or >= Phase.Hang).MinBy(m => m.Head.At) is { } closed && closed.After(photo) < -SameDay
            ? $"its time, {Shown(taken)}, lies after {Dated(closed)}"
            : null;
    }

    /// <summary>A time as it is shown.</summary>
    public static string Shown(DateTime at) => at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static string Said(Mark mark) => $"\"{mark.Step.Label}\" of {mark.Unit.Tag} at {Clock(mark)}";

    private static string Dated(Mark mark) => $"\"{mark.Step.Label}\" on {mark.Head.At.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";

    private static string Clock(Mark mark) => mark.Head.At.ToString("HH:mm", CultureInfo.InvariantCulture);

    private sealed record Mark(Unit Unit, Step Step, Head Head)
    {
        /// <summary>How long after the picture it was made; less than nothing for before.</summary>
        public TimeSpan After(FoundPhoto photo) => photo.FromUtc is { } away
            ? Head.At - new DateTimeOffset(DateTime.SpecifyKind(photo.Taken!.Value, DateTimeKind.Unspecified), away)
            : Head.At.DateTime - photo.Taken!.Value;
    }
}
