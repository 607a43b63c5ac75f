using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace TrimOut.HouseFile.Durable;

/// <summary>Makes the seal of an entry out of its house, its number, the seal before it and its text.</summary>
internal delegate string SealMaker(string house, long number, string after, string json);

/// <summary>The chain that ties the entries of a house together: a flipped bit, a lost entry or one of another house breaks it.</summary>
internal static class Seal
{
    // Seals of the first form are shorter, and hold neither house nor number.
    private const int FirstFormLength = 22;
    private const char SecondForm = '2';
    private const long MostEntries = 1_000_000_000_000;

    /// <summary>The seal that the first entry of a house comes after.</summary>
    public static string First(string house) => Letters("\n" + house);

    /// <summary>A 2, and the first 16 bytes of the SHA-256 of house, number, the seal before and the text, as 22 letters.</summary>
    public static string Of(string house, long number, string after, string json) =>
        SecondForm + Letters(string.Create(CultureInfo.InvariantCulture, $"{house}\n{number}\n{after}\n{json}"));

    /// <summary>Whether the entry's seal says which house it is of and which number it has there; those of the first form say neither.</summary>
    public static bool SaysWhere(Entry entry) => entry.Seal.Length != FirstFormLength;

    /// <summary>Whether a number is one that an entry can have; a larger one comes from a damaged file, and nothing is ever counted up to it.</summary>
    public static bool CanBe(long number) => number is >= 0 and <= MostEntries;

    /// <summary>Whether an entry is what was sealed: in this house and under this number, where its seal says that.</summary>
    public static bool Fits(Entry entry, string house, SealMaker seal) =>
        (SaysWhere(entry) ? CanBe(entry.Number) ? seal(house, entry.Number, entry.After, entry.Json) : null
            : Letters(entry.After + "\n" + entry.Json)) == entry.Seal;

    private static string Letters(string text) => Base64Url.EncodeToString(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 16));
}

/// <summary>One change as it is kept: its text, its place in this file, and the seals that tie it to the entry before.</summary>
/// <param name="Number">From 1, in the order in which this file got them.</param>
/// <param name="After">The seal of the entry before.</param>
/// <param name="Seal">Its own seal.</param>
/// <param name="Json">The change, by <see cref="Core.History.ChangeJson"/>.</param>
internal sealed record Entry(long Number, string After, string Seal, string Json)
{
    /// <summary>The most bytes of a change's text: the database takes no row of more than 16 MiB.</summary>
    public const int LongestJson = 16_000_000;
}
