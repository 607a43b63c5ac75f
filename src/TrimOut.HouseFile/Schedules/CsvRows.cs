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

    /// <summary>The most characters of a cell.</summary>
    public const int LongestCell = 10_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file: by its byte-order mark, else UTF-8, else Western European.</summary>
    public static string Decode(byte[] bytes)
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
            return Encoding.Latin1.GetString(bytes);
        }
    }

    /// <summary>The rows, or on which line a quote is broken.</summary>
    public static Result<IReadOnlyList<SheetRow>> Read(string text)
    {
        long broken = 0;
        long bareQuote = 0;
        var options = new CsvReaderOptions
        {
            Separator = Separator(text),
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
            var cells = Enumerable.Range(0, reader.FieldCount).Select(c => CsvTable.WithoutGuard(reader[c].ToString().Trim())).ToList();
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
