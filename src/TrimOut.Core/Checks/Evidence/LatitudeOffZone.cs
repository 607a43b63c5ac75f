using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Sun;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The latitude of the house lies where its clocks are: not on the other side of the equator, and not half a hemisphere away.</summary>
/// <remarks>
/// <para>Why: a latitude with the wrong sign has the sun in the north at noon where it is in the south; every side of the sun sheet is then wrong, and looks
/// right.</para>
/// <para>To clear: put the sign right, south is negative, or choose the zone whose clocks the house goes by. A house far from the place that its zone is named
/// after is waived.</para>
/// </remarks>
public sealed class LatitudeOffZone() : Check<JobItself>(Subjects.House)
{
    /// <summary>So near to the place that a zone is named after a latitude fits it, and no nearer the one with the other sign.</summary>
    public const decimal NearDegrees = 15;

    /// <summary>No land that goes by the clocks of one place reaches so far north or south of it.</summary>
    public const decimal MostDegrees = 45;

    private static readonly Message OtherSign =
        new("Latitude {0} is {1} from the place that {2} is named after; with the other sign it is {3}.", "sign");
    private static readonly Message TooFar = new("Latitude {0} is {1} from the place that {2} is named after.", "far");
    private static readonly Message Exchanged =
        new("Latitude {0} and longitude {1} are near the place that {2} is named after only the other way round.", "exchanged");
    private static readonly Message PutRight =
        new("See whether the latitude has the right sign, south is negative, and whether it is the latitude. Else choose another time zone.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("latitude-off-zone", "Latitude does not go with the time zone", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "|latitude - that of the zone's place| <= 45 degrees; not nearer to it with the other sign, or as the longitude"));

    /// <inheritdoc/>
    public override Outcome Judge(JobItself subject)
    {
        if (subject.Item.Get(HouseFacts.Latitude) is not { } latitude)
            return subject.Item.Get(HouseFacts.TimeZone) is null ? new Outcome.DoesNotApply() : NotChecked.Of(subject, HouseFacts.Latitude);
        if (subject.Item.Get(HouseFacts.TimeZone) is not { } id || HouseZone.Find(id) is not { } zone)
            return NotChecked.Of(subject, HouseFacts.TimeZone);
        if (zone.Place is not (var place, var east))
            return new Outcome.DoesNotApply();
        var (off, other) = (Math.Abs(latitude - place), Math.Abs(-latitude - place));
        var named = Arg.Value(HouseFacts.TimeZone, id);
        if (off > NearDegrees && subject.Item.Get(HouseFacts.Longitude) is { } longitude && Math.Abs(longitude - place) <= NearDegrees
            && Math.Abs(latitude - east) <= NearDegrees)
        {
            return Found(Exchanged.With(Degrees(latitude), Degrees(longitude), named));
        }
        return off > NearDegrees && other <= NearDegrees ? Found(OtherSign.With(Degrees(latitude), Degrees(off), named, Degrees(other)))
            : off > MostDegrees ? Found(TooFar.With(Degrees(latitude), Degrees(off), named))
            : new Outcome.Fine();

        Outcome.Found Found(Sentence says) => new(says, PutRight, FieldRef.To(subject.Item, HouseFacts.Latitude));
    }

    private static Arg Degrees(decimal degrees) => Arg.Number(degrees, "degrees", 1);
}
