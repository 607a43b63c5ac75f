using System.Buffers;
using System.Collections.Immutable;

namespace TrimOut.Core.History;

/// <summary>The name of a change: which device made it, and its number there. Never given twice.</summary>
/// <param name="Device">The device's own name: letters, digits and hyphens.</param>
/// <param name="Sequence">From 1, without gaps, per device.</param>
public readonly record struct ChangeId(string Device, long Sequence)
{
    /// <summary>The largest number: 15 figures, which every reader of JSON keeps exactly (RFC 8259, section 6).</summary>
    public const long Last = 999_999_999_999_999;

    /// <summary>The written form, <c>device:sequence</c>.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Device}:{Sequence}");

    private static readonly SearchValues<char> DeviceSigns = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-");

    /// <summary>Reads the written form; null when it is none.</summary>
    public static ChangeId? Read(string text)
    {
        var colon = text.LastIndexOf(':');
        return colon > 0 && text[(colon + 1)..] is [>= '1' and <= '9', ..] written && written.Length <= 15
            && !text.AsSpan(0, colon).ContainsAnyExcept(DeviceSigns)
            && long.TryParse(written, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? new ChangeId(text[..colon], number)
            : null;
    }
}

/// <summary>One thing that a person did. Written once; never edited, never removed.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Stamp">One more than the largest stamp that the device had seen: orders the history, and is no clock.</param>
/// <param name="SaidAt">The wall clock as the device had it: shown, never sorted by.</param>
/// <param name="By">Who did it.</param>
/// <param name="What">What it was, in words for the history screen.</param>
/// <param name="Edits">What it changes, all or nothing.</param>
public sealed record Change(ChangeId Id, long Stamp, DateTimeOffset SaidAt, string By, string What, ImmutableArray<Edit> Edits)
{
    /// <summary>The largest stamp.</summary>
    public const long LastStamp = ChangeId.Last;

    /// <summary>The order in which changes are replayed, the same on every device.</summary>
    public static int Order(Change a, Change b) => Order(a.Stamp, a.Id, b.Stamp, b.Id);

    /// <summary>The same order, of the stamps and names of two changes.</summary>
    internal static int Order(long stampA, ChangeId a, long stampB, ChangeId b) =>
        stampA != stampB ? stampA.CompareTo(stampB)
        : string.CompareOrdinal(a.Device, b.Device) is not 0 and var byDevice ? byDevice
        : a.Sequence.CompareTo(b.Sequence);
}
