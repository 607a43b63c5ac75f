using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>Which drawing helps most with a fact: the window, the roll in its head cover, the way of the cable, or the sun on the glass.</summary>
internal enum Picture
{
    Window,
    Roll,
    Route,
    Sun,
}

/// <summary>Chooses and draws pictures of a unit.</summary>
internal static class Pictures
{
    public static Picture For(Fact? fact) => fact is null ? Picture.Window
        : fact == WindowFacts.Facing || fact == WindowFacts.OverhangDepth || fact == WindowFacts.OverhangAbove || fact == WindowFacts.Horizon ? Picture.Sun
        : fact.Subject == ItemKind.Leg || fact == RunFacts.Cable || fact == RunFacts.FirstLoop || fact == RunFacts.SecondLoop ? Picture.Route
        : fact == UnitFacts.HeadCover || fact.Phase is Phase.Hang || fact == UnitFacts.OrderHeight || fact == WindowFacts.Depth ? Picture.Roll
        : Picture.Window;

    /// <summary>Draws a picture, or the window where there is not enough known for it; returns the lines that it took.</summary>
    public static int Draw(Area area, Picture picture, Unit unit, Glyphs glyphs)
    {
        var lines = picture switch
        {
            Picture.Roll => RollDrawing.Draw(area, unit, glyphs),
            Picture.Route when unit.Run is { } run => RouteDrawing.Draw(area, run, glyphs),
            Picture.Sun => SunDrawing.Draw(area, unit, glyphs),
            _ => 0,
        };
        return lines > 0 ? lines : WindowDrawing.Draw(area, unit, glyphs);
    }
}
