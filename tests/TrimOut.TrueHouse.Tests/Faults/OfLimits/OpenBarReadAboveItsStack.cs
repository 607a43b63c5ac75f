using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>A bar is read higher above the glass than its stack lets it.</summary>
public sealed class OpenBarReadAboveItsStack : Fault
{
    private const double TooHigh = 60;

    public override string Goes => "a bar is read higher above the glass than its stack lets it";

    public override string Costs => "a book that holds a limit which nobody can set";

    public override Stage In => Stage.Limits;

    public override IReadOnlyList<string> DoNotNameIt => ["bars-not-level"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => u.Kind.Form == RaisedForm.Stack).One(dice) is not { } unit)
            return null;
        var opening = unit.Opening;
        var clear = opening.GlassBelowHead - unit.Kind.Raised(opening.Finished.Height + opening.HeadAbove) + opening.HeadAbove;
        house.Slips.Writes(unit.Key, UnitFacts.OpenGap, house.Typed(clear + TooHigh));
        return At(unit.Key, (unit.Key, UnitFacts.OpenGap), (opening.Tag, WindowFacts.GlassBelowHead)).Of(TooHigh - 12.7, 3 * house.TapeError);
    }
}
