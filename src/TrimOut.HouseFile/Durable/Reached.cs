using System.Globalization;
using System.Text;

namespace TrimOut.HouseFile.Durable;

/// <summary>
/// A note in the last page of a house file: how far its journal had got when a save was last called saved. A journal that ends before
/// that has lost something, however sound it looks.
/// </summary>
/// <remarks>
/// It stands in the file and not in the journal, so that an older or shorter journal can't bring its own. Two slots take turns, each
/// within one sector, so that a torn note leaves the one before. It is written after a save's flush and not flushed itself: a program
/// that was killed leaves it exact, a power cut may leave an earlier one, never a later one.
/// </remarks>
/// <param name="Journal">The journal that it is about.</param>
/// <param name="Number">The last entry that was called saved.</param>
internal sealed record Reached(string Journal, long Number)
{
    /// <summary>The length of a slot: one sector.</summary>
    public const int Size = 512;

    /// <summary>How many slots there are, at the end of the page.</summary>
    public const int Slots = 2;

    private const string Kind = "reached";

    /// <summary>The slot.</summary>
    public byte[] ToSlot()
    {
        var slot = new byte[Size];
        slot.AsSpan().Fill((byte)' ');
        Encoding.UTF8.GetBytes($"{Text}{Trailer.Hash(Encoding.UTF8.GetBytes(Text))}\n").CopyTo(slot, 0);
        return slot;
    }

    /// <summary>Where the note of this number stands in a file of a length.</summary>
    public long PlaceIn(long file) => file - Size * (1 + Number % Slots);

    /// <summary>Reads a slot; null when it is none or is damaged.</summary>
    public static Reached? Read(ReadOnlySpan<byte> slot)
    {
        if (Encoding.UTF8.GetString(slot).Split(' ', 4) is not [Kind, var journal, var number, _] || !long.TryParse(number, NumberStyles.None,
            CultureInfo.InvariantCulture, out var n) || !Seal.CanBe(n))
            return null;
        var read = new Reached(journal, n);
        return slot.SequenceEqual(read.ToSlot()) ? read : null;
    }

    private string Text => string.Create(CultureInfo.InvariantCulture, $"{Kind} {Journal} {Number} ");
}
