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
        long? version = null, stamp = null;
        string? id = null, at = null, by = null, what = null;
        ImmutableArray<Edit> edits = default;
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            if (Next(ref json, "v"u8))
                version = Once(version, Whole(ref json, "v"), "v");
            else if (version > ChangeJson.Version)
                break;
            else if (Next(ref json, "id"u8))
                id = Once(id, Text(ref json, "id"), "id");
            else if (Next(ref json, "stamp"u8))
                stamp = Once(stamp, Whole(ref json, "stamp"), "stamp");
            else if (Next(ref json, "at"u8))
                at = Once(at, Text(ref json, "at"), "at");
            else if (Next(ref json, "by"u8))
                by = Once(by, Text(ref json, "by"), "by");
            else if (Next(ref json, "what"u8))
                what = Once(what, Text(ref json, "what"), "what");
            else if (Next(ref json, "edits"u8))
                edits = edits.IsDefault ? Edits(ref json, line) : throw Twice("edits");
            else
                throw new FormatException($"A change of form {ChangeJson.Version} has no \"{json.GetString()}\".");
        }
        if ((version ?? throw Missing("v")) > ChangeJson.Version)
            return new Refusal($"The line was written by a newer TrimOut (form {version}; this one reads up to {ChangeJson.Version}).");
        if (version < 1)
            return new Refusal($"There is no form {version}.");
        if (json.Read())
            throw new JsonException("Something follows the end.");
        if (ChangeId.Read(id ?? throw Missing("id")) is not { } named)
            return new Refusal($"\"{id}\" names no change: a device of letters, digits and hyphens, a colon, and a number from 1 to {ChangeId.Last}.");
        if ((stamp ?? throw Missing("stamp")) is < 1 or > Change.LastStamp)
            return new Refusal($"The stamp {stamp} is out of its range, 1 to {Change.LastStamp}.");
        if (Time(at ?? throw Missing("at")) is not { } time)
            return new Refusal($"\"{at}\" is no time.");
        return new Change(named, stamp.Value, time, by ?? throw Missing("by"), what ?? throw Missing("what"),
            edits.IsDefault ? throw Missing("edits") : edits);
    }

    /// <summary>A number without a fraction, however it is written.</summary>
    private static long Whole(ref Utf8JsonReader json, string name) => json.TokenType != JsonTokenType.Number
        ? throw new FormatException($"\"{name}\" is no number.")
        : json.TryGetInt64(out var whole) ? whole
        : json.TryGetDecimal(out var number) && number == decimal.Truncate(number) && number is > long.MinValue and < long.MaxValue ? (long)number
        : throw new FormatException($"\"{name}\" is no whole number in its range.");

    private static T Once<T>(T before, T now, string name) => before is null ? now : throw Twice(name);

    /// <summary>Goes on to the value of a property when it has that name.</summary>
    private static bool Next(ref Utf8JsonReader json, ReadOnlySpan<byte> name) => json.ValueTextEquals(name) && json.Read();

    private static bool Pass(ref Utf8JsonReader json) => json.Read() && json.TrySkip();

    /// <summary>A time of RFC 3339 in the form that the program writes; null when it is another or none.</summary>
    private static DateTimeOffset? Time(string text)
    {
        ReadOnlySpan<string> forms = ["yyyy-MM-dd'T'HH:mm:sszzz", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFFzzz"];
        // The parser takes more than the form allows: a shorter offset, a point without figures.
        var offset = text.EndsWith('Z') ? text.Length - 1 : text.Length - 6;
        if (offset < 19 || text[0] is not ('1' or '2') || text[offset - 1] == '.' || !char.IsAsciiDigit(text[offset - 1])
            || (!text.EndsWith('Z') && text[offset] is not ('+' or '-')))
            return null;
        var written = text.EndsWith('Z') ? text[..offset] + "+00:00" : text;
        return DateTimeOffset.TryParseExact(written, forms[offset == 19 ? 0 : 1], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time
            : null;
    }

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
        var (parts, newer) = (Part.None, false);
        string? add = null, kind = null, under = null, put = null, field = null, value = null, undo = null, wrong = null;
        ImmutableArray<ChangeId> over = [];
        while (json.Read() && json.TokenType == JsonTokenType.PropertyName)
        {
            var part = Part.None;
            if (Next(ref json, "put"u8))
                (part, put) = (Part.Put, Any(ref json));
            else if (Next(ref json, "field"u8))
                (part, field) = (Part.Field, Text(ref json, "field", ref wrong));
            else if (Next(ref json, "value"u8))
                (part, value) = (Part.Value, json.TokenType == JsonTokenType.Null ? null : Text(ref json, "value", ref wrong));
            else if (Next(ref json, "over"u8))
                (part, over) = (Part.Over, Over(ref json, ref wrong));
            else if (Next(ref json, "add"u8))
                (part, add) = (Part.Add, Any(ref json));
            else if (Next(ref json, "kind"u8))
                (part, kind) = (Part.Kind, Text(ref json, "kind", ref wrong));
            else if (Next(ref json, "under"u8))
                (part, under) = (Part.Under, Text(ref json, "under", ref wrong));
            else if (Next(ref json, "undo"u8))
                (part, undo) = (Part.Undo, Any(ref json));
            else
                (newer, _) = (true, Pass(ref json));
            newer |= part is Part.Put && put is null || part is Part.Add && add is null || part is Part.Undo && undo is null;
            if ((parts & part) != Part.None)
                throw Twice(part.ToString().ToLowerInvariant());
            parts |= part;
        }
        // What only a newer program knows is kept whole, as it came: half of an edit read is another edit.
        if (newer)
            return Unread(json, line, from);
        if (wrong is not null)
            throw new FormatException(wrong);
        return parts switch
        {
            Part.Add | Part.Kind | Part.Under => KebabCase.Read<ItemKind>(kind!) is { } known ? new Edit.Add(add!, known, under!) : Unread(json, line, from),
            Part.Put | Part.Field | Part.Value or (Part.Put | Part.Field | Part.Value | Part.Over) => new Edit.Put(put!, field!, value, over),
            Part.Undo => new Edit.Undo(ChangeId.Read(undo!) ?? throw new FormatException($"\"{undo}\" names no change.")),
            _ => throw new FormatException($"An edit adds (add, kind, under), puts (put, field, value) or undoes (undo); this one has " +
                $"{(parts == Part.None ? "nothing" : parts.ToString().ToLowerInvariant())}."),
        };
    }

    private static Edit.Unread Unread(in Utf8JsonReader json, ReadOnlySpan<byte> line, int from) =>
        new(Encoding.UTF8.GetString(line[from..(int)json.BytesConsumed]));

    /// <summary>A list of changes.</summary>
    private static ImmutableArray<ChangeId> Over(ref Utf8JsonReader json, ref string? wrong)
    {
        if (json.TokenType != JsonTokenType.StartArray)
        {
            json.Skip();
            wrong = "\"over\" is no list.";
            return [];
        }
        var over = ImmutableArray.CreateBuilder<ChangeId>(1);
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            if (Text(ref json, "over", ref wrong) is { } text && ChangeId.Read(text) is { } id)
                over.Add(id);
            else
                wrong ??= "\"over\" names no changes.";
        }
        return over.DrainToImmutable();
    }

    /// <summary>A text; what else stands there is passed over and said in <paramref name="wrong"/>: in an edit of a newer version it may be right.</summary>
    private static string? Text(ref Utf8JsonReader json, string name, ref string? wrong)
    {
        if (json.TokenType == JsonTokenType.String)
            return json.GetString();
        json.Skip();
        wrong = $"\"{name}\" is no text.";
        return null;
    }

    /// <summary>A text; null for anything else, which a newer version may know what to do with.</summary>
    private static string? Any(ref Utf8JsonReader json)
    {
        string? ignored = null;
        return Text(ref json, "", ref ignored);
    }

    private static string Text(ref Utf8JsonReader json, string name) =>
        (json.TokenType == JsonTokenType.String ? json.GetString() : null) ?? throw new FormatException($"\"{name}\" is no text.");

    private static FormatException Twice(string name) => new($"\"{name}\" is there twice.");

    private static FormatException Missing(string name) => new($"\"{name}\" is missing.");

    /// <summary>What stands in an edit.</summary>
    [Flags]
    private enum Part
    {
        None = 0,
        Add = 1,
        Kind = 2,
        Under = 4,
        Put = 8,
        Field = 16,
        Value = 32,
        Over = 64,
        Undo = 128,
    }
}
