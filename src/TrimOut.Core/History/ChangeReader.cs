using System.Buffers;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>Reads one line of JSON into a change, token by token: a house of many years has a hundred thousand of them.</summary>
internal static class ChangeReader
{
    /// <summary>Reads a line.</summary>
    /// <returns>The change, or what is wrong with the line.</returns>
    public static Result<Change> Read(string line)
    {
        var bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(line.Length));
        try
        {
            return Read(bytes.AsSpan(0, Encoding.UTF8.GetBytes(line, bytes)));
        }
        catch (Exception failed) when (failed is JsonException or InvalidOperationException or FormatException or OverflowException)
        {
            return new Refusal($"The line is no change: {failed.Message}");
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }

    private static Result<Change> Read(ReadOnlySpan<byte> line)
    {
        var json = new Utf8JsonReader(line);
        json.Read();
        if (json.TokenType != JsonTokenType.StartObject)
            return new Refusal("The line is no change: it does not hold an object.");
        int? version = null;
        long? stamp = null;
        string? id = null, at = null, by = null, what = null;
        DateTimeOffset? time = null;
        ImmutableArray<Edit> edits = default;
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            if (Next(ref json, "v"u8))
                version = json.GetInt32();
            else if (version > ChangeJson.Version)
                break;
            else if (Next(ref json, "id"u8))
                id = Text(ref json, "id");
            else if (Next(ref json, "stamp"u8))
                stamp = json.GetInt64();
            else if (Next(ref json, "at"u8))
                (at, time) = Time(ref json);
            else if (Next(ref json, "by"u8))
                by = Text(ref json, "by");
            else if (Next(ref json, "what"u8))
                what = Text(ref json, "what");
            else if (Next(ref json, "edits"u8))
                edits = Edits(ref json, line);
            else
                Pass(ref json);
        }
        if ((version ?? throw Missing("v")) > ChangeJson.Version)
            return new Refusal($"The line was written by a newer TrimOut (form {version}; this one reads up to {ChangeJson.Version}).");
        if (json.Read())
            throw new JsonException("Something follows the end.");
        if (ChangeId.Read(id ?? throw Missing("id")) is not { } named)
            return new Refusal($"\"{id}\" names no change.");
        if (time is null)
            return new Refusal($"\"{at ?? throw Missing("at")}\" is no time.");
        return new Change(named, stamp ?? throw Missing("stamp"), time.Value, by ?? throw Missing("by"), what ?? throw Missing("what"),
            edits.IsDefault ? throw Missing("edits") : edits);
    }

    /// <summary>Goes on to the value of a property when it has that name.</summary>
    private static bool Next(ref Utf8JsonReader json, ReadOnlySpan<byte> name) => json.ValueTextEquals(name) && json.Read();

    private static void Pass(ref Utf8JsonReader json)
    {
        json.Read();
        json.Skip();
    }

    private static (string Text, DateTimeOffset? Time) Time(ref Utf8JsonReader json) =>
        json.TokenType == JsonTokenType.String && json.TryGetDateTimeOffset(out var exact) ? ("", exact)
        : Text(ref json, "at") is var text && DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.None, out var read) ? (text, read)
        : (text, null);

    private static ImmutableArray<Edit> Edits(ref Utf8JsonReader json, ReadOnlySpan<byte> line)
    {
        if (json.TokenType != JsonTokenType.StartArray)
            throw new FormatException("\"edits\" is no list.");
        var edits = ImmutableArray.CreateBuilder<Edit>();
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
            edits.Add(ReadEdit(ref json, line));
        return edits.DrainToImmutable();
    }

    private static Edit ReadEdit(ref Utf8JsonReader json, ReadOnlySpan<byte> line)
    {
        var from = (int)json.TokenStartIndex;
        if (json.TokenType != JsonTokenType.StartObject)
            throw new FormatException("An edit is no object.");
        string? add = null, kind = null, under = null, put = null, field = null, value = null, undo = null;
        var valued = false;
        ImmutableArray<ChangeId>? over = [];
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            if (Next(ref json, "put"u8))
                put = Any(ref json);
            else if (Next(ref json, "field"u8))
                field = Any(ref json);
            else if (Next(ref json, "value"u8))
                (value, valued) = (Any(ref json), true);
            else if (Next(ref json, "over"u8))
                over = Over(ref json);
            else if (Next(ref json, "add"u8))
                add = Any(ref json);
            else if (Next(ref json, "kind"u8))
                kind = Any(ref json);
            else if (Next(ref json, "under"u8))
                under = Any(ref json);
            else if (Next(ref json, "undo"u8))
                undo = Any(ref json);
            else
                Pass(ref json);
        }
        if (add is not null && KebabCase.Read<ItemKind>(kind ?? throw Missing("kind")) is { } known)
            return new Edit.Add(add, known, under ?? throw Missing("under"));
        if (put is not null)
            return new Edit.Put(put, field ?? throw Missing("field"), valued ? value : throw Missing("value"),
                over ?? throw new FormatException("\"over\" names no changes."));
        return undo is not null ? new Edit.Undo(ReadId(undo)) : new Edit.Unread(Encoding.UTF8.GetString(line[from..(int)json.BytesConsumed]));
    }

    /// <summary>A list of changes; null when it is something else.</summary>
    private static ImmutableArray<ChangeId>? Over(ref Utf8JsonReader json)
    {
        if (json.TokenType != JsonTokenType.StartArray)
        {
            json.Skip();
            return null;
        }
        var over = ImmutableArray.CreateBuilder<ChangeId>(1);
        var all = true;
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            if (Any(ref json) is { } text && ChangeId.Read(text) is { } id)
                over.Add(id);
            else
                all = false;
        }
        return all ? over.DrainToImmutable() : null;
    }

    private static ChangeId ReadId(string text) => ChangeId.Read(text) ?? throw new FormatException($"\"{text}\" names no change.");

    /// <summary>A text or nothing; of a kind of edit that this version does not know, anything.</summary>
    private static string? Any(ref Utf8JsonReader json)
    {
        if (json.TokenType is JsonTokenType.String or JsonTokenType.Null)
            return json.GetString();
        json.Skip();
        return null;
    }

    private static string Text(ref Utf8JsonReader json, string name) => json.GetString() ?? throw new FormatException($"\"{name}\" is empty.");

    private static FormatException Missing(string name) => new($"\"{name}\" is missing.");
}
