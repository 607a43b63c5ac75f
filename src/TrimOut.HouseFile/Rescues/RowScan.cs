using System.Buffers.Binary;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Finds what looks like a row of a house file in its bare bytes, without the database, which may go round in circles over damaged pages.</summary>
/// <remarks>Rows are looked for twice: wherever something looks like the beginning of one, and where pages say that they are.</remarks>
internal static class RowScan
{
    // The database itself takes no longer document.
    private const int LongestRow = 16 * 1024 * 1024;

    private static readonly byte[] RowStart = [0x02, .. "_id"u8, 0x00];

    /// <summary>What looks like a row, with the house that it says it is of; nothing of it is held against its seal.</summary>
    /// <param name="file">The bytes.</param>
    /// <param name="ends">Where house files end in it: the pages of each are counted from its own beginning.</param>
    public static IReadOnlyList<(Entry Entry, string House)> Read(byte[] file, IReadOnlyList<int> ends)
    {
        var found = new List<(Entry, string)>();
        var seen = new HashSet<(Entry, string)>();
        foreach (var document in Lying(file).Concat(Parts(file, ends).SelectMany(p => RowPages.Documents(p, sound: false))))
        {
            if (RowPages.ToRow(document.Span) is { } row && seen.Add(row))
                found.Add(row);
        }
        return found;
    }

    /// <summary>The house files that lie in a file, one behind the other, and what follows the last.</summary>
    private static IEnumerable<byte[]> Parts(byte[] file, IReadOnlyList<int> ends)
    {
        var from = 0;
        foreach (var end in ends.Where(e => e < file.Length))
        {
            yield return file[from..end];
            from = end;
        }
        yield return file[from..];
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
            if (length > RowStart.Length && length <= LongestRow && length <= file.Length - (at - 4))
                yield return file.AsMemory(at - 4, length);
        }
    }
}
