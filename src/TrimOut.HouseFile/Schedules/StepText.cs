using System.Globalization;
using System.Text;

namespace TrimOut.HouseFile.Schedules;

/// <summary>One entity of a STEP file, ISO 10303-21: <c>#12=IFCWINDOW('a',$,(#1,#2),.T.,1.5);</c></summary>
/// <param name="Id">Its number.</param>
/// <param name="Type">Its type, in capitals.</param>
/// <param name="Line">The line of the file on which it begins, from 1.</param>
/// <param name="Values">Its attributes as written, one by one.</param>
internal sealed record StepEntity(int Id, string Type, int Line, IReadOnlyList<string> Values)
{
    /// <summary>A text; null where the attribute is not there, or no text.</summary>
    public string? Text(int at) => Raw(at) is ['\'', .., '\''] raw ? StepText.Decode(raw[1..^1]) : null;

    /// <summary>A number; null where it is none.</summary>
    public double? Number(int at) => double.TryParse(Inside(Raw(at)), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The number of another entity; null where it names none.</summary>
    public int? Reference(int at) => StepText.ReferenceIn(Raw(at));

    /// <summary>The numbers of the entities of a list.</summary>
    public IEnumerable<int> References(int at) => List(at).Select(StepText.ReferenceIn).OfType<int>();

    /// <summary>The numbers of a list.</summary>
    public IReadOnlyList<double> Numbers(int at) =>
        [.. List(at).Select(v => double.TryParse(v, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) ? n : double.NaN)];

    /// <summary>An attribute as written; empty where there is none.</summary>
    public string Raw(int at) => at < Values.Count ? Values[at] : "";

    private IEnumerable<string> List(int at) => Raw(at) is ['(', .., ')'] raw ? StepText.Split(raw[1..^1]) : [];

    /// <summary>What a typed value holds: 1.2 of IFCPOSITIVELENGTHMEASURE(1.2).</summary>
    private static string Inside(string raw) => raw is [>= 'A' and <= 'Z', .., ')'] ? raw[(raw.IndexOf('(', StringComparison.Ordinal) + 1)..^1] : raw;
}

/// <summary>Reads the entities of a STEP file, ISO 10303-21, as far as a list of windows needs it.</summary>
internal static class StepText
{
    /// <summary>As such a file begins.</summary>
    public const string Begins = "ISO-10303-21;";

    /// <summary>Its entities that are wanted, one after the other; what is none is passed over.</summary>
    /// <param name="text">The file, which holds only ASCII.</param>
    /// <param name="wanted">Whether a type is wanted.</param>
    public static IEnumerable<StepEntity> Entities(string text, Func<string, bool> wanted)
    {
        var line = 1;
        for (var at = 0; at < text.Length;)
        {
            var end = End(text, at);
            var lead = at;
            while (lead < end && char.IsWhiteSpace(text[lead]))
                lead++;
            line += text.AsSpan(at, lead - at).Count('\n');
            if (Entity(text[lead..end], line, wanted) is { } entity)
                yield return entity;
            line += text.AsSpan(lead, Math.Min(end, text.Length) - lead).Count('\n');
            at = end + 1;
        }
    }

    /// <summary>Where a statement ends: at its semicolon, which is in no text and no comment.</summary>
    private static int End(string text, int from)
    {
        var quoted = false;
        for (var at = from; at < text.Length; at++)
        {
            if (text[at] == '\'')
                quoted = !quoted;
            else if (!quoted && text[at] == ';')
                return at;
        }
        return text.Length;
    }

    private static StepEntity? Entity(string statement, int line, Func<string, bool> wanted)
    {
        var (equals, open) = (statement.IndexOf('=', StringComparison.Ordinal), statement.IndexOf('(', StringComparison.Ordinal));
        if (statement is not ['#', ..] || equals < 0 || open < equals || ReferenceIn(statement[..equals].Trim()) is not { } id)
            return null;
        var type = statement[(equals + 1)..open].Trim().ToUpperInvariant();
        var close = statement.LastIndexOf(')');
        return !wanted(type) || close < open ? null : new StepEntity(id, type, line, [.. Split(statement[(open + 1)..close])]);
    }

    /// <summary>The parts between the commas that are in no text and in no inner list, without the space around them.</summary>
    public static IEnumerable<string> Split(string list)
    {
        var (depth, quoted, from) = (0, false, 0);
        for (var at = 0; at < list.Length; at++)
        {
            switch (list[at])
            {
                case '\'':
                    quoted = !quoted;
                    break;
                case '(' when !quoted:
                    depth++;
                    break;
                case ')' when !quoted:
                    depth--;
                    break;
                case ',' when !quoted && depth == 0:
                    yield return list[from..at].Trim();
                    from = at + 1;
                    break;
            }
        }
        if (list.Trim().Length > 0)
            yield return list[from..].Trim();
    }

    /// <summary>The number behind #; null where there is none.</summary>
    public static int? ReferenceIn(string raw) => raw is ['#', ..] && int.TryParse(raw.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var id)
        ? id : null;

    /// <summary>A text without the signs of its encoding: ISO 10303-21, 6.4.3.</summary>
    public static string Decode(string raw)
    {
        var text = new StringBuilder(raw.Length);
        for (var at = 0; at < raw.Length; at++)
        {
            var rest = raw.AsSpan(at);
            if (rest.StartsWith("''"))
                text.Append(raw[at++]);
            else if (rest.StartsWith("\\\\"))
                text.Append(raw[at++]);
            else if (rest.StartsWith("\\X2\\") && raw.IndexOf("\\X0\\", at, StringComparison.Ordinal) is var end and > 0)
            {
                for (var digits = at + 4; digits + 4 <= end; digits += 4)
                    text.Append((char)Hex(raw, digits, 4));
                at = end + 3;
            }
            else if (rest.StartsWith("\\X\\") && rest.Length >= 5)
            {
                text.Append((char)Hex(raw, at + 3, 2));
                at += 4;
            }
            else if (rest.StartsWith("\\S\\") && rest.Length >= 4)
            {
                text.Append((char)(raw[at + 3] + 128));
                at += 3;
            }
            else
                text.Append(raw[at]);
        }
        return text.ToString().Trim();
    }

    private static int Hex(string raw, int at, int digits) =>
        int.TryParse(raw.AsSpan(at, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value) ? value : '?';
}
