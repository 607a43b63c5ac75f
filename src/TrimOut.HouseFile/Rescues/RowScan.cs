using System.Buffers.Binary;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Finds the rows of a house file in its bare bytes, without the database, which may go round in circles over damaged pages.</summary>
/// <remarks>
/// Rows are looked for twice: wherever something looks like the beginning of one, and where pages say that they are.
/// Every row that is returned has a seal that fits its text.
/// </remarks>
internal static class RowScan
{
    private static readonly byte[] RowStart = [0x02, .. "_id"u8, 0x00];

    /// <summary>Sound rows, in the order of their numbers.</summary>
    public static IReadOnlyList<Entry> Read(byte[] file, SealMaker seal)
    {
        var found = new SortedDictionary<long, Entry>();
        foreach (var document in Lying(file).Concat(RowPages.Documents(file, sound: false)))
        {
            if (RowPages.ToEntry(document.Span) is { } entry && seal(entry.After, entry.Json) == entry.Seal)
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
}
