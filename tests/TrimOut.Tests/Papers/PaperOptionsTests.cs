using TrimOut.Testing;

namespace TrimOut.Tests.Papers;

public sealed class PaperOptionsTests
{
    private static readonly string House = Path.Combine(Repository.Root, "sample-jobs", "orchard-cottage");

    [Fact]
    public void APaperInSpanishStandsBesideTheEnglishOne()
    {
        using var program = new RunTrimOut();
        Assert.Equal(0, program.Run("paper", House, "pull-sheet", "--date", "2026-09-30").Code);
        Assert.Equal(0, program.Run("paper", House, "pull-sheet", "--language", "es", "--date", "2026-09-30").Code);
        Assert.StartsWith("# Pull sheet: ", File.ReadAllText(program.In("orchard-cottage-pull-sheet.md")), StringComparison.Ordinal);
        Assert.StartsWith("# Hoja de cableado: ", File.ReadAllText(program.In("orchard-cottage-es-pull-sheet.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void AllPapersOfALanguageAreWritten()
    {
        using var program = new RunTrimOut();
        var run = program.Run("papers", House, "--language", "es", "--date", "2026-09-30");
        Assert.Equal(0, run.Code);
        Assert.Contains("orchard-cottage-es-hang-sheet.html", run.Output, StringComparison.Ordinal);
        Assert.Contains("orchard-cottage-es-parts-list.html", run.Output, StringComparison.Ordinal);
        Assert.Contains("orchard-cottage-es-order-sheet.html", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Not in \"es\"", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is no owner's binder in \"fr\"", "binder", "--language", "fr")]
    [InlineData("is no sheet of labels", "labels", "--label-sheet", "many")]
    [InlineData("not both", "binder", "--language", "es", "--template", "x.md")]
    public void WhatIsNotThereIsRefusedWithTheReason(string reason, params string[] options)
    {
        using var program = new RunTrimOut();
        var run = program.Run(["paper", House, .. options]);
        Assert.Equal(64, run.Code);
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A4", "210mm")]
    [InlineData("letter", "215.9mm")]
    public void LabelsOnPlainPaperHaveTheSizeThatWasSaidForThePdf(string size, string wide)
    {
        using var program = new RunTrimOut();
        Assert.Equal(0, program.Run("paper", House, "labels", "--size", size, "--date", "2026-09-30").Code);
        Assert.Contains($"width=\"{wide}\"", File.ReadAllText(program.In("orchard-cottage-labels.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void LabelsLieOnTheSheetThatWasSaidAndTheTableIsASpreadsheetToo()
    {
        using var program = new RunTrimOut();
        Assert.Equal(0, program.Run("paper", House, "labels", "--label-sheet", "7x3,a4", "--date", "2026-09-30").Code);
        Assert.Contains("width=\"210mm\"", File.ReadAllText(program.In("orchard-cottage-labels.html")), StringComparison.Ordinal);
        Assert.True(File.Exists(program.In("orchard-cottage-labels.csv")));
        // A file of the Open Packaging Conventions is a ZIP (ECMA-376 part 2).
        Assert.Equal("PK"u8.ToArray(), File.ReadAllBytes(program.In("orchard-cottage-labels.xlsx"))[..2]);
    }
}
