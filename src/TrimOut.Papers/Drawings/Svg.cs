using System.Globalization;
using System.Text;

namespace TrimOut.Papers.Drawings;

/// <summary>A drawing in lines, boxes, circles and text, black on white. Sizes are in its own units: on paper about 0.25 mm each.</summary>
/// <remarks>It uses no ids, styles or references, so that many can stand in one page, and nothing typed can act as markup.</remarks>
internal sealed class Svg(decimal width, decimal height)
{
    /// <summary>Height of ordinary text.</summary>
    public const decimal TextSize = 11;

    private readonly StringBuilder _shapes = new();

    /// <summary>Its width.</summary>
    public decimal Width { get; } = width;

    /// <summary>Its height.</summary>
    public decimal Height { get; } = height;

    /// <summary>A straight line.</summary>
    public Svg Line(decimal x1, decimal y1, decimal x2, decimal y2, Pen pen = Pen.Thin) =>
        Add($"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\"{Stroke(pen)}/>");

    /// <summary>A box.</summary>
    public Svg Box(decimal x, decimal y, decimal wide, decimal high, Pen pen = Pen.Thin, Fill fill = Fill.None) =>
        Add($"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(wide)}\" height=\"{N(high)}\"{Shade(fill)}{Stroke(pen)}/>");

    /// <summary>A circle.</summary>
    public Svg Circle(decimal x, decimal y, decimal radius, Pen pen = Pen.Thin, Fill fill = Fill.None) =>
        Add($"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\"{Shade(fill)}{Stroke(pen)}/>");

    /// <summary>Lines from point to point.</summary>
    public Svg Path(ReadOnlySpan<(decimal X, decimal Y)> points, Pen pen = Pen.Thin)
    {
        var path = new StringBuilder();
        foreach (var (x, y) in points)
            path.Append(path.Length == 0 ? "" : " ").Append(N(x)).Append(',').Append(N(y));
        return Add($"<polyline points=\"{path}\" fill=\"none\"{Stroke(pen)}/>");
    }

    /// <summary>Text on one line, cut with an ellipsis where it would be longer than there is room.</summary>
    /// <param name="x">Where it starts, ends or is centred.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">The text, as typed.</param>
    /// <param name="at">What x is.</param>
    /// <param name="size">Height.</param>
    /// <param name="room">The width that there is; null where there is enough.</param>
    /// <param name="bold">Whether it is bold.</param>
    public Svg Text(decimal x, decimal y, string text, Anchored at = Anchored.Start, decimal size = TextSize, decimal? room = null, bool bold = false)
    {
        var anchor = at switch { Anchored.Middle => " text-anchor=\"middle\"", Anchored.End => " text-anchor=\"end\"", _ => "" };
        return Add($"<text x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(size)}\"{anchor}{(bold ? " font-weight=\"bold\"" : "")}>{Xml(room is { } wide ? Cut(text, wide, size) : text)}</text>");
    }

    /// <summary>A squarish pattern of dark fields, such as a QR code.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="field">Side of one field.</param>
    /// <param name="dark">Rows of fields, true where dark.</param>
    public Svg Fields(decimal x, decimal y, decimal field, IReadOnlyList<System.Collections.BitArray> dark)
    {
        var path = new StringBuilder();
        for (var row = 0; row < dark.Count; row++)
        {
            for (var from = 0; from < dark[row].Count; from++)
            {
                var to = from;
                while (to < dark[row].Count && dark[row][to])
                    to++;
                if (to > from)
                    path.Append(CultureInfo.InvariantCulture, $"M{N(x + from * field)},{N(y + row * field)}h{N((to - from) * field)}v{N(field)}h{N((from - to) * field)}z");
                from = to;
            }
        }
        return Add($"<path d=\"{path}\" fill=\"#000\" shape-rendering=\"crispEdges\"/>");
    }

    /// <summary>The drawing.</summary>
    /// <param name="description">What it shows, for whoever can't see it.</param>
    public string Render(string description) =>
        $"""<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 {N(Width)} {N(Height)}" width="{N(Width / 4)}mm" height="{N(Height / 4)}mm" font-family="Arial, Liberation Sans, DejaVu Sans, sans-serif"><title>{Xml(description)}</title>{_shapes}</svg>""";

    /// <summary>How wide a text is, about: fonts differ, so this is on the wide side.</summary>
    public static decimal WidthOf(string text, decimal size = TextSize) => new StringInfo(text).LengthInTextElements * size * 0.58m;

    private static string Cut(string text, decimal room, decimal size)
    {
        if (WidthOf(text, size) <= room)
            return text;
        var elements = new StringInfo(text);
        var kept = Math.Max(1, (int)(room / (size * 0.58m)) - 1);
        return kept >= elements.LengthInTextElements ? text : elements.SubstringByTextElements(0, kept) + "…";
    }

    private Svg Add(string shape)
    {
        _shapes.Append(shape);
        return this;
    }

    private static string Stroke(Pen pen) => pen switch
    {
        Pen.None => "",
        Pen.Hair => " stroke=\"#000\" stroke-width=\"0.5\"",
        Pen.Thick => " stroke=\"#000\" stroke-width=\"2.4\"",
        Pen.Dashed => " stroke=\"#000\" stroke-width=\"1.2\" stroke-dasharray=\"5 3\"",
        _ => " stroke=\"#000\" stroke-width=\"1\"",
    };

    private static string Shade(Fill fill) => fill switch
    {
        Fill.White => " fill=\"#fff\"",
        Fill.Light => " fill=\"#e8e8e8\"",
        Fill.Black => " fill=\"#000\"",
        _ => " fill=\"none\"",
    };

    private static string N(decimal number) => Math.Round(number, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Xml(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '<': safe.Append("&lt;"); break;
                case '>': safe.Append("&gt;"); break;
                case '&': safe.Append("&amp;"); break;
                case '"': safe.Append("&quot;"); break;
                case 0xFFFE or 0xFFFF: safe.Append('\uFFFD'); break;
                case var _ when Rune.IsControl(rune): safe.Append(' '); break;
                default: safe.Append(rune); break;
            }
        }
        return safe.ToString();
    }
}
