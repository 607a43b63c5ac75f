using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Panels;

/// <summary>A column: its heading with what it means, where it stands, and how wide it is.</summary>
internal sealed record PanelColumn(Sign Sign, int At, int Cells, bool IsFigure = false);

/// <summary>The columns of the panels.</summary>
internal static class PanelColumns
{
    public static readonly PanelColumn Output = new(Sign.Words("Out", "heads a column: the output, from 1"), 4, 3);
    public static readonly PanelColumn Unit = new(Sign.Words("Unit", "heads a column: the unit whose run is on it"), 8, 8);
    public static readonly PanelColumn Label = new(Sign.Words("Label", "heads a column: what is written on the cable in the mechanical room"), 17, 10);
    public static readonly PanelColumn Open = new(Sign.Words("No load", "heads a column: volts at the window end with nothing connected"), 28, 8,
        IsFigure: true);
    public static readonly PanelColumn Loaded = new(Sign.Words("Loaded", "heads a column: volts at the unit while it moves"), 37, 8, IsFigure: true);
    public static readonly PanelColumn Done = new(Sign.Words("Done so far", "heads a column: spliced, powered (volts read), paired with a hub, limits set"), 46,
        99);

    public static readonly IReadOnlyList<PanelColumn> All = [Output, Unit, Label, Open, Loaded, Done];
}
