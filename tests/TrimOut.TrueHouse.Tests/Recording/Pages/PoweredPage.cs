using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>Panels connected by a licensed electrician, runs landed, volts and polarity read at the windows.</summary>
internal static class PoweredPage
{
    public static void Write(Installer installer)
    {
        var (house, book) = (installer.Truth, installer.Book);
        foreach (var panel in house.Panels)
            Write(installer, panel, house.Days[Stage.Powered]);
        foreach (var unit in house.Wired.Where(u => u.Panel is not null))
            Write(installer, unit);
        foreach (var panel in book.House.Panels)
            book.MarkAll(panel, panel.Name, Phase.Power);
        installer.MarkUnits(Phase.Power);
    }

    /// <summary>What is seen at one panel on the day on which it was connected.</summary>
    public static void Write(Installer installer, RealPanel panel, DateOnly connected) =>
        installer.Book.Put(panel.Name, (PanelFacts.Board, "Board A"), (PanelFacts.Breaker, panel.Breaker),
            (PanelFacts.BreakerRating, Number(panel.BreakerRating)), (PanelFacts.ElseOnBreaker, Number(panel.ElseOnBreaker)),
            (PanelFacts.ConnectedBy, panel.Signed ? "R. Field, licensed electrician" : null),
            (PanelFacts.Licence, panel.Signed ? "EL-0000" : null), (PanelFacts.ConnectedOn, Day(connected)),
            (PanelFacts.OffSeen, Word(panel.OffForJoints)), (PanelFacts.OffBy, "The crew"));

    /// <summary>What is read at the window of one wired unit.</summary>
    public static void Write(Installer installer, RealUnit unit)
    {
        var (meter, (open, loaded)) = (installer.Meter, Volts(installer.Truth, unit));
        installer.Book.Put(unit.Key, (RunFacts.Panel, unit.Panel!.Name), (RunFacts.Output, Number(unit.Output)),
            (RunFacts.OpenVolts, meter.Volts(open, unit.Key, "open volts")),
            (RunFacts.LoadedVolts, meter.Volts(loaded, unit.Key, "loaded volts")), (RunFacts.Polarity, unit.WiresChangedOver ? "swapped" : "right"),
            (RunFacts.WentDead, Word(unit.LandedInsteadOfIt is null ? WentDead.ThisWindow : WentDead.AnotherWindow)));
    }

    /// <summary>What stands at the window end of a run without load, and while the unit moves.</summary>
    private static (double Open, double Loaded) Volts(RealHouse house, RealUnit unit)
    {
        var cable = unit.Cable!.ComesOutAs ?? unit.Cable;
        var inLine = cable.InLine(Stage.Powered, 22) + unit.Splices;
        if (cable.Shorted(Stage.Powered) || double.IsInfinity(inLine))
            return (0, 0);
        var (volts, draws) = (unit.Panel!.Volts, unit.Kind.Running * unit.DrawsShare);
        return (volts, Math.Max(0, volts - (draws * inLine)));
    }
}
