using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Photos;

/// <summary>Tells of pictures where in a house they belong, and why: by a label seen in them, by a tag in their name, by their time.</summary>
public sealed class PhotoPlan
{
    private readonly StepList _steps;
    private readonly TagsInName _tags;
    private readonly MarkTimes _times;
    private readonly string? _mark;

    /// <summary>A plan for a house as it stands.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="steps">The list of steps that the work is done by; this program's where none is given.</param>
    public PhotoPlan(HouseLog log, StepList? steps = null) => (_steps, _tags, _times, _mark) =
        (steps ?? StepList.Shipped, new TagsInName(log.House), new MarkTimes(log.House, steps ?? StepList.Shipped), HouseMark.Of(log));

    /// <summary>Where a picture belongs, or why that can't be told.</summary>
    public PhotoPlacement Place(FoundPhoto photo)
    {
        if (photo.Unreadable is { } unreadable)
            return Not(photo, unreadable);
        if (photo.TakenInAs is { } path)
            return Not(photo, $"the same picture was taken in before, as {path}");
        if (photo.SameAs is { } other)
            return Not(photo, $"the same picture as {other}");
        if (OfAnotherHouse(photo) is { } foreign)
            return Not(photo, $"the label in it, {foreign.Tag}, is of another house");
        var (named, words, unclear) = _tags.In(Stem(photo.Name));
        var labels = photo.Labels.Select(l => (Label: l, Of: _tags.Tagged(l.Tag))).ToList();
        if (labels.Find(l => l.Of is null).Label is { } unknown)
            return Not(photo, $"the label in it says {unknown.Tag}, and no window here is called so");
        if (labels.Find(l => l.Of is { Of: null }) is { Label: { }, Of: { } several })
            return Not(photo, $"of the label in it: {several.Unclear}");
        var seen = labels.Select(l => (Of: l.Of!.Value.Of!, l.Of!.Value.Before, IsOurs: l.Label.House is not null)).OrderByDescending(l => l.IsOurs)
            .DistinctBy(l => l.Of.Id).ToList();
        var unknownTag = named.Count == 0 && unclear is null ? _tags.AlmostTag(words) : null;
        if (seen is [var label])
        {
            if (unknownTag is not null)
                return Not(photo, $"the label in it says {label.Of.Name}, and its name {unknownTag}, as no window here is called");
            if (named.Any(n => n.Of.Id != label.Of.Id && !IsWindowOf(n.Of, label.Of)))
                return Not(photo, $"the label in it says {label.Of.Name}, and its name {Names(named)}");
            if (label.IsOurs)
                return At(photo, label.Of, words, PlacedBy.Label, $"by its label{Before(label.Before)}");
            // Labels of earlier editions say no house: one of another house may have the same tag.
            if (named.Count == 0)
            {
                return At(photo, label.Of, words, PlacedBy.Label, $"by its label{Before(label.Before)}, which does not say of which house it is")
                    with
                { IsDoubtful = true };
            }
        }
        if (unclear is not null)
            return Not(photo, unclear);
        if (named is [var one] && (seen.Count == 0 || seen.Any(s => s.Of.Id == one.Of.Id || IsWindowOf(one.Of, s.Of))))
            return At(photo, one.Of, words, PlacedBy.Name, $"by {one.Before ?? one.Of.Name} in its name{Before(one.Before)}");
        if (seen.Count > 1 || named.Count > 1)
            return Not(photo, seen.Count > 1 ? $"labels of {Names(seen.Select(l => (l.Of, l.Before)))} are in it" : $"{Names(named)} are in its name");
        if (unknownTag is not null)
            return Not(photo, $"its name says {unknownTag}, and no window here is called so");
        if (photo.Taken is null)
            return Not(photo, "no tag in its name, no label that can be read, and its file does not say when it was taken");
        var (unit, why) = _times.At(photo);
        return unit is null ? Not(photo, why) : At(photo, unit, words, PlacedBy.Time, why);
    }

    /// <summary>Where a picture belongs by what somebody typed: a tag, and perhaps a word for what it shows, such as <c>W03 wall</c>.</summary>
    /// <returns>That, or that it names no window here, or several.</returns>
    public Result<PhotoPlacement> Place(FoundPhoto photo, string typed)
    {
        if (photo.Unreadable is { } unreadable)
            return new Refusal($"{photo.Name} can't be taken in: {unreadable}.");
        if (OfAnotherHouse(photo) is { } foreign)
            return new Refusal($"{photo.Name} can't be taken in: the label in it, {foreign.Tag}, is of another house.");
        var (named, words, unclear) = _tags.In(typed, typed: true);
        return named switch
        {
            _ when unclear is not null => new Refusal($"{unclear}: type the tag of today."),
            [var one] when words.FirstOrDefault(w => PhaseWords.In([w]) is null) is not { } unknown => At(photo, one.Of, words, PlacedBy.Hand, "as you said"),
            [_] => new Refusal($"\"{words.First(w => PhaseWords.In([w]) is null).ToLowerInvariant()}\" is no word for what a picture shows. "
                + "Type a tag, and behind it nothing, or wall, box, brackets, finished or the like."),
            [] => new Refusal($"No window or unit is called {typed.Trim()}. Type a tag, such as W03."),
            _ => new Refusal($"{Names(named)} are {named.Count} tags. A picture is noted at one of them."),
        };
    }

    private SeenLabel? OfAnotherHouse(FoundPhoto photo) => photo.Labels.FirstOrDefault(l => l.House is not null && l.House != _mark);

    private PhotoPlacement At(FoundPhoto photo, Subject of, IEnumerable<string> words, PlacedBy by, string why)
    {
        var said = PhaseWords.In(words);
        if (of is not Unit unit)
        {
            return new PhotoPlacement(photo, new PhotoPlace(of, of.Item, WindowFacts.Photo, null,
                said?.Phase ?? ((Window)of).Units.Select(u => Current(u, photo)).DefaultIfEmpty(Phase.WalkThrough).Min()), by, why);
        }
        var phase = said?.Phase ?? _times.PhaseOf(unit, photo) ?? Current(unit, photo);
        var step = _steps.Open(phase, unit).FirstOrDefault(s => s.Evidence.Contains(RunFacts.Photo));
        var worded = by != PlacedBy.Hand && said is { } spoken ? $"{why}, \"{spoken.Word}\"" : why;
        if (step is null || Progress.Holder(unit, RunFacts.Photo) is not { } run)
            return new PhotoPlacement(photo, new PhotoPlace(unit, unit.Item, UnitFacts.Photo, null, phase), by, worded);
        // Somebody who says that it shows the wall knows better than the clock of a camera.
        var against = by == PlacedBy.Hand && said is not null ? null : _times.AgainstOpenWall(unit, photo);
        return new PhotoPlacement(photo, new PhotoPlace(unit, run, RunFacts.Photo, step, phase) { Marks = against is null }, by,
            against is null ? worded : $"{worded}; but {against}")
        { IsDoubtful = against is not null };
    }

    /// <summary>
    /// The phase that a unit was in when a picture was taken, or is in: the furthest one that was begun by then, and once that is done the next one. A step
    /// that was passed over long ago is not what somebody photographs.
    /// </summary>
    private Phase Current(Unit unit, FoundPhoto photo)
    {
        if (_times.Furthest(unit, photo) is not { } begun)
            return Progress.Current(unit, _steps) ?? Phase.Handover;
        return PhaseNames.All.Where(p => p >= begun).Select(p => (Phase?)p).FirstOrDefault(p => !Progress.Of(unit, p!.Value, _steps).Complete)
            ?? Phase.Handover;
    }

    private static PhotoPlacement Not(FoundPhoto photo, string why) => new(photo, null, PlacedBy.Nothing, why);

    private static bool IsWindowOf(Subject window, Subject of) => of is Unit unit && unit.Window.Id == window.Id;

    private static string Before(string? before) => before is null ? "" : ", as it was called before";

    private static string Names(IEnumerable<(Subject Of, string? Before)> of) => string.Join(" and ", of.Select(o => o.Of.Name));

    private static string Stem(string name) => name.LastIndexOf('.') is > 0 and var dot ? name[..dot] : name;
}
