using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Drawings;

/// <summary>The whole house at a glance: how much there is of what, and how far each phase is, as bars.</summary>
internal static class HouseCard
{
    private const int Names = 14;

    private const int Figures = 12;

    public static void Draw(Area area, ScreenContext context)
    {
        var house = context.House;
        var leftOut = house.Windows.Count(w => w.LeftOut);
        var y = area.PutWrapped(0, 0, 3,
            $"{NumberText.Counted(house.Windows.Length - leftOut, "window")} with {NumberText.Counted(house.Units.Length, "unit")} "
            + $"in {NumberText.Counted(house.Rooms.Length, "room")}{(leftOut == 0 ? "" : $", {NumberText.Counted(leftOut, "window")} left out")}; "
            + $"{NumberText.Counted(house.Panels.Length, "panel")}, {NumberText.Counted(house.Hubs.Length, "hub")}, "
            + $"{NumberText.Counted(house.Remotes.Length, "remote")}.", Tone.Text) + 1;
        foreach (var phase in PhaseNames.All.TakeWhile(_ => y < area.Height))
        {
            var sum = context.SumOf(phase);
            var stops = context.Report.StopsIn(phase);
            area.PutFit(0, y, Names, phase.Full(), Tone.Heading);
            var cells = area.Width - Names - Figures - 6;
            var done = sum.Total == 0 ? 0 : sum.Done * cells / sum.Total;
            for (var x = 0; x < cells; x++)
                area.Put(Names + x, y, x < done ? context.Glyphs.Solid : context.Glyphs.Nothing, x < done ? Tone.Drawing : Tone.Dim);
            area.PutFigure(Names + cells + 1, y, Figures - 2, $"{NumberText.Plain(sum.Done)}/{NumberText.Plain(sum.Total)}", Tone.Text);
            if (stops > 0)
                area.Put(Names + cells + Figures, y, FindingSigns.Counted(context.Glyphs.Stop, stops), Tone.Stop);
            y++;
        }
    }
}
