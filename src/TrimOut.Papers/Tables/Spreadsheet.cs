using System.Globalization;
using System.IO.Compression;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using TrimOut.Core;

namespace TrimOut.Papers.Tables;

/// <summary>A table as a spreadsheet file, ECMA-376 (.xlsx): one sheet, its head bold and fixed, each column as wide as it needs.</summary>
/// <remarks>
/// A text is a cell of the type text, marked as quoted: no spreadsheet takes it for a formula, not even when somebody edits it. So it stands as typed,
/// without an apostrophe that could be seen.
/// </remarks>
internal static class Spreadsheet
{
    private const string BookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
    private const int Widest = 60;
    private const int LongestText = 32_767;
    private const uint Head = 1;
    private const uint Quoted = 2;

    /// <summary>Nothing in a ZIP is older (APPNOTE 6.3.10, 4.4.6): one day for all files, so that the same table gives the same bytes.</summary>
    private static readonly DateTimeOffset FirstDay = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The file.</summary>
    public static byte[] Of(SheetTable table)
    {
        using var file = new MemoryStream();
        using (var document = SpreadsheetDocument.Create(file, SpreadsheetDocumentType.Workbook))
        {
            // The library's own way would roll a name for the part.
            var book = document.AddNewPart<WorkbookPart>(BookType, "book");
            book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = Styles();
            book.AddNewPart<WorksheetPart>("sheet").Worksheet = new Worksheet(HeadStays(), Widths(table), new SheetData(Rows(table)));
            book.Workbook = new Workbook(new Sheets(new Sheet { Id = "sheet", SheetId = 1, Name = table.Name }));
        }
        using (var zip = new ZipArchive(file, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (var part in zip.Entries)
                part.LastWriteTime = FirstDay;
        }
        return file.ToArray();
    }

    private static IEnumerable<Row> Rows(SheetTable table) =>
        table.Rows.Select(r => new Row(r.Select(Cell))).Prepend(new Row(table.Columns.Select(c => Text(c, Head))));

    private static Cell Cell(SheetCell cell) => cell.Number is { } number
        ? new Cell(new CellValue(number.ToString(CultureInfo.InvariantCulture))) { DataType = CellValues.Number }
        : cell.Text.Length == 0 ? new Cell() : Text(cell.Text, Quoted);

    private static Cell Text(string text, uint style) =>
        new(new InlineString(new Text(Shortened(ShownText.Kept(text))) { Space = SpaceProcessingModeValues.Preserve }))
        {
            DataType = CellValues.InlineString,
            StyleIndex = style,
        };

    private static string Shortened(string text) => text.Length <= LongestText ? text : text[..LongestText];

    private static SheetViews HeadStays() => new(new SheetView(
        new Pane { VerticalSplit = 1, TopLeftCell = "A2", ActivePane = PaneValues.BottomLeft, State = PaneStateValues.Frozen })
    { WorkbookViewId = 0 });

    private static Columns Widths(SheetTable table) => new(table.Columns.Select((head, at) => new Column
    {
        Min = (uint)at + 1,
        Max = (uint)at + 1,
        CustomWidth = true,
        Width = Math.Min(Widest, 2 + table.Rows.Select(r => r[at].Text.Length).Append(head.Length).Max()),
    }));

    private static Stylesheet Styles() => new(
        new Fonts(new Font(), new Font(new Bold())),
        new Fills(new Fill(new PatternFill { PatternType = PatternValues.None }), new Fill(new PatternFill { PatternType = PatternValues.Gray125 })),
        new Borders(new Border()),
        new CellFormats(new CellFormat(), new CellFormat { FontId = 1, ApplyFont = true }, new CellFormat { QuotePrefix = true }));
}
