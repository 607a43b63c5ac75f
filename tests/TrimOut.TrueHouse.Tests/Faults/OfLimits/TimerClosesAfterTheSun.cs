using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>A timer closes a window that looks east in the afternoon.</summary>
public sealed class TimerClosesAfterTheSun : Fault
{
    public override string Goes => "a timer closes a window that looks east in the afternoon, when the sun has gone";

    public override string Costs => "a room that is hot by noon, and dark after it";

    public override Stage In => Stage.Limits;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        // Noon of the sun is past 13:15 on no day of the clocks of Denver, and the earliest sunset is at 16:35.
        if (house.Remotes.Where(r => r.Presets.TryGetValue("Evening", out var units) && units.Exists(LooksEast)).One(dice) is not { } remote)
            return null;
        remote.RunsAt = "15:30";
        var unit = remote.Presets["Evening"].Find(LooksEast)!;
        return At(remote.Name, ($"{remote.Name}/Evening", PresetFacts.RunsAt), ($"{remote.Name}/Evening", PresetFacts.Position),
            (unit.Opening.Tag, WindowFacts.Facing), (Book.JobItself, HouseFacts.Latitude), (Book.JobItself, HouseFacts.Longitude),
            (Book.JobItself, HouseFacts.TimeZone));
    }

    private static bool LooksEast(RealUnit unit) => unit.Opening.Facing == "E";
}
