using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Drawings;

/// <summary>Where the units of a window and their entries lie, in millimetres from the top left corner of the opening, as seen from inside the room.</summary>
/// <param name="Wide">Width of the opening.</param>
/// <param name="High">Height of the opening.</param>
/// <param name="ToScale">Whether both are known; else they stand for themselves, and nothing in it has a true place.</param>
/// <param name="Units">The units, from the left.</param>
internal sealed record WindowLayout(double Wide, double High, bool ToScale, IReadOnlyList<UnitLayout> Units)
{
    /// <summary>What an opening is drawn as while nobody has measured it.</summary>
    private const double NotMeasured = 1000;

    /// <summary>Farthest left of opening and units; 0 or less.</summary>
    public double From => Units.Select(u => u.From).Append(0).Min();

    /// <summary>Farthest right of opening and units.</summary>
    public double To => Units.Select(u => u.To).Append(Wide).Max();

    /// <summary>Highest of opening and units; 0 or less.</summary>
    public double Top => Units.Select(u => u.Top).Append(0).Min();

    /// <summary>Of a window, as far as it is known.</summary>
    public static WindowLayout Of(Window window)
    {
        var toScale = window is { KnownWidth: { } width, KnownHeight: { } height } && width > Length.Zero && height > Length.Zero;
        var (wide, high) = toScale ? (window.KnownWidth!.Value.InMillimetres(), window.KnownHeight!.Value.InMillimetres()) : (NotMeasured * 1.5, NotMeasured);
        var outside = toScale && window.Mount == Mount.Outside;
        var above = outside ? window.Item.Get(WindowFacts.HeadAbove)?.InMillimetres() ?? 0 : 0;
        return new WindowLayout(wide, high, toScale, [.. window.Units.Select((unit, at) =>
        {
            var (from, to) = toScale && AlongOpening.Drawn(unit) is ({ } left, { } right)
                ? (left.InMillimetres(), right.InMillimetres())
                : (wide * at / window.Units.Length, wide * (at + 1) / window.Units.Length);
            return new UnitLayout(unit, from, to, -above, EntryOf(unit, wide, toScale));
        })]);
    }

    private static (double Along, double Below)? EntryOf(Unit unit, double wide, bool toScale) => !unit.OnPanel || unit.EntrySide is not { } side ? null
        : toScale && unit.EntryAlong is { } along ? (along.InMillimetres(), unit.EntryBelowHead?.InMillimetres() ?? 0)
        : toScale ? null
        : (side == Side.Left ? 0 : wide, 0);
}

/// <summary>Where one unit lies.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="From">Its left end, from the left of the opening; outside it is below 0.</param>
/// <param name="To">Its right end.</param>
/// <param name="Top">Its top, down from the head of the opening; outside it is below 0.</param>
/// <param name="Entry">Where its cable leaves the wall; null where that is not known or it has none.</param>
internal sealed record UnitLayout(Unit Unit, double From, double To, double Top, (double Along, double Below)? Entry);
