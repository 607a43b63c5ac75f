using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace TrimOut.HouseFile.Durable;

/// <summary>The last page of a house file: what the file must hold, and whose it is.</summary>
/// <param name="Form">The form of the file; a higher one was written by a newer program.</param>
/// <param name="House">The name that all copies of one house share.</param>
/// <param name="Count">How many entries it holds.</param>
/// <param name="Seal">The seal of the last.</param>
/// <param name="Sha256">Of everything before this page.</param>
/// <param name="Device">The name that changes made in this copy carry.</param>
/// <param name="Machine">The machine that the copy is on.</param>
/// <param name="Born">When the disk made the file: a copy was born at another time, and gets a device of its own. Null where the disk does not tell.</param>
/// <param name="Journal">The journal that goes on from here; null when the file is complete by itself.</param>
/// <param name="Place">The name that it was written under: another name of the same file gets a device of its own. Null in files of before.</param>
internal sealed record Trailer(int Form, string House, long Count, string Seal, string Sha256, string Device, string Machine, string? Born, string? Journal, string? Place = null)
{
    /// <summary>Its length: one page, so that the file keeps the shape that its database asks for.</summary>
    public const int Size = 8192;

    /// <summary>The form that this program writes.</summary>
    public const int CurrentForm = 1;

    private const string Kind = "trimout-house";

    /// <summary>The page.</summary>
    public byte[] ToPage()
    {
        var json = JsonSerializer.Serialize(this, TrailerJson.Default.Trailer);
        var page = new byte[Size];
        page.AsSpan().Fill((byte)' ');
        Encoding.UTF8.GetBytes($"{Kind}\n{json}\n{Hash(Encoding.UTF8.GetBytes(json))}\n").CopyTo(page, 0);
        return page;
    }

    /// <summary>Reads the last page of a file; null when it is none or is damaged.</summary>
    public static Trailer? Read(ReadOnlySpan<byte> file)
    {
        if (file.Length < Size || Encoding.UTF8.GetString(file[^Size..]).Split('\n') is not [Kind, var json, var hash, var rest] || !string.IsNullOrWhiteSpace(rest))
            return null;
        if (Hash(Encoding.UTF8.GetBytes(json)) != hash)
            return null;
        try
        {
            return JsonSerializer.Deserialize(json, TrailerJson.Default.Trailer);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>SHA-256, as hexadecimal letters.</summary>
    public static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(Trailer))]
internal sealed partial class TrailerJson : JsonSerializerContext;
