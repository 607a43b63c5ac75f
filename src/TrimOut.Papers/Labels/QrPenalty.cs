using System.Numerics;

namespace TrimOut.Papers.Labels;

/// <summary>What speaks against a mask of a QR code: long lines and blocks of one shade, what looks like a finder, too dark. ISO 18004, 7.8.3.</summary>
internal static class QrPenalty
{
    private const int Line = 3;
    private const int Block = 3;
    private const int LikeAFinder = 40;
    private const int Shade = 10;

    /// <summary>Fields of what looks like a finder, with the light ones beside it.</summary>
    private const int LongFinder = 11;

    private const int Bits = 64;

    /// <summary>So many fields begin something that ends in the same number.</summary>
    private const int Beginnings = Bits - LongFinder + 1;

    /// <summary>The points; the fewer, the better it is read.</summary>
    /// <param name="fields">The fields row by row, 1 for a dark one.</param>
    /// <param name="side">Fields a side.</param>
    public static int Of(ReadOnlySpan<byte> fields, int side)
    {
        var (penalty, dark) = (0, 0);
        for (var at = 0; at < side; at++)
            penalty += Along(fields[(at * side)..], 1, side) + Along(fields[at..], side, side);
        for (var row = 1; row < side; row++)
        {
            for (var at = row * side + 1; at < (row + 1) * side; at++)
            {
                if (fields[at] + fields[at - 1] + fields[at - side] + fields[at - side - 1] is 0 or 4)
                    penalty += Block;
            }
        }
        foreach (var field in fields)
            dark += field;
        return penalty + Math.Abs(20 * dark - 10 * fields.Length) / fields.Length * Shade;
    }

    /// <summary>What speaks against one row or column: as many fields at a time as a number has bits, each beginning counted in one of them.</summary>
    private static int Along(ReadOnlySpan<byte> fields, int step, int side)
    {
        var penalty = 0;
        for (var from = 0; from < side; from += Beginnings)
        {
            var count = Math.Min(Bits, side - from);
            var line = 0UL;
            for (var at = 0; at < count; at++)
                line = line << 1 | fields[(from + at) * step];
            penalty += Lines(line, count) + LikeAFinder * Finders(line, count);
        }
        return penalty;
    }

    /// <summary>Five of one shade in a row are 3 points, and each more is 1.</summary>
    private static int Lines(ulong line, int count)
    {
        var same = ~(line ^ line >> 1) & (1UL << count - 1) - 1;
        var five = same & same >> 1 & same >> 2 & same >> 3;
        var begun = ulong.MaxValue << Math.Max(0, count - Beginnings - 4);
        return BitOperations.PopCount(five & begun) + (Line - 1) * BitOperations.PopCount(five & ~(five << 1) & begun);
    }

    /// <summary>Dark, light, three dark, light, dark, with four light ones before or behind.</summary>
    private static int Finders(ulong line, int count)
    {
        if (count < LongFinder)
            return 0;
        var finder = line & ~line >> 1 & line >> 2 & line >> 3 & line >> 4 & ~line >> 5 & line >> 6;
        var light = ~line & ~line >> 1 & ~line >> 2 & ~line >> 3;
        var whole = (1UL << count - LongFinder + 1) - 1;
        return BitOperations.PopCount(light & finder >> 4 & whole) + BitOperations.PopCount(finder & light >> 7 & whole);
    }
}
