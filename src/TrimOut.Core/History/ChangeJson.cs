using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>One change as one line of JSON, lossless both ways. The form is described in docs/house-file.md.</summary>
public static class ChangeJson
{
    /// <summary>The version of the form that this program writes; a higher one was written by a newer program.</summary>
    public const int Version = 1;

    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The line, without its line end.</summary>
    public static string Write(Change change)
    {
        var bytes = new ArrayBufferWriter<byte>(256);
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            json.WriteStartObject();
            json.WriteNumber("v", Version);
            json.WriteString("id", change.Id.ToString());
            json.WriteNumber("stamp", change.Stamp);
            json.WriteString("at", change.SaidAt.ToString("yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz", CultureInfo.InvariantCulture));
            json.WriteString("by", change.By);
            json.WriteString("what", change.What);
            json.WriteStartArray("edits");
            foreach (var edit in change.Edits)
                Write(json, edit);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    /// <summary>Reads a line.</summary>
    /// <returns>The change, or what is wrong with the line.</returns>
    public static Result<Change> Read(string line) => ChangeReader.Read(line);

    /// <summary>The version of the form that a line is in; 0 when it does not say.</summary>
    public static int VersionOf(string line)
    {
        const string start = "{\"v\":";
        var end = line.StartsWith(start, StringComparison.Ordinal) ? line.IndexOf(',', StringComparison.Ordinal) : -1;
        return end > 0 && int.TryParse(line.AsSpan(start.Length, end - start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var version)
            ? version
            : 0;
    }

    private static void Write(Utf8JsonWriter json, Edit edit)
    {
        switch (edit)
        {
            case Edit.Add add:
                json.WriteStartObject();
                json.WriteString("add", add.Item);
                json.WriteString("kind", KebabCase.Of(add.Kind));
                json.WriteString("under", add.Under);
                json.WriteEndObject();
                break;
            case Edit.Put put:
                json.WriteStartObject();
                json.WriteString("put", put.Item);
                json.WriteString("field", put.Field);
                if (put.Value is null)
                    json.WriteNull("value");
                else
                    json.WriteString("value", put.Value);
                if (!put.Over.IsEmpty)
                {
                    json.WriteStartArray("over");
                    foreach (var over in put.Over)
                        json.WriteStringValue(over.ToString());
                    json.WriteEndArray();
                }
                json.WriteEndObject();
                break;
            case Edit.Undo undo:
                json.WriteStartObject();
                json.WriteString("undo", undo.Of.ToString());
                json.WriteEndObject();
                break;
            case Edit.Unread unread:
                json.WriteRawValue(unread.Json);
                break;
            default:
                throw new InvalidOperationException($"No form for {edit.GetType().Name}.");
        }
    }
}
