using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>The signs that a window is drawn with.</summary>
internal static class DrawingSigns
{
    public static readonly Sign Lead = new(g => g.Lead, "in a drawing: the lead side, where the cable reaches the unit");
    public static readonly Sign Entry = new(g => g.Entry, "in a drawing: the entry, where the cable leaves the wall");
    public static readonly Sign Tail = new(g => g.Cable, "in a drawing: the tail, to scale");
    public static readonly Sign Bracket = new(g => g.Bracket, "in a drawing: an end bracket");
    public static readonly Sign Head = new(g => g.Solid, "in a drawing: the head of the unit; in a section, its tube");
    public static readonly Sign Fabric = new(g => g.Fabric, "in a drawing: the covering, half way down; in a section, the full roll");

    public static readonly Sign Cells = new(g => g.Fabric + g.Light, "in a drawing: a covering of cells, which stacks");
    public static readonly Sign Slats = new(g => g.Slat, "in a drawing: a covering of slats");
    public static readonly Sign Folds = new(g => g.Fold + g.Fabric, "in a drawing: folds or vanes, drawn to both sides");
    public static readonly Sign Outside = new(g => g.Bracket + g.Solid + g.TopRight, "in a drawing: an outside mount hides the edge of the opening");

    public static readonly IReadOnlyList<Sign> Window = [Lead, Entry, Tail, Bracket, Head, Fabric, Cells, Slats, Folds, Outside];
}
