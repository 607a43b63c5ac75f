namespace TrimOut.Papers.Labels;

/// <summary>The fields of a QR code row by row: its fixed patterns, its words, and the mask that reads best. ISO/IEC 18004, 6.3 and 7.7 to 7.10.</summary>
internal sealed class QrSymbol
{
    private const int Masks = 8;

    /// <summary>All masks come again after so many fields.</summary>
    private const int Period = 12;

    /// <summary>For each field of a period one bit a mask: whether that mask turns it.</summary>
    private static readonly byte[] Turned = [.. Enumerable.Range(0, Period * Period).Select(at => TurnedBy(at / Period, at % Period))];

    private readonly QrSize _size;
    private readonly int _side;
    private readonly byte[] _fields;

    /// <summary>1 for a field that holds words, and is turned by masks; 0 for one of a fixed pattern.</summary>
    private readonly byte[] _free;

    /// <summary>A symbol with its fixed patterns.</summary>
    public QrSymbol(QrSize size)
    {
        (_size, _side) = (size, size.Side);
        _fields = new byte[_side * _side];
        _free = new byte[_side * _side];
        Array.Fill(_free, (byte)1);
        for (var at = 0; at < _side; at++)
        {
            Fix(6, at, at % 2 == 0);
            Fix(at, 6, at % 2 == 0);
        }
        Finder(3, 3);
        Finder(3, _side - 4);
        Finder(_side - 4, 3);
        Align(size.Alignments);
        if (size.Version >= 7)
            SayVersion();
        Say(0, Fix);
    }

    /// <summary>Puts the words in, in columns of two fields, upwards and downwards in turns from the right.</summary>
    public void Fill(ReadOnlySpan<byte> words)
    {
        var bit = 0;
        for (var right = _side - 1; right > 0; right -= 2)
        {
            // The column of the timing pattern is left out.
            if (right == 6)
                right = 5;
            for (var step = 0; step < 2 * _side; step++)
            {
                var row = (right + 1 & 2) == 0 ? _side - 1 - step / 2 : step / 2;
                var at = row * _side + right - step % 2;
                if (_free[at] == 0 || bit == 8 * words.Length)
                    continue;
                _fields[at] = (byte)(words[bit / 8] >> 7 - bit % 8 & 1);
                bit++;
            }
        }
    }

    /// <summary>The fields, 1 for a dark one, with the mask that has the least against it.</summary>
    public byte[] Masked()
    {
        var (best, least) = (_fields, int.MaxValue);
        for (var mask = 0; mask < Masks; mask++)
        {
            var fields = With(mask);
            if (QrPenalty.Of(fields, _side) is var penalty && penalty < least)
                (best, least) = (fields, penalty);
        }
        return best;
    }

    private byte[] With(int mask)
    {
        var fields = new byte[_fields.Length];
        for (var (row, at) = (0, 0); row < _side; row++)
        {
            var turned = Turned.AsSpan(row % Period * Period, Period);
            for (var (column, phase) = (0, 0); column < _side; column++, at++)
            {
                fields[at] = (byte)(_fields[at] ^ turned[phase] >> mask & _free[at]);
                phase = phase + 1 < Period ? phase + 1 : 0;
            }
        }
        Say(mask, (row, column, dark) => fields[row * _side + column] = dark ? (byte)1 : (byte)0);
        return fields;
    }

    private void Fix(int row, int column, bool dark)
    {
        _fields[row * _side + column] = dark ? (byte)1 : (byte)0;
        _free[row * _side + column] = 0;
    }

    private void Finder(int row, int column)
    {
        for (var down = -4; down <= 4; down++)
        {
            for (var across = -4; across <= 4; across++)
            {
                var ring = Math.Max(Math.Abs(down), Math.Abs(across));
                if (row + down >= 0 && row + down < _side && column + across >= 0 && column + across < _side)
                    Fix(row + down, column + across, ring is not (2 or 4));
            }
        }
    }

    private void Align(int[] middles)
    {
        foreach (var row in middles)
        {
            foreach (var column in middles)
            {
                // Three of the corners have finders.
                if ((row, column) == (6, 6) || (row, column) == (6, middles[^1]) || (row, column) == (middles[^1], 6))
                    continue;
                for (var down = -2; down <= 2; down++)
                {
                    for (var across = -2; across <= 2; across++)
                        Fix(row + down, column + across, Math.Max(Math.Abs(down), Math.Abs(across)) != 1);
                }
            }
        }
    }

    private void SayVersion()
    {
        var bits = Checked(_size.Version, 12, 0x1F25);
        for (var bit = 0; bit < 18; bit++)
        {
            var (far, near, dark) = (_side - 11 + bit % 3, bit / 3, (bits >> bit & 1) != 0);
            Fix(far, near, dark);
            Fix(near, far, dark);
        }
    }

    /// <summary>Says twice which mask and which error correction it has; that of M is 00.</summary>
    private void Say(int mask, Action<int, int, bool> put)
    {
        var bits = Checked(mask, 10, 0x537) ^ 0x5412;
        for (var bit = 0; bit < 15; bit++)
        {
            var dark = (bits >> bit & 1) != 0;
            put(bit < 6 ? bit : bit < 8 ? bit + 1 : 8, bit < 8 ? 8 : bit == 8 ? 7 : 14 - bit, dark);
            put(bit < 8 ? 8 : _side - 15 + bit, bit < 8 ? _side - 1 - bit : 8, dark);
        }
        put(_side - 8, 8, true);
    }

    /// <summary>A number and behind it its check bits, as BCH has them.</summary>
    private static int Checked(int number, int bits, int generator)
    {
        var rest = number;
        for (var at = 0; at < bits; at++)
            rest = rest << 1 ^ (rest >> bits - 1) * generator;
        return number << bits | rest;
    }

    private static byte TurnedBy(int row, int column)
    {
        bool[] turned =
        [
            (row + column) % 2 == 0,
            row % 2 == 0,
            column % 3 == 0,
            (row + column) % 3 == 0,
            (row / 2 + column / 3) % 2 == 0,
            row * column % 2 + row * column % 3 == 0,
            (row * column % 2 + row * column % 3) % 2 == 0,
            ((row + column) % 2 + row * column % 3) % 2 == 0,
        ];
        return (byte)turned.Index().Sum(t => t.Item ? 1 << t.Index : 0);
    }
}
