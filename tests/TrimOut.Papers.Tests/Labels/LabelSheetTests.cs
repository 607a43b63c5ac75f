using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TrimOut.Core.Facts;
using TrimOut.Papers.Labels;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>Codes are read back by ZXing from the shapes of the drawing itself, as a phone would from paper.</summary>
public partial class LabelSheetTests
{
    [Fact]
    public void EveryLabelOfASheetIsReadBack()
    {
        var paper = LabelSheet.Paper.Write(FinishedHouse.Data());
        var codes = paper.Drawings.Values.SelectMany(Codes).ToList();
        Assert.Equal(["W01;window;P1-W01", "W01;panel;P1-W01", "W02A;window;P1-W02A", "W02A;panel;P1-W02A", "W02B;window;P1-W02B", "W02B;panel;P1-W02B"], codes);
    }

    [Theory]
    [InlineData("é 窓 🪟")]
    [InlineData("0123456789012345678901234567890123456789")]
    [InlineData("A|B;C")]
    public void ALabelOfAnyLettersIsReadBack(string label)
    {
        var job = FinishedHouse.Build();
        job.Say("W01", RunFacts.LabelAtWindow, label);
        Assert.Equal($"W01;window;{label}", LabelSheet.Paper.Write(FinishedHouse.Data(job.House)).Drawings.Values.SelectMany(Codes).First());
    }

    [Fact]
    public void BothEndsOfEveryRunAreInTheTableForThePrinter()
    {
        var rows = CsvWriterTests.Read(LabelSheet.Paper.Csv!(FinishedHouse.Data()));
        Assert.Equal(["unit", "room", "end", "label", "panel", "output", "cable", "code"], rows[0]);
        Assert.Equal(["W01", "Kitchen", "window", "P1-W01", "P1", "1", "16/2", "W01;window;P1-W01"], rows[1]);
        Assert.Equal(1 + 2 * 3, rows.Count);
    }

    private static IEnumerable<string> Codes(string svg) => XDocument.Parse(svg).Descendants()
        .Where(e => e.Name.LocalName == "path")
        .Select(e => Decode(e.Attribute("d")!.Value));

    /// <summary>Paints the boxes of a path on white, four dots to a field, and has the picture decoded.</summary>
    private static string Decode(string path)
    {
        var boxes = Box().Matches(path).Select(m => (X: N(m, "x"), Y: N(m, "y"), Wide: N(m, "w"), High: N(m, "h"))).ToList();
        var field = boxes[0].High;
        var (left, top) = (boxes.Min(b => b.X) - 4 * field, boxes.Min(b => b.Y) - 4 * field);
        const int Dots = 4;
        int Dot(decimal at, decimal from) => (int)Math.Round((at - from) / field * Dots);
        var side = Dot(boxes.Max(b => b.X + b.Wide) + 4 * field, left);
        var gray = new byte[side * side];
        Array.Fill(gray, (byte)255);
        foreach (var box in boxes)
        {
            for (var y = Dot(box.Y, top); y < Dot(box.Y + box.High, top); y++)
                Array.Fill(gray, (byte)0, y * side + Dot(box.X, left), Dot(box.Wide, 0));
        }
        var picture = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(gray, side, side, RGBLuminanceSource.BitmapFormat.Gray8)));
        return new QRCodeReader().decode(picture, new Dictionary<DecodeHintType, object> { [DecodeHintType.CHARACTER_SET] = "UTF-8" })?.Text ?? "(not readable)";
    }

    private static decimal N(Match box, string name) => decimal.Parse(box.Groups[name].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex("M(?<x>[0-9.]+),(?<y>[0-9.]+)h(?<w>[0-9.]+)v(?<h>[0-9.]+)h-[0-9.]+z")]
    private static partial Regex Box();
}
