using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Units side by side in one opening: the width that they share, their order widths and their ends.</summary>
/// <param name="Room">
/// The width that they share: of an inside mount the widest that hangs plumb in it, or the narrowest of the opening until diagonals are
/// measured, of an outside mount the widest and both overlaps.
/// </param>
/// <param name="Widths">Their order widths, from the left.</param>
/// <param name="Ends">Both end allowances together; nothing outside.</param>
internal readonly record struct Neighbours(Length Room, IReadOnlyList<Length> Widths, Length Ends)
{
    /// <summary>What is left for all gaps together.</summary>
    public Length Left => SideBySide.LeftForGaps(Room, Widths, Ends);

    /// <summary>How many gaps there are.</summary>
    public int Gaps => Widths.Count - 1;

    /// <summary>The figures of a window; null with what is missing.</summary>
    public static (Neighbours? Figures, Outcome.NotChecked? Unknown) Of(Window window)
    {
        if (window.Mount is not { } mount)
            return (null, NotChecked.Of(window, WindowFacts.Mount));
        var overlap = mount == Mount.Inside ? Length.Zero : window.Item.Get(WindowFacts.OverlapEachSide);
        if (overlap is not { } beyond)
            return (null, NotChecked.Of(window, WindowFacts.OverlapEachSide));
        if ((mount == Mount.Inside ? window.WidthForSeveral : window.LargestWidth + beyond * 2) is not { } room)
            return (null, NotChecked.Of(window, WindowFacts.WidthTop));
        if (window.Units.FirstOrDefault(u => u.Item.Get(UnitFacts.OrderWidth) is null) is { } open)
        {
            var missing = Checks.NotChecked.OfOther.With(Arg.Label(UnitFacts.OrderWidth), Arg.Name(open));
            return (null, new Outcome.NotChecked(missing, FieldRef.To(open.Item, UnitFacts.OrderWidth)));
        }
        var ends = Length.Zero;
        if (mount == Mount.Inside)
        {
            foreach (var end in (Unit[])[window.Units[0], window.Units[^1]])
            {
                if (end.Kind?[CoveringKindFacts.EndAllowance] is not { } clear)
                    return (null, NotChecked.Of(end.Kind, CoveringKindFacts.EndAllowance, end, UnitFacts.Kind));
                ends += clear;
            }
        }
        return (new Neighbours(room, [.. window.Units.Select(u => u.Item.Get(UnitFacts.OrderWidth)!.Value)], ends), null);
    }

    /// <summary>What the sheets of all units say of gaps; null with the first that says nothing.</summary>
    public static (Length? Sum, Outcome.NotChecked? Unknown) ForGaps(Window window, Fact<Length> fact) =>
        window.Units.FirstOrDefault(u => u.Kind?[fact] is null) is { } silent
            ? (null, NotChecked.Of(silent.Kind, fact, silent, UnitFacts.Kind))
            : (SideBySide.ForAllGaps([.. window.Units.Select(u => u.Kind![fact]!.Value)]), null);

    /// <summary>
    /// What units side by side take besides themselves by their sheets: the gaps between them and both ends. A sheet that says nothing counts for nothing,
    /// and is named.
    /// </summary>
    public static (Length AtLeast, Outcome.NotChecked? Silent) BesideThem(Window window)
    {
        Outcome.NotChecked? silent = null;
        Length Said(Unit unit, Fact<Length> fact)
        {
            if (unit.Kind?[fact] is { } said)
                return said;
            silent ??= NotChecked.Of(unit.Kind, fact, unit, UnitFacts.Kind);
            return Length.Zero;
        }
        var gaps = SideBySide.ForAllGaps([.. window.Units.Select(u => Said(u, CoveringKindFacts.GapBetween))]);
        return (gaps + Said(window.Units[0], CoveringKindFacts.EndAllowance) + Said(window.Units[^1], CoveringKindFacts.EndAllowance), silent);
    }

    /// <summary>Its figures for whoever asks.</summary>
    public Working Working(Window window, string formula, string asked, Length sum)
    {
        var figures = this;
        return Checks.Working.Of(formula, () =>
        [
            ("opening", figures.Room.In(window)), .. figures.Widths.Select((w, at) => (window.Units[at].Tag, w.In(window))),
            ("both ends", figures.Ends.In(window)), ("left for gaps", figures.Left.In(window)), ("gaps", NumberText.Plain(figures.Gaps)),
                (asked, sum.In(window)),
        ]);
    }
}
