using System.Buffers.Binary;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Rescues;

/// <summary>Finds what looks like a row of a house file in its bare bytes, without the database, which may go round in circles over damaged pages.</summary>
/// <remarks>Rows are looked for twice: wherever something looks like the beginning of one, and where pages say that they are.</remarks>
internal static class RowScan
{
    private const int LongestRow = RowPages.LongestDocument;
    private const int Step = 1 << 20;

    private static readonly byte[] RowStart = [0x02, .. "_id"u8, 0x00];

    /// <summary>What looks like a row, with the house that it says it is of; nothing of it is held against its seal.</summary>
    /// <param name="file">The file, of which no more than a few times the longest row is held at a time.</param>
    /// <param name="ends">Where house files end in it: the pages of each are counted from its own beginning.</param>
    public static IReadOnlyList<(Entry Entry, string House)> Read(IReadFile file, IReadOnlyList<long> ends)
    {
        var found = new List<(Entry, string)>();
        var seen = new HashSet<(Entry, string)>();
        foreach (var document in Lying(file).Concat(Parts(file.Length, ends).SelectMany(p => RowPages.Documents(new FilePages(file, p.From, p.To)))))
        {
            if (RowPages.ToRow(document.Span) is { } row && seen.Add(row))
                found.Add(row);
        }
        return found;
    }

    /// <summary>Where the house files lie that are in a file, one behind the other, and what follows the last.</summary>
    private static IEnumerable<(long From, long To)> Parts(long length, IReadOnlyList<long> ends)
    {
        var from = 0L;
        foreach (var end in ends.Where(e => e < length))
        {
            yield return (from, end);
            from = end;
        }
        yield return (from, length);
    }

    /// <summary>Documents that lie in one piece, wherever they are; each is to be read before the next is asked for.</summary>
    private static IEnumerable<ReadOnlyMemory<byte>> Lying(IReadFile file)
    {
        var window = new byte[(int)Math.Min(file.Length, LongestRow + Step)];
        var (from, held) = (0L, file.Read(0, window));
        for (var at = 4L; ; at++)
        {
            var next = at - from >= held ? -1 : window.AsSpan((int)(at - from), held - (int)(at - from)).IndexOf(RowStart);
            // What is held goes on from the length that stands before the mark, or from where one could begin.
            var wanted = next >= 0 ? at + next - 4 : Math.Max(at, from + held - RowStart.Length + 1) - 4;
            var length = next < 0 ? 0 : BinaryPrimitives.ReadInt32LittleEndian(window.AsSpan((int)(wanted - from)));
            if (next >= 0 && !(length > RowStart.Length && length <= LongestRow && length <= file.Length - wanted))
            {
                at += next;
                continue;
            }
            if (next >= 0 && wanted + length <= from + held)
            {
                at += next;
                yield return window.AsMemory((int)(wanted - from), length);
                continue;
            }
            if (from + held >= file.Length || held < window.Length)
                yield break;
            (from, held) = (wanted, file.Read(wanted, window));
            at = wanted + 4 - 1;
        }
    }

    /// <summary>The pages of a house file that lies within a file.</summary>
    private sealed class FilePages(IReadFile file, long from, long to) : IPages
    {
        public uint Count { get; } = (uint)((to - from) / RowPages.PageSize);

        public ReadOnlyMemory<byte> this[uint page]
        {
            get
            {
                var bytes = new byte[RowPages.PageSize];
                file.Read(from + page * (long)RowPages.PageSize, bytes);
                return bytes;
            }
        }
    }
}
