namespace TrimOut.Papers.Labels.Codes;

/// <summary>What is the same for every QR code of one version: its fixed fields, the way the bits go through it, its eight masks. Error correction M.</summary>
internal sealed class QrSize
{
    /// <summary>The largest version that is made here: 117 fields a side, 997 bytes.</summary>
    public const int Largest = 25;

    // ISO/IEC 18004, table 9, error correction M, versions 1 to 25.
    private static readonly byte[] CheckPerBlock = [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28];
    private static readonly byte[] BlocksOf = [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21];

    private static readonly Lazy<QrSize>[] Sizes = [.. Enumerable.Range(1, Largest).Select(v => new Lazy<QrSize>(() => new QrSize(v)))];

    private readonly int _version;
    private readonly UInt128[] _taken;

    private QrSize(int version)
    {
        _version = version;
        Side = 17 + 4 * version;
        Rows = new UInt128[Side];
        Columns = new UInt128[Side];
        _taken = new UInt128[Side];
        Fixed();
        Way = [.. Zigzag()];
        Masks = [.. Enumerable.Range(0, 8).Select(m => new QrMask(this, m))];
    }

    /// <summary>Fields a side.</summary>
    public int Side { get; }

    /// <summary>The fixed dark fields, row by row.</summary>
    public UInt128[] Rows { get; }

    /// <summary>The same, column by column.</summary>
    public UInt128[] Columns { get; }

    /// <summary>The free fields in the order in which bits go in.</summary>
    public (byte Row, byte Column)[] Way { get; }

    /// <summary>The eight masks.</summary>
    public QrMask[] Masks { get; }

    /// <summary>Check bytes of each block.</summary>
    public int Check => CheckPerBlock[_version - 1];

    /// <summary>Blocks that the bytes are dealt out to.</summary>
    public int Blocks => BlocksOf[_version - 1];

    /// <summary>All bytes that it holds, check bytes too.</summary>
    public int Bytes => Way.Length / 8;

    /// <summary>The bytes that are left for data.</summary>
    public int DataBytes => Bytes - Check * Blocks;

    /// <summary>Bits that say how long the text is.</summary>
    public int LengthBits => _version < 10 ? 8 : 16;

    /// <summary>The smallest that takes so many bytes of text and so many bits before its length; null where none does.</summary>
    public static QrSize? For(int textBytes, int headBits) =>
        Sizes.Select(s => s.Value).FirstOrDefault(s => headBits + s.LengthBits + 8 * textBytes <= 8 * s.DataBytes);

    /// <summary>The size with so many fields a side.</summary>
    public static QrSize OfSide(int side) => Sizes[(side - 17) / 4 - 1].Value;

    /// <summary>Whether a field is fixed, so that no mask turns it over.</summary>
    public bool IsTaken(int row, int column) => (_taken[row] >> column & 1) != 0;

    private void Fixed()
    {
        for (var at = 0; at < Side; at++)
        {
            Set(6, at, at % 2 == 0);
            Set(at, 6, at % 2 == 0);
        }
        Finder(3, 3);
        Finder(3, Side - 4);
        Finder(Side - 4, 3);
        var marks = Marks();
        foreach (var (row, column) in from r in marks from c in marks where !(r == 6 && c == 6 || r == 6 && c == marks[^1] || r == marks[^1] && c == 6) select (r, c))
        {
            for (var down = -2; down <= 2; down++)
            {
                for (var across = -2; across <= 2; across++)
                    Set(row + down, column + across, Math.Max(Math.Abs(down), Math.Abs(across)) != 1);
            }
        }
        QrMask.PutFormat(this, 0, (row, column, _) => Set(row, column, false));
        Set(Side - 8, 8, true);
        if (_version >= 7)
            Version();
    }

    private void Finder(int row, int column)
    {
        for (var down = -4; down <= 4; down++)
        {
            for (var across = -4; across <= 4; across++)
            {
                if (row + down >= 0 && row + down < Side && column + across >= 0 && column + across < Side)
                    Set(row + down, column + across, Math.Max(Math.Abs(down), Math.Abs(across)) is not (2 or 4));
            }
        }
    }

    /// <summary>Rows and columns of the alignment marks (ISO/IEC 18004, annex E).</summary>
    private int[] Marks()
    {
        if (_version == 1)
            return [];
        var count = _version / 7 + 2;
        var step = (_version * 8 + count * 3 + 5) / (count * 4 - 4) * 2;
        return [6, .. Enumerable.Range(0, count - 1).Select(at => Side - 7 - (count - 2 - at) * step)];
    }

    private void Version()
    {
        var rest = _version;
        for (var bit = 0; bit < 12; bit++)
            rest = (rest << 1) ^ ((rest >> 11) * 0x1F25);
        var bits = _version << 12 | rest;
        for (var bit = 0; bit < 18; bit++)
        {
            var (far, near) = (Side - 11 + bit % 3, bit / 3);
            Set(near, far, (bits >> bit & 1) != 0);
            Set(far, near, (bits >> bit & 1) != 0);
        }
    }

    private void Set(int row, int column, bool dark)
    {
        var (inRow, inColumn) = (UInt128.One << column, UInt128.One << row);
        _taken[row] |= inRow;
        Rows[row] = dark ? Rows[row] | inRow : Rows[row] & ~inRow;
        Columns[column] = dark ? Columns[column] | inColumn : Columns[column] & ~inColumn;
    }

    /// <summary>Two columns at a time from the right, up and down in turn, past the column of the timing marks.</summary>
    private IEnumerable<(byte Row, byte Column)> Zigzag()
    {
        for (var right = Side - 1; right >= 1; right -= 2)
        {
            if (right == 6)
                right = 5;
            for (var step = 0; step < Side; step++)
            {
                var row = (right + 1 & 2) == 0 ? Side - 1 - step : step;
                for (var column = right; column >= right - 1; column--)
                {
                    if (!IsTaken(row, column))
                        yield return ((byte)row, (byte)column);
                }
            }
        }
    }
}
