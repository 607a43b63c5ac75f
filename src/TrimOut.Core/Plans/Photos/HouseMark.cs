using TrimOut.Core.History;

namespace TrimOut.Core.Plans.Photos;

/// <summary>What tells the labels of one house from those of another: few signs, so that the code on a label stays coarse.</summary>
/// <remarks>
/// Made of the change that began the house, which all its copies have: the hash FNV-1a of 32 bits, of which 20 are written. One of a million pairs of houses
/// has the same.
/// </remarks>
public static class HouseMark
{
    /// <summary>How many signs it has.</summary>
    public const int Signs = 4;

    private const string Alphabet = "0123456789abcdefghjkmnpqrstvwxyz";
    private const int BitsOfSign = 5;
    private const uint LastSign = (1u << BitsOfSign) - 1;

    /// <summary>The mark of a house; null for one that has no history yet.</summary>
    public static string? Of(HouseLog log)
    {
        if (log.Changes is not [var first, ..])
            return null;
        var hash = 2166136261u;
        foreach (var sign in $"{first.Id} {first.SaidAt.ToUnixTimeSeconds().ToString(System.Globalization.CultureInfo.InvariantCulture)}")
            hash = unchecked((hash ^ sign) * 16777619u);
        return string.Create(Signs, hash, (mark, bits) =>
        {
            for (var at = 0; at < mark.Length; at++)
                mark[at] = Alphabet[(int)((bits >> (BitsOfSign * at)) & LastSign)];
        });
    }
}
