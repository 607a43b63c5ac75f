using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Sizes and finishes, frozen.</summary>
internal static class OrderSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("finish-chosen", Phase.Order, ItemKind.Unit, "Finish and head cover chosen",
            "As the owner chose it, written as the maker writes it.",
            [UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity, UnitFacts.HeadCover]),
        new("size-worked-out", Phase.Order, ItemKind.Unit, "Order size",
            "Take the size that is worked out, or type another and know why.",
            [UnitFacts.OrderWidth, UnitFacts.OrderHeight]),
        new("sheet-frozen", Phase.Order, ItemKind.Unit, "Order placed",
            "From this day on the size is not changed without the maker.",
            [UnitFacts.OrderedOn]),
        new("acknowledged", Phase.Order, ItemKind.Unit, "Acknowledged by the maker",
            "Check the acknowledgement against the order, line by line.",
            [UnitFacts.Acknowledgement]),
    ];
}
