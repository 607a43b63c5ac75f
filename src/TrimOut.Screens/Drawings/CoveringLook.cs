using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>How a covering is drawn: by what the sheet of its kind says it does when it is raised, and by the words of its name.</summary>
internal enum CoveringLook
{
    /// <summary>A cloth that rolls up; also where nothing is known.</summary>
    Cloth,

    /// <summary>Cells that stack.</summary>
    Cells,

    /// <summary>Slats that lie across.</summary>
    Slats,

    /// <summary>Folds or vanes that hang down and are drawn to the sides.</summary>
    Folds,
}

/// <summary>The looks of coverings.</summary>
internal static class CoveringLooks
{
    private static readonly string[] DrawnWords = ["drap", "curtain", "vertical", "draw"];

    private static readonly string[] SlatWords = ["blind", "slat", "wood", "horizontal", "venetian"];

    /// <summary>The look of a kind; a name in words of none is a stack of cells or a cloth, as its sheet says.</summary>
    public static CoveringLook Of(CoveringKind? kind) => kind is null ? CoveringLook.Cloth
        : kind.Has(DrawnWords) ? CoveringLook.Folds
        : kind.RaisedForm == RaisedForm.Roll ? CoveringLook.Cloth
        : kind.Has(SlatWords) ? CoveringLook.Slats
        : kind.RaisedForm == RaisedForm.Stack ? CoveringLook.Cells
        : CoveringLook.Cloth;

    /// <summary>The sign of one cell of a covering; empty where nothing of it hangs.</summary>
    /// <param name="look">The look.</param>
    /// <param name="x">The column in the covering, from 0.</param>
    /// <param name="y">The line below its head, from 0.</param>
    /// <param name="columns">How many columns the covering has.</param>
    /// <param name="glyphs">What it is drawn with.</param>
    public static string Cell(this CoveringLook look, int x, int y, int columns, Glyphs glyphs) => look switch
    {
        CoveringLook.Slats => glyphs.Slat,
        CoveringLook.Cells => y % 2 == 0 ? glyphs.Fabric : glyphs.Light,
        CoveringLook.Folds => x >= (columns + 3) / 4 && x < columns - (columns + 3) / 4 ? "" : x % 2 == 0 ? glyphs.Fold : glyphs.Fabric,
        _ => glyphs.Fabric,
    };

    private static bool Has(this CoveringKind kind, string[] words) => Array.Exists(words, w => kind.Name.Contains(w, StringComparison.OrdinalIgnoreCase));
}
