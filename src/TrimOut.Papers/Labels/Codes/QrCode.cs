using System.Text;

namespace TrimOut.Papers.Labels.Codes;

/// <summary>A QR code: ISO/IEC 18004, UTF-8, error correction M, of the smallest version that holds the text, under the mask that reads best.</summary>
/// <remarks>A house has hundreds of labels, and a sheet of them is written while somebody waits: fields are bits of a number, so that a mask is judged a row at a time.</remarks>
internal sealed class QrCode
{
    private const int ByteMode = 0b0100;
    private const int Utf8Mode = 0b0111_00011010;

    private readonly UInt128[] _rows;

    private QrCode(UInt128[] rows) => _rows = rows;

    /// <summary>Fields a side, without the quiet border of four that readers need.</summary>
    public int Side => _rows.Length;

    /// <summary>The fields of a row: bit 0 is the leftmost, 1 is dark.</summary>
    public UInt128 Row(int row) => _rows[row];

    /// <summary>The code of a text; null for one that is too long: 997 bytes fit.</summary>
    public static QrCode? Of(string text)
    {
        var plain = Ascii.IsValid(text);
        var count = Encoding.UTF8.GetByteCount(text);
        if (QrSize.For(count, plain ? 4 : 16) is not { } size)
            return null;
        Span<byte> data = stackalloc byte[size.DataBytes];
        Span<byte> bytes = stackalloc byte[size.Bytes];
        Encode(text, count, plain, size, data);
        Deal(size, data, bytes);
        var (rows, columns) = Fields(size, bytes);
        return new QrCode(size.Masks.MinBy(m => m.Penalty(rows, columns))!.Over(rows));
    }

    private static void Encode(string text, int count, bool plain, QrSize size, Span<byte> data)
    {
        data.Clear();
        var at = 0;
        if (!plain)
            Put(data, ref at, Utf8Mode, 12);
        Put(data, ref at, ByteMode, 4);
        Put(data, ref at, count, size.LengthBits);
        Span<byte> utf8 = stackalloc byte[count];
        Encoding.UTF8.GetBytes(text, utf8);
        foreach (var value in utf8)
            Put(data, ref at, value, 8);
        // Four zeros end the text where there is room, the rest of the byte is zeros too, and two bytes in turn fill what is left.
        var used = Math.Min(8 * data.Length, at + 4) + 7 >> 3;
        for (var fill = used; fill < data.Length; fill++)
            data[fill] = (fill - used) % 2 == 0 ? (byte)0xEC : (byte)0x11;
    }

    private static void Put(Span<byte> data, ref int at, int value, int bits)
    {
        for (var bit = bits - 1; bit >= 0; bit--, at++)
            data[at >> 3] |= (byte)((value >> bit & 1) << 7 - (at & 7));
    }

    /// <summary>Cuts the data into blocks, each with its check bytes, and deals all out byte by byte, so that one stain hits no block alone.</summary>
    private static void Deal(QrSize size, ReadOnlySpan<byte> data, Span<byte> bytes)
    {
        var blocks = size.Blocks;
        var (least, longer) = Math.DivRem(data.Length, blocks);
        Span<byte> check = stackalloc byte[size.Check];
        for (var (block, from) = (0, 0); block < blocks; block++)
        {
            var length = least + (block >= blocks - longer ? 1 : 0);
            var part = data.Slice(from, length);
            from += length;
            for (var at = 0; at < length; at++)
                bytes[at < least ? at * blocks + block : least * blocks + block - (blocks - longer)] = part[at];
            ReedSolomon.Check(part, check);
            for (var at = 0; at < check.Length; at++)
                bytes[data.Length + at * blocks + block] = check[at];
        }
    }

    private static (UInt128[] Rows, UInt128[] Columns) Fields(QrSize size, ReadOnlySpan<byte> bytes)
    {
        UInt128[] rows = [.. size.Rows], columns = [.. size.Columns];
        for (var at = 0; at < 8 * bytes.Length; at++)
        {
            if ((bytes[at >> 3] >> 7 - (at & 7) & 1) == 0)
                continue;
            var (row, column) = size.Way[at];
            rows[row] |= UInt128.One << column;
            columns[column] |= UInt128.One << row;
        }
        return (rows, columns);
    }
}
