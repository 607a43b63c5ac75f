using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Photos;

/// <summary>Tells of pictures where in a house they belong, and why: by a label seen in them, by a tag in their name, by their time.</summary>
public sealed class PhotoPlan
{
    private readonly StepList _steps;
    private readonly TagsInName _tags;
    private readonly MarkTimes _times;

    /// <summary>A plan for a house as it stands.</summary>
    /// <param name="house">The house.</param>
    /// <param name="steps">The list of steps that the work is done by; this program's where none is given.</param>
    public PhotoPlan(House house, StepList? steps = null) =>
        (_steps, _tags, _times) = (steps ?? StepList.Shipped, new TagsInName(house), new MarkTimes(house, steps ?? StepList.Shipped));

    /// <summary>Where a picture belongs, or why that can't be told.</summary>
    public PhotoPlacement Place(FoundPhoto photo)
    {
        if (photo.Unreadable is { } unreadable)
            return Not(photo, unreadable);
        if (photo.TakenInAs is { } path)
            return Not(photo, $"the same picture was taken in before, as {path}");
        if (photo.SameAs is { } other)
            return Not(photo, $"the same picture as {other}");
        var (named, words) = _tags.In(Stem(photo.Name));
        var labels = photo.Labels.Select(l => (Tag: l, Of: _tags.Tagged(l))).ToList();
        if (labels.FirstOrDefault(l => l.Of is null) is { Tag: { } unknown })
            return Not(photo, $"the label in it says {unknown}, and no window here is called so");
        var seen = labels.Select(l => l.Of!.Value).DistinctBy(l => l.Of.Id).ToList();
        if (seen is [var label])
        {
            return named.Any(n => n.Of.Id != label.Of.Id && !IsWindowOf(n.Of, label.Of))
                ? Not(photo, $"the label in it says {label.Of.Name}, and its name {Names(named)}")
                : At(photo, label.Of, words, PlacedBy.Label, $"by its label{Before(label.Before)}");
        }
        if (named is [var one] && (seen.Count == 0 || seen.Any(s => s.Of.Id == one.Of.Id)))
            return At(photo, one.Of, words, PlacedBy.Name, $"by {one.Before ?? one.Of.Name} in its name{Before(one.Before)}");
        if (seen.Count > 1 || named.Count > 1)
            return Not(photo, seen.Count > 1 ? $"labels of {Names(seen)} are in it" : $"{Names(named)} are in its name");
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
        var (named, words) = _tags.In(typed, typed: true);
        return named switch
        {
            [var one] when words.FirstOrDefault(w => PhaseWords.In([w]) is null) is not { } unknown => At(photo, one.Of, words, PlacedBy.Hand, "as you said"),
            [_] => new Refusal($"\"{words.First(w => PhaseWords.In([w]) is null).ToLowerInvariant()}\" is no word for what a picture shows. "
                + "Type a tag, and behind it nothing, or wall, box, brackets, finished or the like."),
            [] => new Refusal($"No window or unit is called {typed.Trim()}. Type a tag, such as W03."),
            _ => new Refusal($"{Names(named)} are {named.Count} tags. A picture is noted at one of them."),
        };
    }

    private PhotoPlacement At(FoundPhoto photo, Subject of, IEnumerable<string> words, PlacedBy by, string why)
    {
        var said = PhaseWords.In(words);
        if (of is not Unit unit)
        {
            return new PhotoPlacement(photo, new PhotoPlace(of, of.Item, WindowFacts.Photo, null,
                said?.Phase ?? ((Window)of).Units.Select(u => Current(u)).DefaultIfEmpty(Phase.WalkThrough).Min()), by, why);
        }
        var phase = said?.Phase ?? _times.PhaseOf(unit, photo) ?? Current(unit);
        var step = _steps.Open(phase, unit).FirstOrDefault(s => s.Evidence.Contains(RunFacts.Photo));
        var worded = by != PlacedBy.Hand && said is { } spoken ? $"{why}, \"{spoken.Word}\"" : why;
        return step is not null && Progress.Holder(unit, RunFacts.Photo) is { } run
            ? new PhotoPlacement(photo, new PhotoPlace(unit, run, RunFacts.Photo, step, phase), by, worded)
            : new PhotoPlacement(photo, new PhotoPlace(unit, unit.Item, UnitFacts.Photo, null, phase), by, worded);
    }

    private Phase Current(Unit unit) => Progress.Current(unit, _steps) ?? Phase.Handover;

    private static PhotoPlacement Not(FoundPhoto photo, string why) => new(photo, null, PlacedBy.Nothing, why);

    private static bool IsWindowOf(Subject window, Subject of) => of is Unit unit && unit.Window.Id == window.Id;

    private static string Before(string? before) => before is null ? "" : ", as it was called before";

    private static string Names(IEnumerable<(Subject Of, string? Before)> of) => string.Join(" and ", of.Select(o => o.Of.Name));

    private static string Stem(string name) => name.LastIndexOf('.') is > 0 and var dot ? name[..dot] : name;
}
