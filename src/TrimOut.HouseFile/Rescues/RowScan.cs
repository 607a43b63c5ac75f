using System.Buffers.Binary;
using System.Text;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Finds the rows of a house file in its bare bytes, without the database, which may go round in circles over damaged pages.</summary>
/// <remarks>
/// A row is a BSON document (bsonspec.org). LiteDB 5 keeps it in blocks of 8 KiB pages; a long one is chained over several.
/// Every row that is returned has a seal that fits its text.
/// </remarks>
internal static class RowScan
{
    private const int PageSize = 8192;
    private const int BlockHead = 6;
    private const int DataPage = 4;
    private static readonly byte[] RowStart = [0x02, .. "_id"u8, 0x00];

    /// <summary>Sound rows, in the order of their numbers.</summary>
    public static IReadOnlyList<Entry> Read(byte[] file, SealMaker seal)
    {
        var found = new SortedDictionary<long, Entry>();
        foreach (var document in Lying(file).Concat(Chained(file)))
        {
            if (ToEntry(document.Span) is { } entry && seal(entry.After, entry.Json) == entry.Seal)
                found.TryAdd(entry.Number, entry);
        }
        return [.. found.Values];
    }

    /// <summary>Documents that lie in one piece, wherever they are.</summary>
    private static IEnumerable<ReadOnlyMemory<byte>> Lying(byte[] file)
    {
        for (var at = 4; ; at++)
        {
            var next = file.AsSpan(Math.Min(at, file.Length)).IndexOf(RowStart);
            if (next < 0)
                yield break;
            at += next;
            var length = BinaryPrimitives.ReadInt32LittleEndian(file.AsSpan(at - 4));
            if (length > RowStart.Length && length <= file.Length - (at - 4))
                yield return file.AsMemory(at - 4, length);
        }
    }

    /// <summary>Documents that are chained over several blocks.</summary>
    private static IEnumerable<ReadOnlyMemory<byte>> Chained(byte[] file)
    {
        for (var page = 0; page < file.Length / PageSize; page++)
        {
            if (file[page * PageSize + 4] != DataPage)
                continue;
            for (var slot = 0; slot < 256; slot++)
            {
                if (Block(file, (uint)page, slot) is not { } block || block.Span[0] != 0 || Next(block.Span) is null)
                    continue;
                var document = new MemoryStream();
                var seen = new HashSet<(uint, int)>();
                for (ReadOnlyMemory<byte>? part = block; part is { } bytes;)
                {
                    document.Write(bytes.Span[BlockHead..]);
                    part = Next(bytes.Span) is { } next && seen.Add(next) ? Block(file, next.Page, next.Slot) : (ReadOnlyMemory<byte>?)null;
                }
                yield return document.ToArray();
            }
        }
    }

    private static ReadOnlyMemory<byte>? Block(byte[] file, uint page, int slot)
    {
        if (page >= file.Length / PageSize)
            return null;
        var bytes = file.AsMemory((int)page * PageSize, PageSize);
        var at = PageSize - (slot + 1) * 4;
        if (at < 32)
            return null;
        var length = BinaryPrimitives.ReadUInt16LittleEndian(bytes.Span[at..]);
        var position = BinaryPrimitives.ReadUInt16LittleEndian(bytes.Span[(at + 2)..]);
        return position >= 32 && length > BlockHead && position + length <= PageSize ? bytes.Slice(position, length) : (ReadOnlyMemory<byte>?)null;
    }

    private static (uint Page, int Slot)? Next(ReadOnlySpan<byte> block)
    {
        var page = BinaryPrimitives.ReadUInt32LittleEndian(block[1..]);
        return page == uint.MaxValue ? null : (page, block[5]);
    }

    /// <summary>The entry of a document; null when it is no row of ours.</summary>
    private static Entry? ToEntry(ReadOnlySpan<byte> document)
    {
        long? number = null;
        string? after = null, seal = null, json = null;
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
                var text = Encoding.UTF8.GetString(document.Slice(at + 4, length - 1));
                if (name.SequenceEqual("after"u8))
                    after = text;
                else if (name.SequenceEqual("seal"u8))
                    seal = text;
                else if (name.SequenceEqual("json"u8))
                    json = text;
                at += length;
            }
            else if (kind == 0x12 && name.SequenceEqual("n"u8))
            {
                number = BinaryPrimitives.ReadInt64LittleEndian(document[at..]);
            }
            at += size;
        }
        return number is { } n && after is not null && seal is not null && json is not null ? new Entry(n, after, seal, json) : null;
    }
}
