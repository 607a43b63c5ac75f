using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Plans.Photos;

namespace TrimOut.Core.Decisions;

/// <summary>Takes a picture away from where it is noted, or notes it elsewhere. Its file stays where it is, and no mark of a step is touched.</summary>
public static class PutPhotoRight
{
    /// <summary>The change that takes it away.</summary>
    public static Draft Remove(HousePhoto photo) => Without(new Draft($"Photo no longer noted at {photo.Of} ({photo.Shows}): {Name(photo)}"), photo);

    /// <summary>The change that notes it elsewhere.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="photo">The picture.</param>
    /// <param name="typed">A tag, and perhaps a word for what it shows, such as <c>W03 wall</c>.</param>
    public static Result<Draft> Move(HouseLog log, HousePhoto photo, string typed) =>
        new PhotoPlan(log).Place(new FoundPhoto(Name(photo), null, []), typed).Then<Draft>(placed =>
        {
            var place = placed.Place!;
            if (place.Holder.Id == photo.Holder.Id && place.Fact == photo.Fact)
                return new Refusal($"It is noted there already, at {photo.Of} ({photo.Shows}).");
            var shows = place.Fact == RunFacts.Photo ? "the open wall" : place.Fact == UnitFacts.Photo ? "the unit" : "the window";
            return place.Fact.ReadTyped(PhotoPaths.With(log.House.Find(place.Holder.Id)?.Get(place.Fact), photo.Path), log.House).Then<Draft>(stored =>
                Without(new Draft($"Photo moved from {photo.Of} ({photo.Shows}) to {place.Of.Name} ({shows}): {Name(photo)}"), photo)
                    .PutStored(place.Holder.Id, place.Fact.Name, stored));
        });

    private static Draft Without(Draft draft, HousePhoto photo) =>
        draft.PutStored(photo.Holder.Id, photo.Fact.Name, PhotoPaths.Without(photo.Holder.Get(photo.Fact), photo.Path));

    private static string Name(HousePhoto photo) => photo.Path[(photo.Path.LastIndexOf('/') + 1)..];
}
