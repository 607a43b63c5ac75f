using System.Buffers.Binary;
using System.Text;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>
/// A workbook of one sheet in the older format of spreadsheets, record by record: BIFF8 ([MS-XLS] 2.4) as the one stream of a compound file ([MS-CFB] 2.2 to
/// 2.6).
/// </summary>
internal static class OldBook
{
    private const int Sector = 512;

    /// <summary>The least that a stream is long which is kept in sectors of its own ([MS-CFB] 2.2).</summary>
    private const int LeastStream = 4096;

    private const uint EndOfChain = 0xFFFFFFFE;
    private const uint Free = 0xFFFFFFFF;

    /// <summary>Error codes of cells ([MS-XLS] 2.5.10): #REF!.</summary>
    private const byte Reference = 0x17;

    /// <summary>The file; a number is a cell with a number, null one with an error, all else one with text.</summary>
    public static byte[] Of(params object?[][] rows)
    {
        var globals = Record(0x0809, [.. U16(0x0600), .. U16(0x0005), .. new byte[12]]).Concat(Record(0x0042, U16(1200)))
            .Concat(Record(0x00E0, new byte[20])).ToArray();
        byte[] name = [6, 0, .. Encoding.ASCII.GetBytes("Sheet1")];
        var sheetAt = globals.Length + 4 + 6 + name.Length + 4;
        byte[] book =
        [
            .. globals, .. Record(0x0085, [.. U32((uint)sheetAt), 0, 0, .. name]), .. Record(0x000A, []),
            .. Record(0x0809, [.. U16(0x0600), .. U16(0x0010), .. new byte[12]]),
            .. Record(0x0200, [.. U32(0), .. U32((uint)rows.Length), .. U16(0), .. U16(rows.Max(r => r.Length)), .. U16(0)]),
            .. rows.Index().SelectMany(r => r.Item.Index().SelectMany(c => Cell(r.Index, c.Index, c.Item))), .. Record(0x000A, []),
        ];
        return Compound([.. book, .. new byte[Math.Max(0, LeastStream - book.Length)]]);
    }

    private static byte[] Cell(int row, int column, object? value)
    {
        byte[] at = [.. U16(row), .. U16(column), .. U16(0)];
        return value switch
        {
            null => Record(0x0205, [.. at, Reference, 1]),
            double number => Record(0x0203, [.. at, .. BitConverter.GetBytes(number)]),
            _ => Record(0x0204, [.. at, .. U16(value.ToString()!.Length), 1, .. Encoding.Unicode.GetBytes(value.ToString()!)]),
        };
    }

    private static byte[] Compound(byte[] stream)
    {
        var sectors = (stream.Length + Sector - 1) / Sector;
        byte[] header =
        [
            0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[16], .. U16(0x3E), .. U16(3), .. U16(0xFFFE), .. U16(9), .. U16(6), .. new byte[6],
            .. U32(0), .. U32(1), .. U32(1), .. U32(0), .. U32(LeastStream), .. U32(EndOfChain), .. U32(0), .. U32(EndOfChain), .. U32(0),
            .. U32(0), .. Enumerable.Repeat(U32(Free), 108).SelectMany(b => b),
        ];
        // The table of sectors itself, the folder, and the stream one after the other.
        var chains = new List<uint> { 0xFFFFFFFD, EndOfChain };
        chains.AddRange(Enumerable.Range(3, sectors - 1).Select(n => (uint)n).Append(EndOfChain));
        chains.AddRange(Enumerable.Repeat(Free, Sector / 4 - chains.Count));
        byte[] folder = [.. Entry("Root Entry", 5, child: 1, EndOfChain, 0), .. Entry("Workbook", 2, Free, 2, (uint)stream.Length), .. new byte[2 * 128]];
        return [.. header, .. chains.SelectMany(U32), .. folder, .. stream, .. new byte[sectors * Sector - stream.Length]];
    }

    private static byte[] Entry(string name, byte type, uint child, uint start, uint size)
    {
        var letters = new byte[64];
        Encoding.Unicode.GetBytes(name).CopyTo(letters, 0);
        return
        [
            .. letters, .. U16(2 * name.Length + 2), type, 1, .. U32(Free), .. U32(Free), .. U32(child), .. new byte[36], .. U32(start), .. U32(size),
            .. U32(0),
        ];
    }

    private static byte[] Record(int kind, byte[] data) => [.. U16(kind), .. U16(data.Length), .. data];

    private static byte[] U16(int number)
    {
        var bytes = new byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(bytes, (ushort)number);
        return bytes;
    }

    private static byte[] U32(uint number)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, number);
        return bytes;
    }
}
