using CsvHelper;
using TrimOut.Core;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>Held to CsvHelper's reading.</summary>
public class CsvTableTests
{
    public static TheoryData<string> Hostile => [.. HostileText.All, "a,b", "say \"so\"", "two\r\nlines", "", "'already"];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void ACellReadsBackAsTypedUnlessASpreadsheetWouldRunIt(string typed)
    {
        var csv = new CsvTable(["before", "cell", "after"]);
        csv.Row(["1", typed, "2"]);
        var row = Read(csv.ToString())[1];
        Assert.Equal("1", row[0]);
        Assert.Equal(typed.Length > 0 && "=+-@".Contains(typed[0], StringComparison.Ordinal) ? "'" + typed : typed, row[1]);
        Assert.Equal(typed, CsvTable.WithoutGuard(row[1]));
        Assert.Equal("2", row[2]);
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    [InlineData("＝1")]
    public void NoCellBeginsAFormula(string typed)
    {
        var csv = new CsvTable(["cell"]);
        csv.Row([typed]);
        Assert.StartsWith("'", Read(csv.ToString())[1][0], StringComparison.Ordinal);
    }

    [Fact]
    public void RowsEndWithCarriageReturnAndLineFeed() => Assert.Equal("a,b\r\n", new CsvTable(["a", "b"]).ToString());

    [Fact]
    public void ARowWithAnotherNumberOfCellsIsRefused() => Assert.Throws<ArgumentException>(() => new CsvTable(["a", "b"]).Row(["1"]));

    internal static List<string[]> Read(string csv)
    {
        var options = new CsvReaderOptions
        {
            Separator = ',',
            HasHeader = false,
            SkipEmptyLines = false,
            TrimWhitespace = false,
            OnMalformedRecord = bad => Assert.Fail(bad.Reason.ToString())
        };
        var rows = new List<string[]>();
        using var reader = CsvReader.FromText(csv, options);
        while (reader.Read())
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]);
        return rows;
    }
}
