using System.Text.RegularExpressions;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests;

public partial class FrameWriterTests
{
    [Fact]
    public void NothingIsWrittenWhereNothingChanged() =>
        Assert.Equal("", FrameWriter.Between(Filled(1), Filled(1), Look.Dark, ColourDepth.Many));

    [Fact]
    public void WhatIsWrittenMakesTheOneScreenOutOfTheOther()
    {
        for (var seed = 1; seed < 300; seed++)
        {
            var (from, to) = (Filled(seed), Filled(seed + 1000));
            var terminal = new Dictionary<(int, int), string>();
            Apply(terminal, FrameWriter.Between(null, from, Look.Dark, ColourDepth.Many));
            Apply(terminal, FrameWriter.Between(from, to, Look.Dark, ColourDepth.Many));
            Assert.Equal(to.ToText(), Text(terminal, to));
        }
    }

    [Fact]
    public void AOneRowMoveIsShort()
    {
        var (from, to) = (List(4), List(5));
        Assert.InRange(FrameWriter.Between(from, to, Look.Dark, ColourDepth.Many).Length, 1, 300);
    }

    [Fact]
    public void WhereTheTextFieldLiesNothingIsWritten()
    {
        var (from, to) = (new Frame(20, 2), new Frame(20, 2));
        from.All.Put(0, 0, "Tail: 14");
        to.All.Put(0, 0, "Tail: 16");
        (from.Slot, to.Slot) = (new Slot(6, 0, 14), new Slot(6, 0, 14));
        Assert.Equal("", FrameWriter.Between(from, to, Look.Dark, ColourDepth.Many));
        to.Slot = null;
        Assert.Contains("16", FrameWriter.Between(from, to, Look.Dark, ColourDepth.Many), StringComparison.Ordinal);
    }

    private static Frame List(int selected)
    {
        var frame = new Frame(80, 24);
        for (var y = 0; y < 24; y++)
            frame.All.PutFit(0, y, 38, $" W{y:00}  Roller", y == selected ? Tone.Selected : Tone.Text);
        return frame;
    }

    /// <summary>A screen of words, wide ones among them, by a fixed rule from the seed.</summary>
    private static Frame Filled(int seed)
    {
        var random = new Random(seed);
        var frame = new Frame(30, 6);
        string[] words = ["tail", "台所", "W07", " ", "e\u0301tage", "16/2", "居間 "];
        for (var n = 0; n < 14; n++)
            frame.All.Put(random.Next(28), random.Next(6), words[random.Next(words.Length)], (Tone)random.Next(13));
        return frame;
    }

    /// <summary>As much of a terminal as the writer uses: jumps, colours that are passed over, and text.</summary>
    private static void Apply(Dictionary<(int X, int Y), string> terminal, string text)
    {
        var (x, y) = (0, 0);
        foreach (Match part in Parts().Matches(text))
        {
            if (part.Groups["row"].Success)
                (x, y) = (int.Parse(part.Groups["column"].Value, System.Globalization.CultureInfo.InvariantCulture) - 1,
                    int.Parse(part.Groups["row"].Value, System.Globalization.CultureInfo.InvariantCulture) - 1);
            if (!part.Groups["text"].Success)
                continue;
            foreach (var (grapheme, columns) in TextWidth.Graphemes(part.Groups["text"].Value))
            {
                terminal[(x, y)] = grapheme;
                if (columns == 2)
                    terminal[(x + 1, y)] = "";
                x += columns;
            }
        }
    }

    private static string Text(Dictionary<(int X, int Y), string> terminal, Frame like) =>
        string.Concat(Enumerable.Range(0, like.Height)
            .Select(y => string.Concat(Enumerable.Range(0, like.Width).Select(x => terminal[(x, y)])).TrimEnd() + "\n"));

    [GeneratedRegex("\u001b\\[(?<row>\\d+);(?<column>\\d+)H|\u001b\\[[\\d;]*m|\u001b[78]|(?<text>[^\u001b]+)")]
    private static partial Regex Parts();
}
