using System.Globalization;
using System.Text;

namespace TrimOut.HouseFile.Durable;

/// <summary>The first line of a journal: which house file it belongs to and where it goes on from.</summary>
/// <param name="Id">Its name, which the house file knows.</param>
/// <param name="Start">How many entries the house file had when the journal was begun.</param>
/// <param name="After">The seal of the last of these.</param>
internal sealed record JournalHead(string Id, long Start, string After);

/// <summary>What a journal holds.</summary>
/// <param name="Head">Its first line; null when that can't be read.</param>
/// <param name="Entries">Sound entries, in order, up to the first break.</param>
/// <param name="Unread">Bytes after the last sound entry that are no end mark: a save that never ended.</param>
/// <param name="Fault">What is wrong beyond a save that never ended; null when nothing is.</param>
internal sealed record JournalContents(JournalHead? Head, IReadOnlyList<Entry> Entries, int Unread, string? Fault);

/// <summary>The text of a journal: a head, one line per entry, and an end mark that the next entry overwrites.</summary>
/// <remarks>
/// A line is <c>id number after seal json</c>, with the journal's id in each, because after a power cut the end of a file may
/// hold what an older journal had left on the disk. The end mark tells a journal that was cut at a line's end from a whole
/// one; a save that was torn leaves bytes after the last sound line, and no sound line of this journal among them.
/// </remarks>
internal static class Journal
{
    private const string Kind = "trimout-journal";
    private static readonly byte[] EndMark = "end\n"u8.ToArray();

    /// <summary>A journal without entries.</summary>
    public static byte[] Begin(JournalHead head) =>
        [.. Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{Kind} 1 {head.Id} {head.Start} {head.After}\n")), .. EndMark];

    /// <summary>The bytes that are written over the end mark to add an entry.</summary>
    public static byte[] Line(string id, Entry entry) =>
        [.. Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{id} {entry.Number} {entry.After} {entry.Seal} {entry.Json}\n")), .. EndMark];

    /// <summary>Where the end mark of a whole journal stands.</summary>
    public static long EndOf(long length) => length - EndMark.Length;

    /// <summary>Reads a journal.</summary>
    public static JournalContents Read(ReadOnlySpan<byte> bytes, SealMaker seal)
    {
        var at = 0;
        if (NextLine(bytes, ref at) is not { } first || ReadHead(first) is not { } head)
            return new(null, [], bytes.Length, "Its first line is no journal's.");
        var entries = new List<Entry>();
        var (number, after) = (head.Start, head.After);
        var soundTo = at;
        while (NextLine(bytes, ref at) is { } line)
        {
            if (ReadEntry(line, seal) is not ({ } entry, { } id) || id != head.Id || entry.Number != number + 1 || entry.After != after)
                break;
            entries.Add(entry);
            (number, after, soundTo) = (entry.Number, entry.Seal, at);
        }
        var rest = bytes[soundTo..];
        if (rest.SequenceEqual(EndMark))
            return new(head, entries, 0, null);
        if (rest.IsEmpty)
            return new(head, entries, 0, "It was cut short: its end mark is missing.");
        return new(head, entries, rest.Length, SoundLines(rest, seal).Any(s => s.Journal == head.Id)
            ? string.Create(CultureInfo.InvariantCulture, $"Entry {number + 1} is damaged, and sound ones follow it.")
            : null);
    }

    /// <summary>Every line that is sound by itself, wherever it stands, with its journal's id.</summary>
    public static IEnumerable<(Entry Entry, string Journal)> SoundLines(ReadOnlySpan<byte> bytes, SealMaker seal)
    {
        var sound = new List<(Entry, string)>();
        var at = 0;
        while (NextLine(bytes, ref at) is { } line)
        {
            if (ReadEntry(line, seal) is { } entry)
                sound.Add(entry);
        }
        return sound;
    }

    private static string? NextLine(ReadOnlySpan<byte> bytes, ref int at)
    {
        var end = bytes[at..].IndexOf((byte)'\n');
        if (end < 0)
            return null;
        var line = Encoding.UTF8.GetString(bytes.Slice(at, end));
        at += end + 1;
        return line;
    }

    private static JournalHead? ReadHead(string line) =>
        line.Split(' ') is [Kind, "1", var id, var start, var after] && Number(start) is { } number ? new(id, number, after) : null;

    private static (Entry Entry, string Journal)? ReadEntry(string line, SealMaker seal) =>
        line.Split(' ', 5) is [var id, var number, var after, var own, var json] && Number(number) is { } n && seal(after, json) == own
            ? (new Entry(n, after, own, json), id)
            : null;

    private static long? Number(string text) =>
        long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
