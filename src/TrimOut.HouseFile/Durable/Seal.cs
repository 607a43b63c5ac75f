using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace TrimOut.HouseFile.Durable;

/// <summary>Makes the seal of an entry out of the seal before it and the entry's text.</summary>
internal delegate string SealMaker(string after, string json);

/// <summary>The chain that ties the entries of a house together: a flipped bit, a lost entry or one of another house breaks it.</summary>
internal static class Seal
{
    /// <summary>The seal that the first entry of a house comes after.</summary>
    public static string First(string house) => Of("", house);

    /// <summary>The first 16 bytes of the SHA-256 of the seal before and the text, as 22 letters.</summary>
    public static string Of(string after, string json)
    {
        var bytes = Encoding.UTF8.GetBytes(after + "\n" + json);
        return Base64Url.EncodeToString(SHA256.HashData(bytes).AsSpan(0, 16));
    }
}

/// <summary>One change as it is kept: its text, its place in this file, and the seals that tie it to the entry before.</summary>
/// <param name="Number">From 1, in the order in which this file got them.</param>
/// <param name="After">The seal of the entry before.</param>
/// <param name="Seal">Its own seal.</param>
/// <param name="Json">The change, by <see cref="Core.History.ChangeJson"/>.</param>
internal sealed record Entry(long Number, string After, string Seal, string Json);
