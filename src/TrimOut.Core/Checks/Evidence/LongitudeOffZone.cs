using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Sun;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>The longitude of the house lies where its clocks are, within what clocks and sun differ by.</summary>
/// <remarks>
/// <para>Why: a longitude without its minus sign is on the other side of the earth; every time on the sun sheet is then wrong by hours, and looks right.</para>
/// <para>To clear: put the sign right, west is negative, or choose the zone whose clocks the house goes by. A house far from the place that its zone is named
/// after is waived.</para>
/// </remarks>
public sealed class LongitudeOffZone() : Check<JobItself>(Subjects.House)
{
    /// <summary>Clocks and sun differ by no more than some three hours anywhere (the far west of China), and the earth turns 15 degrees an hour.</summary>
    public const decimal MostDegrees = 3.5m * DegreesPerHour;

    /// <summary>So near to the place that a zone is named after a longitude fits it, and no nearer the one with the other sign.</summary>
    public const decimal NearDegrees = 15;

    private const decimal DegreesPerHour = 15;

    private static readonly Message OffClocks = new("At longitude {0} noon by the sun is {1} off noon by the clocks of {2}.", "clocks");
    private static readonly Message OtherSign =
        new("Longitude {0} is {1} from the place that {2} is named after; with the other sign it is {3}.", "sign");
    private static readonly Message PutRight =
        new("See whether the longitude lacks its sign: east is positive, west is negative. Else choose another time zone.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("longitude-off-zone", "Longitude does not go with the time zone", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "|longitude - 15 x hours of the zone| <= 52.5 degrees; not nearer to the zone's place with the other sign"));

    /// <inheritdoc/>
    public override Outcome Judge(JobItself subject)
    {
        if (subject.Item.Get(HouseFacts.Longitude) is not { } longitude)
            return subject.Item.Get(HouseFacts.TimeZone) is null ? new Outcome.DoesNotApply() : NotChecked.Of(subject, HouseFacts.Longitude);
        if (subject.Item.Get(HouseFacts.TimeZone) is not { } id || HouseZone.Find(id) is not { } zone)
            return NotChecked.Of(subject, HouseFacts.TimeZone);
        var here = FieldRef.To(subject.Item, HouseFacts.Longitude);
        if (zone.Place is { Longitude: var place } && Apart(longitude, place) > NearDegrees && Apart(-longitude, place) <= NearDegrees)
        {
            return new Outcome.Found(OtherSign.With(Degrees(longitude), Degrees(Apart(longitude, place)), Zone(id), Degrees(Apart(-longitude, place))),
                PutRight, here);
        }
        var off = Apart(longitude, zone.StandardHours * DegreesPerHour);
        return off <= MostDegrees ? new Outcome.Fine()
            : new Outcome.Found(OffClocks.With(Degrees(longitude), Arg.Number(off / DegreesPerHour, "h", 1), Zone(id)), PutRight, here);
    }

    /// <summary>How far apart two longitudes are, the shorter way around.</summary>
    private static decimal Apart(decimal one, decimal other) => Math.Abs(one - other) % 360 is var off && off > 180 ? 360 - off : off;

    private static Arg Zone(string id) => Arg.Value(HouseFacts.TimeZone, id);

    private static Arg Degrees(decimal degrees) => Arg.Number(degrees, "degrees", 1);
}
