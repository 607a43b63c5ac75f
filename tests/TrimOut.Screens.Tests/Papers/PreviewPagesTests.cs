using System.Collections.Immutable;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Papers;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Tests.Papers;

public class PreviewPagesTests
{
    [Fact]
    public void HeadingsAreUnderlinedAndSmallOnesMarked() =>
        Assert.Equal(["Title", "████████", "", "Part", "────────", "", "► Small"],
            Lines(8, Heading(1, "Title"), Heading(2, "Part"), Heading(3, "Small")));

    [Fact]
    public void AnItemHangsBehindItsMark() =>
        Assert.Equal(["- one two", "  three"], Lines(10, new PreviewBlock(PreviewKind.Item, 0, "-", [new("one two three")], [])));

    [Fact]
    public void WhatIsStrongKeepsItsToneInTheMiddleOfALine()
    {
        var line = new PreviewPages([new(PreviewKind.Paragraph, 0, "", [new("Mains power.", Strong: true), new(" The panel")], [])]).Lines(40, Glyphs.Drawn)
            .Single();
        Assert.Equal([("Mains power.", Tone.Strong), (" The panel", Tone.Text)], line);
    }

    [Fact]
    public void ADrawingIsItsDescription() =>
        Assert.Equal(["[drawing:", "Panel P1]"], Lines(12, new PreviewBlock(PreviewKind.Paragraph, 0, "", [new("Panel P1", Picture: true)], [])));

    [Fact]
    public void ColumnsShareTheWidthAndLongCellsWrap() =>
        Assert.Equal(
            ["Unit │ Note", "────────────────", "W01  │ stops", "     │ above the", "     │ tap"],
            Lines(16, Table(["Unit", "Note"], ["W01", "stops above the tap"])));

    [Fact]
    public void WhereAFigureWouldBeCutEachRowBecomesAList() =>
        Assert.Equal(["Unit: W01", "  Width: 1152 mm", "  Height:", "  1537.25", "─"],
            Lines(16, Table(["Unit", "Width", "Height"], ["W01", "1152 mm", "1537.25"])));

    [Theory]
    [InlineData(77)]
    [InlineData(137)]
    [InlineData(20)]
    public void NoLineIsLongerThanTheScreenWhateverWasTyped(int width)
    {
        var text = "👩‍🔧 窓 חלון a_very_long_word_without_any_space_in_it_that_goes_on_and_on_and_on_and_on_and_on_and_on_and_on_and_on_and_on |" +
            " *b* ";
        var pages = new PreviewPages(
            [Heading(1, text), new(PreviewKind.Paragraph, 0, "", [new(text), new(text, Strong: true), new(text, Picture: true)], []),
                Table(["A", "B", text], [text, "1", "2"])]);
        Assert.All(pages.Lines(width, Glyphs.Drawn), line => Assert.InRange(line.Sum(p => TextWidth.Of(p.Text)), 0, width));
    }

    [Fact]
    public void TheNextHeadingIsFoundAndTheLastOneStays()
    {
        var pages = new PreviewPages([Heading(1, "One"), Heading(2, "Two")]);
        _ = pages.Lines(20, Glyphs.Drawn);
        Assert.Equal([3, 3], [pages.HeadingAfter(0), pages.HeadingAfter(3)]);
    }

    private static List<string> Lines(int width, params PreviewBlock[] blocks) =>
        [.. new PreviewPages(blocks).Lines(width, Glyphs.Drawn).Select(l => string.Concat(l.Select(p => p.Text)).TrimEnd())];

    private static PreviewBlock Heading(int level, string text) => new(PreviewKind.Heading, level, "", [new(text)], []);

    private static PreviewBlock Table(params string[][] rows) =>
        new(PreviewKind.Table, 0, "", [], [.. rows.Select(r => r.Select(c => ImmutableArray.Create(new PreviewText(c))).ToImmutableArray())]);
}
