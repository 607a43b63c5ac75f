using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Finished openings.</summary>
internal static class MeasureSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("measured", Phase.Measure, ItemKind.Unit, "Opening measured",
            "Width at top, middle, bottom; height at left, middle, right; both diagonals; flat depth.",
            [WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight,
                WindowFacts.DiagonalDown, WindowFacts.DiagonalUp, WindowFacts.Depth]),
        new("measured-again", Phase.Measure, ItemKind.Unit, "Measured a second time",
            "Without looking at the first figures: smallest width, largest height.",
            [WindowFacts.WidthAgain, WindowFacts.HeightAgain]),
        new("in-the-way-noted", Phase.Measure, ItemKind.Unit, "Obstructions noted",
            "Handle, crank, tile, alarm contact; write none where there is none.",
            [WindowFacts.InTheWay]),
    ];
}
