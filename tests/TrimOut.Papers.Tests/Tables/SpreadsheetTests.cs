using System.Text;
using ExcelDataReader;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Papers.Tables;
using TrimOut.Papers.Tests.Labels;
using TrimOut.Papers.TradePapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Tables;

/// <summary>Held to the reading of ExcelDataReader, which shares nothing with what writes.</summary>
public class SpreadsheetTests
{
    static SpreadsheetTests() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    public static TheoryData<string> WithATable => [.. PaperList.All.Where(p => p.Xlsx is not null).Select(p => p.Id)];

    public static TheoryData<string> Hostile => [.. HostileText.All, "=1+1", "+1", "-1", "@SUM(A1)",
        "\t=1", "=HYPERLINK(\"http://example.invalid\")", "'already", "1e5"];

    [Theory]
    [MemberData(nameof(WithATable))]
    public void ASpreadsheetSaysWhatTheCsvSays(string id)
    {
        foreach (var data in SampleJobs.Names.Select(SampleJobs.Data).Append(FinishedHouse.Data()))
        {
            var paper = PaperList.Find(id)!;
            var csv = CsvTableTests.Read(paper.Csv!(data)).Select(r => r.Select(CsvTable.WithoutGuard).ToArray()).ToList();
            Assert.Equal(csv, Read(paper.Xlsx!(data)).Select(r => r.Select(Text).ToArray()));
        }
    }

    [Fact]
    public void AWidthIsANumberAndTheHeadOfItsColumnSaysTheUnit()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "45 3/64").Say("W01", UnitFacts.OrderedOn, "2026-03-02");
        object? Width(string head)
        {
            var rows = Read(OrderSheet.Paper.Xlsx!(FinishedHouse.Data(job.Scribe.Log)));
            return rows[1][Array.IndexOf(rows[0], head)];
        }
        Assert.Equal(45.046875, Width("order width, in"));
        job.SayOf("", HouseFacts.Units, "millimetres");
        // 45 3/64 in x 25.4 mm.
        Assert.Equal(1144.190625, Width("order width, mm"));
    }

    [Theory]
    [MemberData(nameof(Hostile))]
    public void ATypedTextStaysATextAndIsNoFormula(string typed)
    {
        var table = new SheetTable("Test", "before", "cell", "after");
        table.Row(1m, typed, 2m);
        var file = Spreadsheet.Of(table);
        Assert.Equal([1.0, ShownText.Kept(typed), 2.0], Read(file)[1]);
        using var zip = new System.IO.Compression.ZipArchive(new MemoryStream(file));
        var sheets = zip.Entries.Select(e => new StreamReader(e.Open()).ReadToEnd()).ToList();
        // ECMA-376 part 1, 18.3.1.40: a formula is an element f of its cell; 18.8.45: quotePrefix keeps an edited text a text.
        Assert.DoesNotContain(sheets, s => s.Contains("<x:f>", StringComparison.Ordinal) || s.Contains("<f>", StringComparison.Ordinal));
        Assert.Contains(sheets, s => s.Contains("quotePrefix=\"1\"", StringComparison.Ordinal));
    }

    [Fact]
    public void TheSameTableGivesTheSameBytes() =>
        Assert.Equal(OrderSheet.Paper.Xlsx!(FinishedHouse.Data()), OrderSheet.Paper.Xlsx!(FinishedHouse.Data()));

    [Fact]
    public void ATextLongerThanACellHoldsIsCut()
    {
        var table = new SheetTable("Test", "cell");
        table.Row(new string('a', 40_000));
        Assert.Equal(32_767, ((string)Read(Spreadsheet.Of(table))[1][0]!).Length);
    }

    private static string Text(object? cell) => cell switch
    {
        null => "",
        double number => NumberText.Plain((decimal)number),
        _ => (string)cell,
    };

    private static List<object?[]> Read(byte[] file)
    {
        using var reader = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(file));
        var rows = new List<object?[]>();
        while (reader.Read())
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetValue)]);
        return rows;
    }
}
