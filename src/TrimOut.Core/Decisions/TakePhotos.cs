using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>Notes pictures at what they show, beside those that are noted there, and marks the steps that asked for one.</summary>
public static class TakePhotos
{
    private const int MostNames = 6;

    /// <summary>Which of the pictures there is room to note, in their order: a detail holds a bounded text.</summary>
    /// <param name="house">The house.</param>
    /// <param name="photos">Where each belongs, and its path beside the house file.</param>
    public static ImmutableArray<bool> HaveRoom(House house, IReadOnlyList<(PhotoPlace Place, string Path)> photos)
    {
        var noted = new Dictionary<(string, string), string?>();
        return
        [
            .. photos.Select(p =>
            {
                var key = (p.Place.Holder.Id, p.Place.Fact.Name);
                var with = PhotoPaths.With(noted.TryGetValue(key, out var before) ? before : Noted(house, p.Place), p.Path);
                var fits = p.Place.Fact.ReadTyped(with, house) is { Ok: true } stored && stored.Value == with;
                if (fits)
                    noted[key] = with;
                return fits;
            }),
        ];
    }

    /// <summary>The change: one for all pictures. A step that asks for one is marked where nothing else is missing and nothing speaks against it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="report">What the checks say of it.</param>
    /// <param name="steps">The list of steps that the work is done by.</param>
    /// <param name="photos">Where each belongs, and its path beside the house file.</param>
    /// <returns>The change, or that there is nothing to note.</returns>
    public static Result<Draft> Draft(House house, CheckReport report, StepList steps, IReadOnlyList<(PhotoPlace Place, string Path)> photos)
    {
        if (photos.Count == 0)
            return new Refusal("No picture was chosen.");
        var draft = new Draft("");
        foreach (var detail in photos.GroupBy(p => (p.Place.Holder.Id, p.Place.Fact.Name)))
        {
            var place = detail.First().Place;
            draft = draft.Put(place.Holder.Id, place.Fact, detail.Aggregate(Noted(house, place), (noted, p) => PhotoPaths.With(noted, p.Path))!);
        }
        var done = photos.Where(p => p.Place is { Step: not null, Marks: true }).DistinctBy(p => (p.Place.Of.Id, p.Place.Step))
            .Select(p => (p.Place.Of, Step: p.Place.Step!))
            .Where(p => IsDoneBy(house, report, steps, p.Of, p.Step)).ToList();
        foreach (var (of, step) in done)
            draft = draft.PutStored(of.Id, step.Field, StepMark.Done.ToString());
        var marked = done.GroupBy(d => d.Step.Label).Select(g => $"; {g.Key}: {Names([.. g.Select(d => d.Of.Name)])}");
        var (count, of1) = (NumberText.Counted(photos.Count, "photo"), Names([.. photos.Select(p => p.Place.Of.Name).Distinct()]));
        return draft with { What = $"{count} taken in, of {of1}{string.Concat(marked)}" };
    }

    private static bool IsDoneBy(House house, CheckReport report, StepList steps, Subject of, Step step) =>
        house.FindUnit(of.Id) is { } unit && unit.MarkOf(step) is null && steps.AlsoMissing(step, unit) is null
        && steps.EvidenceOf(step, unit).All(f => f == RunFacts.Photo || !Progress.Lacks(unit, f))
        && StepGuard.Against(unit, step, report, steps).IsEmpty;

    private static string? Noted(House house, PhotoPlace place) => house.Find(place.Holder.Id)?.Get(place.Fact);

    private static string Names(List<string> names) => names.Count <= MostNames ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(MostNames))} and {NumberText.Plain(names.Count - MostNames)} more";
}
