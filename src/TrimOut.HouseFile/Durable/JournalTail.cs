using System.Globalization;
using System.Text;

namespace TrimOut.HouseFile.Durable;

/// <summary>What follows the last sound line of a journal.</summary>
/// <param name="Unread">The length of what a torn save left, in bytes; 0 when nothing.</param>
/// <param name="Fault">Why it is damage and no torn save; null when it is none.</param>
/// <param name="InDoubt">How many lines can be told to have been there, in a damaged tail.</param>
internal readonly record struct JournalTail(int Unread, string? Fault, int InDoubt)
{
    private const int Sector = 512;

    /// <summary>
    /// Tells a save that was torn from damage. A torn save leaves part of one line: whole sectors of it, at least one of its sectors as
    /// it was before, and nothing else. Whatever else is there, or missing, no cut could have left.
    /// </summary>
    /// <param name="bytes">The journal.</param>
    /// <param name="soundTo">Where its last sound line ends.</param>
    /// <param name="head">Its head.</param>
    /// <param name="number">The number of the last sound entry.</param>
    /// <param name="after">Its seal.</param>
    public static JournalTail Judge(ReadOnlySpan<byte> bytes, int soundTo, JournalHead head, long number, string after)
    {
        var rest = bytes[soundTo..];
        var marks = MarksAfterTheFirst(rest, head.Id);
        if (marks > 0)
            return Damage(string.Create(CultureInfo.InvariantCulture, $"Entry {number + 1} is damaged, and others follow it."),
                marks + (rest.StartsWith(Journal.EndMark) ? 0 : 1));
        var next = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{head.Id} {number + 1} {after} "));
        var end = rest.LastIndexOfAnyExcept((byte)0) + 1;
        if (rest.StartsWith(Journal.EndMark))
        {
            var ended = soundTo + Journal.EndMark.Length;
            // Room that was being taken as the power went off is longer than what the mark stands in; a save that was taken back leaves none at all.
            return head.Form > 1 && bytes.Length > ended && bytes.Length < Journal.RoomFor(ended) ? Damage("It was cut short, behind its end mark.", 0)
                : new JournalTail(end == Journal.EndMark.Length ? 0 : end, null, 0);
        }
        if (end == 0)
            return Damage(rest.IsEmpty ? "It was cut short: its end mark is missing." : "Where its end mark should be there is nothing but zeros.", 1);
        if (head.Form == 1)
        {
            var begun = Math.Min(next.Length, rest.Length);
            return rest[..begun].SequenceEqual(next.AsSpan(0, begun)) ? new JournalTail(rest.Length, null, 0)
                : Damage("What follows its last sound entry is no part of a save.", 1);
        }
        if (bytes.Length % Journal.Room != 0)
            return Damage("It was cut short.", 1);
        return WhatACutCannotLeave(bytes, soundTo, soundTo + end, next) is { } fault ? Damage(fault, 1) : new JournalTail(end, null, 0);
    }

    /// <summary>How often the beginning of a line of this journal stands behind the line that may have been torn.</summary>
    private static int MarksAfterTheFirst(ReadOnlySpan<byte> rest, string id)
    {
        var mark = Encoding.UTF8.GetBytes(id + " ");
        var found = 0;
        for (var at = 1; at < rest.Length;)
        {
            var next = rest[at..].IndexOf(mark);
            if (next < 0)
                break;
            at += next + mark.Length;
            found += at < rest.Length && char.IsAsciiDigit((char)rest[at]) ? 1 : 0;
        }
        return found;
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

    private static JournalTail Damage(string fault, int inDoubt) => new(0, fault, inDoubt);
}
