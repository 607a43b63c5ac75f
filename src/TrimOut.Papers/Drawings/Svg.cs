using System.Globalization;
using System.Text;
using TrimOut.Papers.Labels;

namespace TrimOut.Papers.Drawings;

/// <summary>A drawing in lines, boxes, circles and text, black on white. Sizes are in its own units: on paper about 0.25 mm each.</summary>
/// <remarks>It uses no ids, styles or references, so that many can stand in one page, and nothing typed can act as markup.</remarks>
internal sealed class Svg(double width, double height)
{
    /// <summary>Height of ordinary text, which is the least: 8 points, 2.82 mm, are 11.3 of these units.</summary>
    public const double TextSize = 11.5;

    /// <summary>The widest drawing that a column of text takes as large as it is: 178 mm on A4.</summary>
    public const double Widest = 712;

    /// <summary>What a phone of 375 px shows of a drawing without its being moved sideways: a legend is read at once.</summary>
    private const double Phone = 360;

    /// <summary>From one line of a legend to the next.</summary>
    public const double LegendLine = 14;

    private const string JpegBegins = "data:image/jpeg;base64,";

    private readonly StringBuilder _shapes = new(2048);

    /// <summary>Its width.</summary>
    public double Width { get; } = width;

    /// <summary>Its height.</summary>
    public double Height { get; private set; } = height;

    /// <summary>The sheet that it fills to the edges, in one word of ours; null for a drawing among text.</summary>
    public string? Part { get; init; }

    /// <summary>A straight line.</summary>
    public Svg Line(double x1, double y1, double x2, double y2, Pen pen = Pen.Thin)
    {
        _shapes.Append("<line x1=\"").Number(x1).Append("\" y1=\"").Number(y1).Append("\" x2=\"").Number(x2).Append("\" y2=\"").Number(y2);
        return End(pen);
    }

    /// <summary>A box.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="wide">Width.</param>
    /// <param name="high">Height.</param>
    /// <param name="pen">Its edge.</param>
    /// <param name="fill">Its inside.</param>
    /// <param name="part">What it stands for, in one word of ours, for whoever reads the drawing back; null for nothing.</param>
    public Svg Box(double x, double y, double wide, double high, Pen pen = Pen.Thin, Fill fill = Fill.None, string? part = null)
    {
        _shapes.Append("<rect").Part(part).Append(" x=\"").Number(x).Append("\" y=\"").Number(y)
            .Append("\" width=\"").Number(wide).Append("\" height=\"").Number(high)
            .Append(Shade(fill));
        return End(pen);
    }

    /// <summary>A circle.</summary>
    /// <param name="x">Its middle across.</param>
    /// <param name="y">Its middle down.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="pen">Its edge.</param>
    /// <param name="fill">Its inside.</param>
    /// <param name="part">What it stands for, in one word of ours, for whoever reads the drawing back; null for nothing.</param>
    public Svg Circle(double x, double y, double radius, Pen pen = Pen.Thin, Fill fill = Fill.None, string? part = null)
    {
        _shapes.Append("<circle").Part(part).Append(" cx=\"").Number(x).Append("\" cy=\"").Number(y).Append("\" r=\"").Number(radius).Append(Shade(fill));
        return End(pen);
    }

    /// <summary>Lines from point to point.</summary>
    public Svg Path(ReadOnlySpan<(double X, double Y)> points, Pen pen = Pen.Thin)
    {
        _shapes.Append("<polyline points=\"");
        for (var at = 0; at < points.Length; at++)
            _shapes.Append(at == 0 ? "" : " ").Number(points[at].X).Append(',').Number(points[at].Y);
        _shapes.Append("\" fill=\"none");
        return End(pen);
    }

    /// <summary>Text on one line, cut with an ellipsis where it would be longer than there is room.</summary>
    /// <param name="x">Where it starts, ends or is centred.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="text">The text, as typed.</param>
    /// <param name="at">What x is.</param>
    /// <param name="size">Height.</param>
    /// <param name="room">The width that there is; null where there is enough.</param>
    /// <param name="bold">Whether it is bold.</param>
    /// <param name="part">What it stands for, in one word of ours, for whoever reads the drawing back; null for nothing.</param>
    public Svg Text(double x, double y, string text, Anchored at = Anchored.Start, double size = TextSize, double? room = null, bool bold = false,
        string? part = null)
    {
        _shapes.Append("<text").Part(part).Append(" x=\"").Number(x).Append("\" y=\"").Number(y).Append("\" font-size=\"").Number(size)
            .Append(at switch { Anchored.Middle => "\" text-anchor=\"middle", Anchored.End => "\" text-anchor=\"end", _ => "" })
            .Append(bold ? "\" font-weight=\"bold\">" : "\">")
            .Xml(room is { } wide ? Cut(text, wide, size, bold) : text)
            .Append("</text>");
        return this;
    }

    /// <summary>Whether a rendered drawing holds a picture.</summary>
    public static bool HoldsAPicture(string rendered) => rendered.Contains(JpegBegins, StringComparison.Ordinal);

    /// <summary>A picture, inside the drawing itself.</summary>
    public Svg Jpeg(double x, double y, double wide, double high, ReadOnlySpan<byte> jpeg)
    {
        _shapes.Append("<image x=\"").Number(x).Append("\" y=\"").Number(y)
            .Append("\" width=\"").Number(wide).Append("\" height=\"").Number(high).Append("\" href=\"" + JpegBegins)
            .Append(Convert.ToBase64String(jpeg)).Append("\"/>");
        return this;
    }

    /// <summary>Lines that say what the marks of a drawing mean, one below the other.</summary>
    /// <param name="x">Where they start.</param>
    /// <param name="y">The base line of the first.</param>
    /// <param name="lines">The lines.</param>
    public Svg Legend(double x, double y, params IEnumerable<string> lines)
    {
        var room = Math.Min(Width, Phone) - x - 2;
        foreach (var line in lines.SelectMany(l => Wrapped.Lines(l, room)))
        {
            Text(x, y, line, room: room, part: "legend");
            Height = Math.Max(Height, y + 6);
            y += LegendLine;
        }
        return this;
    }

    /// <summary>The dark fields of a code, those beside each other as one: a single path, in whole numbers.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="field">Side of one field.</param>
    /// <param name="code">The code.</param>
    public Svg Fields(double x, double y, double field, QrCode code)
    {
        _shapes.Append("<path transform=\"translate(").Number(x).Append(' ').Number(y).Append(") scale(")
            .Append(CultureInfo.InvariantCulture, $"{field:0.####}").Append(")\" d=\"");
        for (var row = 0; row < code.Side; row++)
        {
            for (var from = 0; from < code.Side; from++)
            {
                var to = from;
                while (to < code.Side && code.Dark(row, to))
                    to++;
                if (to > from)
                    _shapes.Append('M').Whole(from).Append(',').Whole(row).Append('h').Whole(to - from).Append("v1h-").Whole(to - from).Append('z');
                from = to;
            }
        }
        _shapes.Append("\" fill=\"#000\" shape-rendering=\"crispEdges\"/>");
        return this;
    }

    /// <summary>The drawing.</summary>
    /// <param name="description">What it shows, for whoever can't see it.</param>
    public string Render(string description)
    {
        var svg = new StringBuilder(_shapes.Length + 2 * description.Length + 320)
            .Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 ").Number(Width).Append(' ').Number(Height)
            .Append("\" width=\"").Number(Width / 4).Append("mm\" height=\"").Number(Height / 4)
            .Append("mm\"").Part(Part).Append(Width > Phone ? " data-wide=\"\"" : "")
            .Append(" font-family=\"Arial, Liberation Sans, DejaVu Sans, sans-serif\"><title>").Xml(description)
            .Append("</title>").Append(_shapes);
        return svg.Append("</svg>").ToString();
    }

    /// <summary>How wide a text is, about: fonts differ, so this is on the wide side.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Its height.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static double WidthOf(string text, double size = TextSize, bool bold = false) => Letters(text) * size * PerLetter(bold);

    private static double PerLetter(bool bold) => bold ? 0.64 : 0.58;

    private static string Cut(string text, double room, double size, bool bold)
    {
        if (WidthOf(text, size, bold) <= room)
            return text;
        var kept = Math.Max(1, (int)(room / (size * PerLetter(bold))) - 1);
        return kept >= Letters(text) ? text : Ascii.IsValid(text) ? text[..kept] + "…" : new StringInfo(text).SubstringByTextElements(0, kept) + "…";
    }

    private static int Letters(string text) => Ascii.IsValid(text) ? text.Length : new StringInfo(text).LengthInTextElements;

    private Svg End(Pen pen)
    {
        _shapes.Append(pen switch
        {
            Pen.None => "\"/>",
            Pen.Hair => "\" stroke=\"#000\" stroke-width=\"0.5\"/>",
            Pen.Thick => "\" stroke=\"#000\" stroke-width=\"2.4\"/>",
            Pen.Dashed => "\" stroke=\"#000\" stroke-width=\"1.2\" stroke-dasharray=\"5 3\"/>",
            _ => "\" stroke=\"#000\" stroke-width=\"1\"/>",
        });
        return this;
    }

    private static string Shade(Fill fill) => fill switch
    {
        Fill.White => "\" fill=\"#fff",
        Fill.Light => "\" fill=\"#e8e8e8",
        Fill.Black => "\" fill=\"#000",
        _ => "\" fill=\"none",
    };
}
