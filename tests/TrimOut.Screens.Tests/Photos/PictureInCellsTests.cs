using TrimOut.Screens.Frames;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests.Photos;

public class PictureInCellsTests
{
    /// <summary>The left half white, the right half black.</summary>
    private static CellPicture Halves(int wide, int high) =>
        new(wide, high, [.. Enumerable.Range(0, wide * high).SelectMany(at => Enumerable.Repeat((byte)(at % wide < wide / 2 ? 255 : 0), 3))]);

    private static Frame Drawn(CellPicture picture, Glyphs glyphs, int width = 20, int height = 10)
    {
        var frame = new Frame(width, height);
        PictureInCells.Draw(frame.All, picture, glyphs);
        return frame;
    }

    [Theory]
    [InlineData(40, 40, 20, 10)]
    [InlineData(100, 10, 20, 1)]
    [InlineData(10, 100, 2, 10)]
    [InlineData(2, 2, 20, 10)]
    public void ACellIsTwiceAsHighAsWide(int wide, int high, int columns, int rows)
    {
        var frame = Drawn(Halves(wide, high), Glyphs.Drawn);
        var rowsWith = Enumerable.Range(0, frame.Height).Select(y => frame.Row(y).ToArray().Count(c => c.Tint is not null)).Where(n => n > 0).ToList();
        Assert.Equal(Enumerable.Repeat(columns, rows), rowsWith);
    }

    [Fact]
    public void WithoutColoursItIsSeenByShadesOfLight()
    {
        var frame = Drawn(Halves(40, 40), Glyphs.Ascii);
        Assert.All(Enumerable.Range(0, 10), y => Assert.Equal(new string('@', 10), string.Concat(frame.Row(y).ToArray().Select(c => c.Text)).TrimEnd()));
        Assert.DoesNotContain("\u2580",
            FrameWriter.Between(null, frame, Look.Dark, ColourDepth.Full), StringComparison.Ordinal);
    }

    // ECMA-48 8.3.117 (SGR), and the colours of ISO 8613-6 (38 and 48) as xterm writes them.
    [Fact]
    public void TheTerminalGetsAsManyColoursAsItHas()
    {
        var frame = Drawn(new CellPicture(1, 2, [200, 10, 20, 30, 40, 250]), Glyphs.Drawn, 1, 1);
        Assert.Contains("\u001b[0;38;2;200;10;20;48;2;30;40;250m\u2580",
            FrameWriter.Between(null, frame, Look.Dark, ColourDepth.Full), StringComparison.Ordinal);
        Assert.Contains("\u001b[0;38;5;160;48;5;21m\u2580",
            FrameWriter.Between(null, frame, Look.Dark, ColourDepth.Many), StringComparison.Ordinal);
        Assert.All(new[] { FrameWriter.Between(null, frame, Look.Dark, ColourDepth.Sixteen), FrameWriter.Between(null, frame, Look.Plain, ColourDepth.Full) },
            sent => Assert.DoesNotContain("\u2580", sent, StringComparison.Ordinal));
    }

    [Fact]
    public void WhatStandsBehindAPictureHasItsOwnColoursAgain()
    {
        var frame = new Frame(3, 1);
        frame.All.Put(0, 0, "a.b");
        frame.SetTint(1, 0, "#", new Tint(new Dot(1, 2, 3), new Dot(4, 5, 6)));
        var sent = FrameWriter.Between(null, frame, Look.Dark, ColourDepth.Full);
        Assert.Equal(2, sent.Split(Palette.Of(Look.Dark, Tone.Text).Sequence(ColourDepth.Full)).Length - 1);
    }

    // The nearest of xterm's 240 fixed colours, found by trying all of them.
    [Fact]
    public void TheNearestColourIsNearlyTheNearestOfAll()
    {
        var steps = Enumerable.Range(0, 18).Select(s => s * 15);
        foreach (var (r, g, b) in from r in steps from g in steps from b in steps select (r, g, b))
        {
            var best = Enumerable.Range(16, 240).Min(i => Away((byte)i));
            Assert.InRange(Away(new Dot((byte)r, (byte)g, (byte)b).Nearest), best, best + 1200);

            int Away(byte index) => Paint.Rgb(index) is var (x, y, z) ? (x - r) * (x - r) + (y - g) * (y - g) + (z - b) * (z - b) : 0;
        }
    }
}
