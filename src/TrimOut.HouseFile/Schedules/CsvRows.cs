using System.Globalization;
using System.Text;
using CsvHelper;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>One row of a CSV file.</summary>
/// <param name="Line">The line of the file that it begins on, from 1.</param>
/// <param name="Cells">Its cells, trimmed.</param>
internal sealed record SheetRow(int Line, IReadOnlyList<string> Cells)
{
    /// <summary>Whether nothing is written in it.</summary>
    public bool IsBlank => Cells.All(c => c.Length == 0);

    /// <summary>A cell; empty where the row is too short.</summary>
    public string At(int column) => column < Cells.Count ? Cells[column] : "";
}

/// <summary>Reads CSV as offices export it: quoted cells, any usual separator, a byte-order mark, bare inch marks.</summary>
internal static class CsvRows
{
    /// <summary>The most rows of a schedule: more than any house has windows.</summary>
    public const int MostRows = 5_000;

    /// <summary>The most columns of a schedule that are looked at.</summary>
    public const int MostColumns = 256;

    /// <summary>The most characters of a cell.</summary>
    public const int LongestCell = 10_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file: by its byte-order mark, else UTF-8, else Western European (Windows-1252) where all of it looks like that.</summary>
    /// <returns>The text, or the line that is in no encoding that can be told.</returns>
    public static Result<string> Decode(byte[] bytes)
    {
        if (bytes is [0xff, 0xfe, ..])
            return Encoding.Unicode.GetString(bytes.AsSpan(2));
        if (bytes is [0xfe, 0xff, ..])
            return Encoding.BigEndianUnicode.GetString(bytes.AsSpan(2));
        try
        {
            return Strict.GetString(bytes).TrimStart('\ufeff');
        }
        catch (DecoderFallbackException)
        {
            return Western(bytes);
        }
    }

    private static Result<string> Western(byte[] bytes)
    {
        var number = 0;
        foreach (var line in Lines(bytes))
        {
            number++;
            if (!line.AsSpan().ContainsAnyInRange((byte)0x80, (byte)0xff))
                continue;
            if (IsUtf8(line))
                return Doubt(number, "is UTF-8, and others are not");
            if (line.Where((_, at) => IsUnlikely(line, at)).Any())
                return Doubt(number, "has signs that no text in a Western European encoding has at such a place: it may be of a DOS code page");
        }
        return CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetString(bytes);
    }

    private static Refusal Doubt(int line, string why) => new(string.Create(CultureInfo.InvariantCulture,
        $"Line {line} {why}. Letters with accents would come out as something else. Save the schedule as UTF-8 and import again; nothing was imported."));

    private static IEnumerable<byte[]> Lines(byte[] bytes)
    {
        for (var from = 0; from < bytes.Length;)
        {
            var end = Array.IndexOf(bytes, (byte)'\n', from);
            var to = end < 0 ? bytes.Length : end;
            yield return bytes[from..to];
            from = to + 1;
        }
    }

    private static bool IsUtf8(byte[] line)
    {
        try
        {
            return Strict.GetCharCount(line) >= 0;
        }
        catch (DecoderFallbackException)
        {
            return false;
        }
    }

    /// <summary>
    /// Whether a byte is a letter of a DOS code page (437, 850) rather than the quote, dash or sign that Windows-1252 has there: it stands within or at the end
    /// of a word, where no quote, dash or currency stands.
    /// </summary>
    private static bool IsUnlikely(byte[] line, int at)
    {
        var (before, sign, after) = (at > 0 && IsLetter(line[at - 1]), line[at], at + 1 < line.Length && IsLetter(line[at + 1]));
        return sign switch
        {
            0x81 or 0x8d or 0x8f or 0x90 or 0x9d => true,
            // The letters that Windows-1252 has here: S, s, Z, z with a caron, OE, oe, Y with a diaeresis.
            0x8a or 0x9a or 0x8c or 0x9c or 0x8e or 0x9e or 0x9f => false,
            // Quotes and dashes: at the edge of a word they are in place. An apostrophe and a dash are so within one too.
            0x91 or 0x93 or 0x94 or 0x95 => before && after,
            0x92 or 0x96 or 0x97 => false,
            >= 0x80 and < 0xa5 => before || after,
            _ => false,
        };
    }

    private static bool IsLetter(byte sign) => char.IsAsciiLetter((char)sign);

    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>The rows, or on which line a quote is broken.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fits">
    /// Whether rows can be those of a schedule. The sign that parts the first line that has one parts the others, unless only another one makes rows that fit:
    /// above a table there may be a title with a comma.
    /// </param>
    public static Result<IReadOnlyList<SheetRow>> Read(string text, Func<IReadOnlyList<SheetRow>, bool> fits)
    {
        var first = Separator(text);
        var rows = Read(text, first);
        return rows.Ok && fits(rows.Value) ? rows
            : Separators.Where(s => s != first && text.Contains(s, StringComparison.Ordinal)).Select(s => Read(text, s))
                .FirstOrDefault(r => r.Ok && fits(r.Value)) is { Ok: true } other ? other : rows;
    }

    private static Result<IReadOnlyList<SheetRow>> Read(string text, char separator)
    {
        long broken = 0;
        long bareQuote = 0;
        var options = new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            SkipEmptyLines = false,
            TrackLineNumbers = true,
            TrimWhitespace = true,
            OnMalformedRecord = bad =>
            {
                // A quote inside an unquoted cell is an inch mark; any other wrong quote leaves the ends of cells in doubt.
                if (bad.Reason == CsvMalformedReason.StrayQuote)
                    bareQuote = bad.LineNumber;
                else
                    broken = bad.LineNumber;
            },
        };
        var rows = new List<SheetRow>();
        using var reader = CsvReader.FromText(text, options);
        while (reader.Read())
        {
            var cells = Enumerable.Range(0, reader.FieldCount).Select(c => Plain(reader[c].ToString().Trim())).ToList();
            if (bareQuote == reader.LineNumber && cells.Any(c => c.Contains('\n', StringComparison.Ordinal)))
                broken = bareQuote;
            if (broken > 0)
                return new Refusal(string.Create(CultureInfo.InvariantCulture,
                    $"Line {broken}: a quote is opened and not closed where the cell ends. Fix that line and import again; nothing was imported."));
            if (cells.Any(c => c.Length > LongestCell))
                return new Refusal(string.Create(CultureInfo.InvariantCulture,
                    $"Line {reader.LineNumber}: a cell has more than {LongestCell} characters. Fix that line and import again; nothing was imported."));
            if (rows.Count == MostRows)
                return new Refusal(string.Create(CultureInfo.InvariantCulture,
                    $"The file has more than {MostRows} rows: that is no house's schedule. Nothing was imported."));
            rows.Add(new SheetRow((int)reader.LineNumber, cells));
        }
        return rows;
    }

    /// <summary>A cell without the apostrophe, or the formula of a text, that keep a spreadsheet from taking it for something else: <c>="007"</c>.</summary>
    private static string Plain(string cell) => cell is ['=', '"', .., '"'] && cell.Length > 3 && cell.Count('"') == 2 ? cell[2..^1].Trim()
        : CsvTable.WithoutGuard(cell);

    private static char Separator(string text)
    {
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.IndexOfAny(",;\t") >= 0)
            {
                var (commas, semicolons, tabs) = (line.Count(','), line.Count(';'), line.Count('\t'));
                return commas >= semicolons && commas >= tabs ? ',' : semicolons >= tabs ? ';' : '\t';
            }
        }
        return ',';
    }
}
