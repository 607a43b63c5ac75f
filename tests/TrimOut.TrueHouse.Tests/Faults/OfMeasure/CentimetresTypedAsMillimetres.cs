using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfMeasure;

/// <summary>A width is typed in centimetres in a house that reads bare numbers as millimetres.</summary>
public sealed class CentimetresTypedAsMillimetres : Fault
{
    public override string Goes => "a width is typed in centimeters in a house that reads bare numbers as millimeters";

    public override string Costs => "a size that is a tenth of itself";

    public override Stage In => Stage.Measured;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (!house.Metric || house.Covered().One(dice) is not { } opening)
            return null;
        house.Slips.Writes(opening.Tag, WindowFacts.WidthTop, Installer.Number(Math.Round(opening.Finished.Width / 10)));
        return At(opening.Tag, (opening.Tag, WindowFacts.WidthTop));
    }
}
