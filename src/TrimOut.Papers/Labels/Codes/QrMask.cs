namespace TrimOut.Papers.Labels.Codes;

/// <summary>One of the eight masks of a size: the fields that it turns over, with the format bits that name it.</summary>
internal sealed class QrMask
{
    private readonly UInt128[] _rows;
    private readonly UInt128[] _columns;

    public QrMask(QrSize size, int number)
    {
        _rows = new UInt128[size.Side];
        _columns = new UInt128[size.Side];
        for (var row = 0; row < size.Side; row++)
        {
            for (var column = 0; column < size.Side; column++)
            {
                if (!size.IsTaken(row, column) && Turns(number, row, column))
                    Turn(row, column);
            }
        }
        PutFormat(size, number, (row, column, dark) =>
        {
            if (dark)
                Turn(row, column);
        });
    }

    /// <summary>Goes over the fields of the format bits, both copies: error correction M and the mask (ISO/IEC 18004, 7.9).</summary>
    public static void PutFormat(QrSize size, int mask, Action<int, int, bool> put)
    {
        var rest = mask;
        for (var bit = 0; bit < 10; bit++)
            rest = (rest << 1) ^ ((rest >> 9) * 0x537);
        var bits = (mask << 10 | rest) ^ 0x5412;
        for (var bit = 0; bit < 15; bit++)
        {
            var dark = (bits >> bit & 1) != 0;
            var (row, column) = bit switch { < 6 => (bit, 8), 6 => (7, 8), 7 => (8, 8), 8 => (8, 7), _ => (8, 14 - bit) };
            put(row, column, dark);
            (row, column) = bit < 8 ? (8, size.Side - 1 - bit) : (size.Side - 15 + bit, 8);
            put(row, column, dark);
        }
    }

    /// <summary>The fields of a code under this mask, row by row.</summary>
    public UInt128[] Over(UInt128[] rows) => [.. rows.Zip(_rows, (row, turned) => row ^ turned)];

    /// <summary>How hard a code is to read under this mask (ISO/IEC 18004, 7.8.3): long lines and blocks of one shade, what looks like a finder, too much of one shade.</summary>
    public int Penalty(UInt128[] rows, UInt128[] columns)
    {
        var side = rows.Length;
        var (lines, blocks, finders, dark) = (0, 0, 0, 0);
        var all = (UInt128.One << side) - 1;
        UInt128 above = default;
        for (var at = 0; at < side; at++)
        {
            var row = rows[at] ^ _rows[at];
            Line(row, side, ref lines, ref finders);
            Line(columns[at] ^ _columns[at], side, ref lines, ref finders);
            dark += (int)UInt128.PopCount(row);
            if (at > 0)
            {
                // Two fields of a row are alike, the two above are, and one pair is like the other.
                var alike = ~(row ^ row >> 1) & ~(above ^ above >> 1) & ~(row ^ above) & all >> 1;
                blocks += (int)UInt128.PopCount(alike);
            }
            above = row;
        }
        var fields = side * side;
        var offBalance = (Math.Abs(dark * 20 - fields * 10) + fields - 1) / fields - 1;
        return lines + 3 * blocks + 40 * finders + 10 * Math.Max(0, offBalance);
    }

    private static void Line(UInt128 line, int side, ref int lines, ref int finders)
    {
        // A run of n alike, n from 5 on, costs n - 2: one for each five in a row, and two more for the run.
        var alike = ~(line ^ line >> 1) & (UInt128.One << side - 1) - 1;
        var pairs = alike & alike >> 1;
        var fives = pairs & pairs >> 2;
        lines += (int)(UInt128.PopCount(fives) + 2 * UInt128.PopCount(fives & ~(fives << 1)));

        // Dark 1, light 1, dark 3, light 1, dark 1, with four light ones before or after; the border is light.
        var edged = line << 4;
        var finder = edged & ~(edged >> 1) & edged >> 2 & edged >> 3 & edged >> 4 & ~(edged >> 5) & edged >> 6;
        if (finder == 0)
            return;
        var light = ~edged;
        var four = light & light >> 1 & light >> 2 & light >> 3;
        finders += (int)UInt128.PopCount(finder & (four >> 7 | four << 4));
    }

    private static bool Turns(int number, int row, int column) => number switch
    {
        0 => (row + column) % 2 == 0,
        1 => row % 2 == 0,
        2 => column % 3 == 0,
        3 => (row + column) % 3 == 0,
        4 => (row / 2 + column / 3) % 2 == 0,
        5 => row * column % 2 + row * column % 3 == 0,
        6 => (row * column % 2 + row * column % 3) % 2 == 0,
        _ => ((row + column) % 2 + row * column % 3) % 2 == 0,
    };

    private void Turn(int row, int column)
    {
        _rows[row] |= UInt128.One << column;
        _columns[column] |= UInt128.One << row;
    }
}
