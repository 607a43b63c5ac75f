using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Xml;
using ExcelDataReader;
using ExcelDataReader.Exceptions;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Reads the sheets of a spreadsheet file, .xlsx (ECMA-376) or .xls, as rows of text.</summary>
internal static class SpreadsheetRows
{
    private const long MostUnpacked = 256 << 20;

    // As ZIP files and as compound files begin.
    private static readonly byte[] Zip = [(byte)'P', (byte)'K', 3, 4];
    private static readonly byte[] Compound = [0xd0, 0xcf, 0x11, 0xe0];

    // The library asks for the code page of old spreadsheets by its number, whichever file it reads.
    static SpreadsheetRows() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>Whether a file is of such a kind.</summary>
    public static bool IsOne(byte[] file) => file.AsSpan().StartsWith(Zip) || file.AsSpan().StartsWith(Compound);

    /// <summary>Of the older format the reader of spreadsheets gives a cell with an error as a blank one, and nothing tells them apart.</summary>
    internal const string BlankErrors = "an .xls shows a cell with an error as blank: save it as .xlsx, and such cells are named";

    /// <summary>Its sheets that anybody sees, in their order, or why it can't be read.</summary>
    /// <remarks>
    /// A cell that is merged with those below it stands for each of them. A number is written with a point and, where its format puts a unit behind it, with
    /// that unit.
    /// </remarks>
    public static Result<IReadOnlyList<Sheet>> Read(byte[] file)
    {
        try
        {
            if (file.AsSpan().StartsWith(Zip) && Unpacked(file) > MostUnpacked)
                return new Refusal($"Unpacked it has more than {MostUnpacked >> 20} MiB: that is no house's schedule. Nothing was imported.");
            var lost = new LostCells(file, file.AsSpan().StartsWith(Zip));
            using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(file));
            var sheets = new List<Sheet>();
            do
            {
                if (reader.VisibleState is not ("hidden" or "veryhidden"))
                {
                    var rows = Rows(reader, lost);
                    if (!rows.Ok)
                        return new Refusal($"Sheet {reader.Name}: {rows.Reason}");
                    sheets.Add(new Sheet(reader.Name, rows.Value) { Remark = file.AsSpan().StartsWith(Compound) ? BlankErrors : null });
                }
            }
            while (reader.NextResult());
            return sheets;
        }
        catch (InvalidPasswordException)
        {
            return new Refusal("The spreadsheet is locked by a password. Save it without one and import again; nothing was imported.");
        }
        // The library's words for what is wrong with the file help nobody on site.
        catch (Exception e) when (IsOfTheFile(e))
        {
            return new Refusal("It looks like a spreadsheet and can't be read as one. Open it, save it again as .xlsx or CSV, and import that; "
                + "nothing was imported.");
        }
    }

    /// <summary>
    /// Whether a file that is none brings that about: what the library throws itself, by its source, and what the parts of .NET throw that it reads a ZIP, XML,
    /// numbers and encrypted parts with.
    /// </summary>
    private static bool IsOfTheFile(Exception e) => e is ExcelReaderException or NotSupportedException or NotImplementedException or InvalidOperationException
        or ArgumentException or InvalidDataException or IOException or XmlException or FormatException or OverflowException or IndexOutOfRangeException
        or KeyNotFoundException or CryptographicException
        // So it refuses a sort of encryption that it does not know.
        || e.GetType() == typeof(Exception)
        // It trusts that a style says how it writes numbers.
        || e is NullReferenceException { Source: "ExcelDataReader" };

    private static long Unpacked(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file));
        return zip.Entries.Sum(e => e.Length);
    }

    private static Result<IReadOnlyList<SheetRow>> Rows(IExcelDataReader reader, LostCells lost)
    {
        var down = (reader.MergeCells ?? []).Where(m => m.ToRow > m.FromRow).ToList();
        var held = new Dictionary<(int From, int Column), string>();
        var rows = new List<SheetRow>();
        for (var line = 1; reader.Read(); line++)
        {
            if (rows.Count == CsvRows.MostRows)
                return new Refusal($"more than {CsvRows.MostRows} rows: that is no house's schedule. Nothing was imported.");
            var cells = Enumerable.Range(0, Math.Min(reader.FieldCount, CsvRows.MostColumns))
                .Select(c => Text(reader, c) is { Length: > 0 } text ? text : lost.At(reader.Name, c, line)).ToArray();
            foreach (var merged in down.Where(m => m.FromColumn < cells.Length && m.FromRow < line && line <= m.ToRow + 1))
            {
                if (merged.FromRow == line - 1)
                    held[(merged.FromRow, merged.FromColumn)] = cells[merged.FromColumn];
                else if (held.TryGetValue((merged.FromRow, merged.FromColumn), out var above))
                    cells[merged.FromColumn] = above;
            }
            if (cells.Any(c => c.Length > CsvRows.LongestCell))
                return new Refusal(string.Create(CultureInfo.InvariantCulture,
                    $"row {line}: a cell has more than {CsvRows.LongestCell} characters. Nothing was imported."));
            rows.Add(new SheetRow(line, cells));
        }
        return rows;
    }

    private static string Text(IExcelDataReader reader, int column) => reader.GetValue(column) switch
    {
        null => "",
        string text => text.Trim(),
        double number => Math.Round((decimal)Math.Clamp(number, -1e12, 1e12), 6).ToString("0.######", CultureInfo.InvariantCulture)
            + UnitIn(reader.GetNumberFormatString(column)),
        DateTime day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        bool yes => yes ? "yes" : "no",
        var other => Convert.ToString(other, CultureInfo.InvariantCulture)?.Trim() ?? "",
    };

    /// <summary>The unit that a number format writes behind each number, such as 0 "mm"; empty where it writes none.</summary>
    private static string UnitIn(string? format)
    {
        // What stands behind the first semicolon is for negative numbers and for nought.
        var positive = (format ?? "").Split(';')[0];
        var literals = positive.Split('"');
        return literals.Length == 3 && HeaderName.UnitOf(literals[1].Trim().TrimEnd('.')) is { Length: > 0 } unit ? $" {unit}"
            : positive.EndsWith("\\\"", StringComparison.Ordinal) ? "\"" : "";
    }
}

/// <summary>One sheet of a schedule.</summary>
/// <param name="Name">Its name; null where a file is a sheet by itself.</param>
/// <param name="Rows">Its rows.</param>
internal sealed record Sheet(string? Name, IReadOnlyList<SheetRow> Rows)
{
    /// <summary>What is to be said of how it was read; null where nothing is.</summary>
    public string? Remark { get; init; }
}
