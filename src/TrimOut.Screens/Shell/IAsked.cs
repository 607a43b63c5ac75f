using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;

namespace TrimOut.Screens.Shell;

/// <summary>A screen with a unit or figures under its cursor, which can be asked about.</summary>
internal interface IAsked
{
    /// <summary>The unit under the cursor; null where there is none.</summary>
    Unit? UnitAt(ScreenContext context);

    /// <summary>The figures of what is under the cursor; null where there is nothing to ask about.</summary>
    AskedFigures? FiguresAt(ScreenContext context) => UnitAt(context) is { } unit ? new AskedFigures(unit.Tag, UnitFigures.Of(unit), null) : null;
}

/// <summary>Figures that were asked about.</summary>
/// <param name="Of">Whose they are.</param>
/// <param name="All">The figures.</param>
/// <param name="At">The fact under the cursor; its figures come first.</param>
internal sealed record AskedFigures(string Of, IReadOnlyList<Figure> All, Fact? At);
