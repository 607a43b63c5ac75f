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
internal sealed record Trailer(int Form, string House, long Count, string Seal, string Sha256, string Device, string Machine, string? Born, string? Journal,
    string? Place = null)
{
    /// <summary>Its length: one page, so that the file keeps the shape that its database asks for.</summary>
    public const int Size = 8192;

    /// <summary>The form that this program writes. The second has notes of how far the journal got, and seals with house and number.</summary>
    public const int CurrentForm = 2;

    private const string Kind = "trimout-house";
    private const int NotesAt = Size - Reached.Size * Reached.Slots;

    /// <summary>How far the journal had certainly got; null where there is no journal, or one of the first form, which kept no note.</summary>
    [JsonIgnore]
    public Reached? Reached { get; private init; }

    /// <summary>Whether a note of how far the journal got is damaged.</summary>
    [JsonIgnore]
    public bool NotesDamaged { get; private init; }

    /// <summary>The page, with notes that the journal has got nowhere yet.</summary>
    public byte[] ToPage()
    {
        var json = JsonSerializer.Serialize(this, TrailerJson.Default.Trailer);
        var page = new byte[Size];
        page.AsSpan().Fill((byte)' ');
        Encoding.UTF8.GetBytes($"{Kind}\n{json}\n{Hash(Encoding.UTF8.GetBytes(json))}\n").CopyTo(page, 0);
        if (Journal is not null)
        {
            var note = new Reached(Journal, Count).ToSlot();
            for (var slot = 0; slot < Reached.Slots; slot++)
                note.CopyTo(page, NotesAt + slot * Reached.Size);
        }
        return page;
    }

    /// <summary>Reads the last page of a file; null when it is none or is damaged.</summary>
    public static Trailer? Read(ReadOnlySpan<byte> file)
    {
        if (file.Length < Size)
            return null;
        var page = file[^Size..];
        if (Encoding.UTF8.GetString(page[..NotesAt]).Split('\n') is not [Kind, var json, var hash, var rest] || !string.IsNullOrWhiteSpace(rest))
            return null;
        if (Hash(Encoding.UTF8.GetBytes(json)) != hash)
            return null;
        try
        {
            return JsonSerializer.Deserialize(json, TrailerJson.Default.Trailer) is { } trailer && Durable.Seal.CanBe(trailer.Count)
                ? WithNotes(trailer, page[NotesAt..]) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>SHA-256, as hexadecimal letters.</summary>
    public static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static Trailer? WithNotes(Trailer trailer, ReadOnlySpan<byte> notes)
    {
        if (trailer.Journal is null || trailer.Form < 2)
            return notes.ContainsAnyExcept((byte)' ') ? null : trailer;
        var read = new[] { Reached.Read(notes[..Reached.Size]), Reached.Read(notes[Reached.Size..]) };
        return trailer with
        {
            Reached = read.OfType<Reached>().Where(r => r.Journal == trailer.Journal).MaxBy(r => r.Number),
            NotesDamaged = read.Any(r => r is null || r.Journal != trailer.Journal),
        };
    }
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(Trailer))]
internal sealed partial class TrailerJson : JsonSerializerContext;
