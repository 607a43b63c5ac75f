using System.Globalization;
using System.Text;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>What follows the last sound line of a journal.</summary>
/// <param name="Unread">The length of what a torn save left, in bytes; 0 when nothing.</param>
/// <param name="Fault">Why it is damage and no torn save; null when it is none.</param>
/// <param name="InDoubt">How many lines can be told to have been there, in a damaged tail.</param>
/// <param name="Ended">Whether it begins with the end mark.</param>
internal readonly record struct JournalTail(int Unread, string? Fault, int InDoubt, bool Ended = false)
{
    private const int Sector = 512;
    private const int Piece = 1 << 20;
    private const int LongestTorn = ByteLines.Longest + Journal.Room;

    /// <summary>
    /// Tells a save that was torn from damage. A torn save leaves part of one line: whole sectors of it, at least one of its sectors as
    /// it was before, and nothing else. Whatever else is there, or missing, no cut could have left.
    /// </summary>
    /// <param name="file">The journal.</param>
    /// <param name="soundTo">Where its last sound line ends.</param>
    /// <param name="head">Its head.</param>
    /// <param name="number">The number of the last sound entry.</param>
    /// <param name="after">Its seal.</param>
    public static JournalTail Judge(IReadFile file, long soundTo, JournalHead head, long number, string after)
    {
        var (marks, end) = Scan(file, soundTo, Encoding.UTF8.GetBytes(head.Id + " "));
        // More than a line, however long, is no torn save: what is said of that needs no more of it.
        var rest = new byte[Math.Min(Math.Max(end, Journal.EndMark.Length), LongestTorn + 1)];
        rest = rest[..file.Read(soundTo, rest)];
        var ended = rest.AsSpan().StartsWith(Journal.EndMark);
        if (marks > 0)
            return Damage(string.Create(CultureInfo.InvariantCulture, $"Entry {number + 1} is damaged, and others follow it."), marks + (ended ? 0 : 1), ended);
        if (end > LongestTorn)
            return Damage("What follows its last sound entry is no part of a save.", 1, ended);
        var next = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{head.Id} {number + 1} {after} "));
        if (ended)
        {
            var mark = soundTo + Journal.EndMark.Length;
            // Room that was being taken as the power went off is longer than what the mark stands in; a save that was taken back leaves none at all.
            return head.Form > 1 && file.Length > mark && file.Length < Journal.RoomFor(mark) ? Damage("It was cut short, behind its end mark.", 0, ended)
                : new JournalTail(end == Journal.EndMark.Length ? 0 : (int)end, null, 0, ended);
        }
        if (end == 0)
            return Damage(file.Length == soundTo ? "It was cut short: its end mark is missing."
                : "Where its end mark should be there is nothing but zeros.", 1, ended);
        if (head.Form == 1)
        {
            var begun = (int)Math.Min(next.Length, file.Length - soundTo);
            return rest.Length >= begun && rest.AsSpan(0, begun).SequenceEqual(next.AsSpan(0, begun))
                ? new JournalTail((int)Math.Min(int.MaxValue, file.Length - soundTo), null, 0)
                : Damage("What follows its last sound entry is no part of a save.", 1, ended);
        }
        if (file.Length % Journal.Room != 0)
            return Damage("It was cut short.", 1, ended);
        return WhatACutCannotLeave(rest.AsSpan(0, (int)end), soundTo, next) is { } fault ? Damage(fault, 1, ended) : new JournalTail((int)end, null, 0);
    }

    /// <summary>
    /// How often the beginning of a line of this journal stands behind the line that may have been torn, and where all that is no zero ends, counted
    /// from the last sound line.
    /// </summary>
    private static (int Marks, long End) Scan(IReadFile file, long soundTo, byte[] mark)
    {
        var (found, end) = (0, 0L);
        var piece = new byte[(int)Math.Clamp(file.Length - soundTo, mark.Length + 1, Piece)];
        // Each piece begins with what could be the beginning of a mark at the end of the one before.
        for (var from = soundTo; from < file.Length;)
        {
            var read = piece.AsSpan(0, file.Read(from, piece));
            if (read.LastIndexOfAnyExcept((byte)0) is >= 0 and var last)
                end = Math.Max(end, from - soundTo + last + 1);
            for (var at = from == soundTo ? 1 : 0; at < read.Length;)
            {
                var next = read[at..].IndexOf(mark);
                if (next < 0)
                    break;
                at += next + mark.Length;
                found += at < read.Length && char.IsAsciiDigit((char)read[at]) ? 1 : 0;
            }
            if (read.Length < piece.Length || from + read.Length == file.Length)
                break;
            from += read.Length - mark.Length;
        }
        return (found, end);
    }

    /// <param name="tail">What follows the last sound line, up to the last byte that is no zero.</param>
    /// <param name="begins">Where in the journal that begins.</param>
    /// <param name="next">What the next line begins with.</param>
    private static string? WhatACutCannotLeave(ReadOnlySpan<byte> tail, long begins, ReadOnlySpan<byte> next)
    {
        var offset = (int)(begins % Sector);
        var bytes = new byte[offset + tail.Length];
        tail.CopyTo(bytes.AsSpan(offset));
        return WhatACutCannotLeave(bytes, offset, bytes.Length, next);
    }

    private static string? WhatACutCannotLeave(ReadOnlySpan<byte> bytes, int from, int to, ReadOnlySpan<byte> next)
    {
        var before = new byte[to - from];
        Journal.EndMark[..Math.Min(before.Length, Journal.EndMark.Length)].CopyTo(before);
        var lost = false;
        for (var piece = from; piece < to;)
        {
            var pieceEnd = Math.Min((piece / Sector + 1) * Sector, to);
            var found = bytes[piece..pieceEnd];
            if (found.SequenceEqual(before.AsSpan(piece - from, found.Length)))
            {
                lost = true;
            }
            else
            {
                if (found.Contains((byte)0))
                    return "There is a hole of zeros within an entry.";
                var head = next[Math.Min(piece - from, next.Length)..Math.Min(pieceEnd - from, next.Length)];
                if (!found.StartsWith(head))
                    return "What follows its last sound entry is no part of a save.";
                // After a line's end comes the end mark, and nothing more.
                var lineEnd = found.IndexOf((byte)'\n');
                if (lineEnd >= 0 && !Journal.EndMark.StartsWith(bytes[(piece + lineEnd + 1)..to]))
                    return "More than one entry follows its last sound one.";
            }
            piece = pieceEnd;
        }
        if (to % Sector != 0 && !EndsAsTheMarkDoes(bytes[(to / Sector * Sector)..to]))
            return "An entry ends in the middle.";
        return !lost && (to % Sector != 0 || bytes[..to].EndsWith(Journal.EndMark)) ? "Its last entry is whole, and does not fit its seal." : null;
    }

    /// <summary>Whether the last sector ends with the end mark, or with what a sector's edge leaves of it.</summary>
    private static bool EndsAsTheMarkDoes(ReadOnlySpan<byte> sector) =>
        sector.Length >= Journal.EndMark.Length ? sector.EndsWith(Journal.EndMark) : Journal.EndMark.EndsWith(sector);

    private static JournalTail Damage(string fault, int inDoubt, bool ended) => new(0, fault, inDoubt, ended);
}
