using System.Globalization;
using System.Xml.Linq;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Drawings;

/// <summary>Figures of a window's drawing, with the widths that its letters have in print: none over another, none past the edge.</summary>
public class FiguresStandClearTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    /// <summary>Widths of Helvetica in thousandths of its size, which Arial and Liberation Sans share: Adobe Core 14 font metrics, Helvetica.afm.</summary>
    private static readonly Dictionary<char, int> Widths = "0123456789".ToDictionary(c => c, _ => 556)
        .Concat(new Dictionary<char, int> { [' '] = 278, ['\u00a0'] = 278, ['m'] = 833, ['/'] = 278, ['"'] = 355, ['.'] = 278, [','] = 278, ['–'] = 556 })
        .ToDictionary();

    public static TheoryData<string> Samples => [.. SampleJobs.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void NoFigureIsOverAnotherOrPastTheEdge(string sample)
    {
        var drawn = SampleJobs.Data(sample).House.Windows
            .SelectMany(w => new[] { WindowElevation.Of(w, Words.English), WindowElevation.InBook(w, Words.English) })
            .Select(s => XDocument.Parse(s.Render("x")).Root!).ToList();
        var figures = drawn.ConvertAll(d => d.Elements(Ns + "text").Where(t => t.Value.All(Widths.ContainsKey)).Select(Place).ToList());
        Assert.Contains(figures, f => f.Count > 2);
        Assert.All(drawn.Zip(figures), d => Assert.All(d.Second, f => Assert.True(f.To <= Number(d.First.Attribute("viewBox")!.Value.Split(' ')[2]),
            $"{f.Text} goes past the edge.")));
        // A space's width between two, or they read as one.
        Assert.All(figures.SelectMany(f => f.SelectMany(a => f.Where(b => b.Y == a.Y && b.From > a.From).Select(b => (a, b)))),
            p => Assert.True(p.a.To + 0.278 * Svg.TextSize <= p.b.From, $"{p.a.Text} stands at {p.b.Text}."));
    }

    private static (string Text, double From, double To, double Y) Place(XElement text)
    {
        var wide = text.Value.Sum(c => Widths[c]) * Number(text.Attribute("font-size")!.Value) / 1000;
        var from = Number(text.Attribute("x")!.Value) - ((string?)text.Attribute("text-anchor") switch { "middle" => wide / 2, "end" => wide, _ => 0 });
        return (text.Value, from, from + wide, Number(text.Attribute("y")!.Value));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
