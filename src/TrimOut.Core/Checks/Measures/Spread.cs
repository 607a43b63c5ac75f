using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>How far three measures of one thing may lie apart.</summary>
internal static class Spread
{
    private static readonly Message MeasureAgain = new("Measure all three again. If it stays, an outside mount hides it.");
    private static readonly Message ReachFarther = new("Measure all three again. If it stays, let the unit reach farther past the opening.");

    /// <summary>Which of three measures lies farther off the middle one than the other does; the first where none does.</summary>
    public static Fact<Length> OffTheOthers(Window window, params ReadOnlySpan<Fact<Length>> three)
    {
        var sorted = three.ToArray().OrderBy(f => window.Item.Get(f)).ToList();
        var (low, middle, high) = (window.Item.Get(sorted[0]), window.Item.Get(sorted[1]), window.Item.Get(sorted[2]));
        return middle - low > high - middle ? sorted[0] : middle - low < high - middle ? sorted[2] : three[0];
    }

    public static Outcome Judge(Window window, Message apart, Length smallest, Length largest, string formula, FieldRef mends, bool ofWidths)
    {
        if (window.House.Job.Get(HouseFacts.SpreadLimit) is not { } asked)
            return NotChecked.Of(new JobItself(window.House), HouseFacts.SpreadLimit);
        var limits = Hidden.Limits(window, asked);
        if ((ofWidths ? limits.Sides : limits.Head) is not { } limit)
            return NotChecked.Of(window, ofWidths ? WindowFacts.OverlapEachSide : WindowFacts.HeadAbove);
        var spread = largest - smallest;
        var working = Working.Of(formula, () =>
            [("largest", largest.In(window)), ("smallest", smallest.In(window)), ("spread", spread.In(window)), ("limit", limit.In(window))]);
        return spread <= limit
            ? new Outcome.Fine(working)
            : new Outcome.Found(apart.With(smallest, largest, Arg.AtLeast(spread), Arg.AtMost(limit)),
                window.Mount == Mount.Outside ? ReachFarther : MeasureAgain, mends, working);
    }
}
