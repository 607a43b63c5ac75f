using System.Globalization;
using System.Text;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>The first line of a journal: which house file it belongs to and where it goes on from.</summary>
/// <param name="Form">1 for a journal that grew with each line, 2 for one whose room is taken beforehand.</param>
/// <param name="Id">Its name, which the house file knows.</param>
/// <param name="House">The house's name; empty in the first form, which does not say it.</param>
/// <param name="Start">How many entries the house file had when the journal was begun.</param>
/// <param name="After">The seal of the last of these.</param>
internal sealed record JournalHead(int Form, string Id, string House, long Start, string After);

/// <summary>What a journal holds.</summary>
/// <param name="Head">Its first line; null when that can't be read.</param>
/// <param name="Entries">Sound entries, in order, up to the first break.</param>
/// <param name="Unread">Bytes after the last sound entry that are no end mark: a save that never ended.</param>
/// <param name="Fault">What is wrong beyond a save that never ended; null when nothing is.</param>
/// <param name="InDoubt">How many more lines can be told to have been there; 0 when none.</param>
/// <param name="Ended">Whether its end mark stands, so that what is unread lies behind it.</param>
internal sealed record JournalContents(JournalHead? Head, IReadOnlyList<Entry> Entries, int Unread, string? Fault, int InDoubt = 0, bool Ended = false)
{
    /// <summary>The number of the last sound entry.</summary>
    public long Last => Entries.Count > 0 ? Entries[^1].Number : Head?.Start ?? 0;
}

/// <summary>The text of a journal: a head, one line per entry, an end mark that the next entry overwrites, and room of zeros for more.</summary>
/// <remarks>
/// A line is <c>id number after seal json</c>, with the journal's id in each, because after a power cut the end of a file may
/// hold what an older journal had left on the disk. The room is written and flushed before a line goes into it, so that a save that was
/// torn can leave only whole sectors of its line and whole sectors of what was there before: <see cref="JournalTail"/> tells it from damage.
/// </remarks>
internal static class Journal
{
    /// <summary>The room that is taken at a time, in bytes.</summary>
    public const int Room = 16 * 1024;

    /// <summary>What stands after the last line.</summary>
    public static ReadOnlySpan<byte> EndMark => "end\n"u8;

    /// <summary>The first word of every journal.</summary>
    public const string Kind = "trimout-journal";
    private const int LongestHead = 1024;

    /// <summary>A journal without entries, with room for some.</summary>
    public static byte[] Begin(JournalHead head)
    {
        var text = Encoding.UTF8.GetBytes(HeadLine(head.Id, head.House, head.Start, head.After));
        var bytes = new byte[Room];
        text.CopyTo(bytes, 0);
        EndMark.CopyTo(bytes.AsSpan(text.Length));
        return bytes;
    }

    /// <summary>Where the end mark of a journal without entries stands.</summary>
    public static long EndOf(JournalHead head) => Encoding.UTF8.GetByteCount(HeadLine(head.Id, head.House, head.Start, head.After));

    /// <summary>The bytes that are written over the end mark to add an entry.</summary>
    public static byte[] Line(string id, Entry entry) =>
        [.. Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{id} {entry.Number} {entry.After} {entry.Seal} {entry.Json}\n")), .. EndMark];

    /// <summary>How long a journal must be before something that ends at a place is written to it.</summary>
    public static long RoomFor(long end) => (end / Room + 1) * Room;

    /// <summary>Reads a journal.</summary>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="house">The house that it should be of.</param>
    /// <param name="seal">How entries are sealed.</param>
    public static JournalContents Read(byte[] bytes, string house, SealMaker seal) => Read(new BytesAsFile(bytes), house, seal);

    /// <summary>Reads a journal, with no more of it in memory than its sound entries and the longest line take.</summary>
    /// <param name="file">It, open.</param>
    /// <param name="house">The house that it should be of.</param>
    /// <param name="seal">How entries are sealed.</param>
    public static JournalContents Read(IReadFile file, string house, SealMaker seal)
    {
        var lines = new ByteLines(file);
        if (lines.Next() is not { } first || ReadHead(first) is not { } head)
            return new(null, [], (int)Math.Min(int.MaxValue, file.Length), "Its first line is no journal's.");
        var entries = new List<Entry>();
        var (number, after) = (head.Start, head.After);
        var soundTo = lines.At;
        while (lines.Next() is { } line)
        {
            if (ReadLine(line) is not ({ } entry, { } id) || id != head.Id || entry.Number != number + 1 || entry.After != after || !Seal.Fits(entry,
                house, seal))
                break;
            entries.Add(entry);
            (number, after, soundTo) = (entry.Number, entry.Seal, lines.At);
        }
        var tail = JournalTail.Judge(file, soundTo, head, number, after);
        return new(head, entries, tail.Unread, tail.Fault, tail.InDoubt, tail.Ended);
    }

    /// <summary>Every line that looks like an entry, wherever it stands, with the journal that it says it is of; nothing of it is held against its
    /// seal.</summary>
    public static List<(Entry Entry, string Journal)> Lines(IReadFile file)
    {
        var found = new List<(Entry, string)>();
        var lines = new ByteLines(file, overZeros: true);
        while (lines.Next() is { } line)
        {
            // What was cut off within a line leaves zeros between its beginning and the line that was written next.
            if (ReadLine(line[(line.LastIndexOf('\0') + 1)..]) is { } read)
                found.Add(read);
        }
        return found;
    }

    /// <summary>Every head of a journal, wherever it stands: of several, when journals were put one behind the other.</summary>
    public static List<JournalHead> Heads(IReadFile file)
    {
        var found = new List<JournalHead>();
        var lines = new ByteLines(file, overZeros: true);
        while (lines.Next() is { } line)
        {
            var from = line.IndexOf(Kind, StringComparison.Ordinal);
            if (from >= 0 && ReadHead(line[from..]) is { } head)
                found.Add(head);
        }
        return found;
    }

    private static JournalHead? ReadHead(string line) => line.Length > LongestHead ? null : line.Split(' ') switch
    {
        [Kind, "1", var id, var start, var after] when Number(start) is { } number => new(1, id, "", number, after),
        [Kind, "2", var id, var house, var start, var after, _] when Number(start) is { } number && line + "\n" == HeadLine(id, house, number, after) =>
            new(2, id, house, number, after),
        _ => null,
    };

    private static string HeadLine(string id, string house, long start, string after)
    {
        var text = string.Create(CultureInfo.InvariantCulture, $"{Kind} 2 {id} {house} {start} {after}");
        return $"{text} {Trailer.Hash(Encoding.UTF8.GetBytes(text))}\n";
    }

    private static (Entry Entry, string Journal)? ReadLine(string line) =>
        line.Split(' ', 5) is [var id, var number, var after, var own, var json] && Number(number) is { } n ? (new Entry(n, after, own, json), id) : null;

    private static long? Number(string text) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && Seal.CanBe(number) ? number : null;
}
