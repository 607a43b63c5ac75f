using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>A spreadsheet file written by hand by ECMA-376 part 1, 18.2 and 18.3, so that no library reads what it wrote itself.</summary>
internal static class SmallBook
{
    private const string Space = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>Formats of numbers that a cell may have: <c>s</c> of the cell is the place here.</summary>
    private static readonly string[] Formats = ["General", "0.0 \"mm\"", "# ??/16\\\"", "yyyy-mm-dd", "0\" mm\";-0\" mm\"", "0.0\" in.\""];

    /// <summary>A file.</summary>
    /// <param name="sheets">Each sheet: name, whether hidden, rows of cells (text, a number, a number with the place of its format), merged ranges.</param>
    public static byte[] Of(params (string Name, bool Hidden, object?[][] Rows, string[] Merged)[] sheets)
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            Put(zip, "[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" "
                + "ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                + "<Override PartName=\"/xl/workbook.xml\" "
                + "ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/></Types>");
            Put(zip, "_rels/.rels", Relations(["officeDocument"], _ => "xl/workbook.xml"));
            Put(zip, "xl/workbook.xml", $"<workbook xmlns=\"{Space}\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets>"
                + string.Concat(sheets.Select((s, at) =>
                    $"<sheet name=\"{s.Name}\" sheetId=\"{at + 1}\"{(s.Hidden ? " state=\"hidden\"" : "")} r:id=\"r{at}\"/>"))
                + "</sheets></workbook>");
            Put(zip, "xl/_rels/workbook.xml.rels", Relations([.. sheets.Select(_ => "worksheet"), "styles"],
                at => at < sheets.Length ? $"worksheets/sheet{at}.xml" : "styles.xml"));
            Put(zip, "xl/styles.xml", $"<styleSheet xmlns=\"{Space}\"><numFmts count=\"{Formats.Length - 1}\">"
                + string.Concat(Formats.Skip(1).Select((f, at) => $"<numFmt numFmtId=\"{170 + at}\" formatCode=\"{SecurityElement.Escape(f)}\"/>"))
                + $"</numFmts><cellXfs count=\"{Formats.Length}\">"
                + string.Concat(Formats.Select((_, at) => $"<xf numFmtId=\"{(at == 0 ? 0 : 169 + at)}\" applyNumberFormat=\"1\"/>"))
                + "</cellXfs></styleSheet>");
            foreach (var (at, sheet) in sheets.Index())
                Put(zip, $"xl/worksheets/sheet{at}.xml", Sheet(sheet.Rows, sheet.Merged));
        }
        return file.ToArray();
    }

    private static string Sheet(object?[][] rows, string[] merged) => $"<worksheet xmlns=\"{Space}\"><sheetData>"
        + string.Concat(rows.Select((row, y) => $"<row r=\"{y + 1}\">{string.Concat(row.Select((cell, x) => Cell($"{(char)('A' + x)}{y + 1}", cell)))}</row>"))
        + "</sheetData>" + (merged.Length == 0 ? "" : $"<mergeCells>{string.Concat(merged.Select(m => $"<mergeCell ref=\"{m}\"/>"))}</mergeCells>")
        + "</worksheet>";

    private static string Cell(string place, object? cell) => cell switch
    {
        null => "",
        // As a cell that could not be worked out is stored.
        string error when error.StartsWith('#') => $"<c r=\"{place}\" t=\"e\"><v>{error}</v></c>",
        // As a program stores a formula that it does not work out.
        string formula when formula.StartsWith('=') => $"<c r=\"{place}\"><f>{formula[1..]}</f></c>",
        string text => $"<c r=\"{place}\" t=\"inlineStr\"><is><t>{SecurityElement.Escape(text)}</t></is></c>",
        (double number, int format) => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"{format}\"><v>{number}</v></c>"),
        var number => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\"><v>{number}</v></c>"),
    };

    private static string Relations(string[] kinds, Func<int, string> target) =>
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + string.Concat(kinds.Select((k, at) =>
            $"<Relationship Id=\"r{at}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/{k}\" Target=\"{target(at)}\"/>"))
        + "</Relationships>";

    private static void Put(ZipArchive zip, string name, string text)
    {
        using var part = zip.CreateEntry(name).Open();
        part.Write(Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\"?>" + text));
    }
}
