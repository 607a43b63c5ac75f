using System.Buffers.Binary;
using System.Text;

namespace TrimOut.HouseFile.Durable;

/// <summary>The rows of a database in its bare bytes, where its pages say that they are.</summary>
/// <remarks>A row is a BSON document (bsonspec.org). LiteDB 5 keeps it in blocks of 8 KiB pages; a long one is chained over several.</remarks>
internal static class RowPages
{
    /// <summary>The length of a page in bytes.</summary>
    public const int PageSize = 8192;

    /// <summary>The most bytes of a document: the database itself takes no longer one.</summary>
    public const int LongestDocument = 16 * 1024 * 1024;

    private const int PageHead = 32;
    private const int BlockHead = 6;
    private const int DataPage = 4;
    private const int PageKindAt = 4;
    private const int HighestSlotAt = 30;
    private const byte NoSlot = 255;

    /// <summary>Every document of a file whose pages are what was written, as its bytes.</summary>
    public static IEnumerable<ReadOnlyMemory<byte>> Documents(byte[] file) => Documents(new BytePages(file), sound: true);

    /// <summary>
    /// The same of a damaged file: what its pages say of themselves is believed as little as possible, and what comes may be no document.
    /// </summary>
    public static IEnumerable<ReadOnlyMemory<byte>> Documents(IPages pages) => Documents(pages, sound: false);

    private static IEnumerable<ReadOnlyMemory<byte>> Documents(IPages pages, bool sound)
    {
        for (uint at = 0; at < pages.Count; at++)
        {
            var page = pages[at];
            if (page.Span[PageKindAt] != DataPage || (sound && page.Span[HighestSlotAt] == NoSlot))
                continue;
            var highest = sound ? page.Span[HighestSlotAt] : NoSlot;
            for (var slot = 0; slot <= highest; slot++)
            {
                if (Block(page, slot) is { } block && block.Span[0] == 0)
                    yield return Next(block.Span) is null ? block[BlockHead..] : Chained(pages, block);
            }
        }
    }

    /// <summary>The entry of a document, and the house that it says it is of (empty in the first form); null when it is no row of ours.</summary>
    public static (Entry Entry, string House)? ToRow(ReadOnlySpan<byte> document)
    {
        long? number = null;
        string? after = null, seal = null, json = null, house = null;
        var at = 4;
        while (at < document.Length && document[at] != 0)
        {
            var kind = document[at++];
            var nameEnd = document[at..].IndexOf((byte)0);
            if (nameEnd < 0)
                return null;
            var name = document.Slice(at, nameEnd);
            at += nameEnd + 1;
            var size = kind switch { 0x02 => 4, 0x10 => 4, 0x12 => 8, _ => -1 };
            if (size < 0 || at + size > document.Length)
                return null;
            if (kind == 0x02)
            {
                var length = BinaryPrimitives.ReadInt32LittleEndian(document[at..]);
                if (length < 1 || length > document.Length - at - 4)
                    return null;
                var text = document.Slice(at + 4, length - 1);
                if (name.SequenceEqual("after"u8))
                    after = Encoding.UTF8.GetString(text);
                else if (name.SequenceEqual("seal"u8))
                    seal = Encoding.UTF8.GetString(text);
                else if (name.SequenceEqual("json"u8))
                    json = Encoding.UTF8.GetString(text);
                else if (name.SequenceEqual("house"u8))
                    house = Encoding.UTF8.GetString(text);
                at += length;
            }
            else if (kind == 0x12 && name.SequenceEqual("n"u8))
            {
                number = BinaryPrimitives.ReadInt64LittleEndian(document[at..]);
            }
            at += size;
        }
        return number is { } n && after is not null && seal is not null && json is not null ? (new Entry(n, after, seal, json), house ?? "") : null;
    }

    private static byte[] Chained(IPages pages, ReadOnlyMemory<byte> first)
    {
        using var document = new MemoryStream();
        var seen = new HashSet<(uint, int)>();
        for (ReadOnlyMemory<byte>? part = first; part is { } bytes;)
        {
            document.Write(bytes.Span[BlockHead..]);
            part = document.Length <= LongestDocument && Next(bytes.Span) is { } next && seen.Add(next) && next.Page < pages.Count
                ? Block(pages[next.Page], next.Slot) : (ReadOnlyMemory<byte>?)null;
        }
        return document.ToArray();
    }

    private static ReadOnlyMemory<byte>? Block(ReadOnlyMemory<byte> bytes, int slot)
    {
        var at = PageSize - (slot + 1) * 4;
        if (at < PageHead)
            return null;
        var length = BinaryPrimitives.ReadUInt16LittleEndian(bytes.Span[at..]);
        var position = BinaryPrimitives.ReadUInt16LittleEndian(bytes.Span[(at + 2)..]);
        return position >= PageHead && length > BlockHead && position + length <= PageSize ? bytes.Slice(position, length) : (ReadOnlyMemory<byte>?)null;
    }

    private static (uint Page, int Slot)? Next(ReadOnlySpan<byte> block)
    {
        var page = BinaryPrimitives.ReadUInt32LittleEndian(block[1..]);
        return page == uint.MaxValue ? null : (page, block[5]);
    }

    private sealed class BytePages(byte[] file) : IPages
    {
        public uint Count { get; } = (uint)(file.Length / PageSize);

        public ReadOnlyMemory<byte> this[uint page] => file.AsMemory((int)page * PageSize, PageSize);
    }
}

/// <summary>The pages of a database.</summary>
internal interface IPages
{
    /// <summary>How many there are.</summary>
    uint Count { get; }

    /// <summary>The bytes of one.</summary>
    ReadOnlyMemory<byte> this[uint page] { get; }
}
