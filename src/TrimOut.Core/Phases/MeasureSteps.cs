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
        new("part-measured", Phase.Measure, ItemKind.Unit, "Part of the opening shared out",
            "Where units hang side by side: how wide the part of this one is. All parts and the gaps between them fit into the opening.",
            [UnitFacts.PartWidth])
        {
            Applies = unit => unit.Window.Units.Length > 1,
            Since = 4,
        },
        new("overlap-chosen", Phase.Measure, ItemKind.Unit, "Overlap chosen",
            "Of an outside mount: how far it stands past the opening on each side, and how far its head is above it.",
            [WindowFacts.OverlapEachSide, WindowFacts.HeadAbove])
        {
            Applies = unit => unit.Window.Mount == Mount.Outside,
            Since = 4,
        },
        new("measured-again", Phase.Measure, ItemKind.Unit, "Measured a second time",
            "Without looking at the first figures: smallest width, largest height.",
            [WindowFacts.WidthAgain, WindowFacts.HeightAgain]),
        new("in-the-way-noted", Phase.Measure, ItemKind.Unit, "Obstructions noted",
            "Handle, crank, tile, alarm contact; write none where there is none.",
            [WindowFacts.InTheWay]),
    ];
}
