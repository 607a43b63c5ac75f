using System.CommandLine;
using TrimOut.Core.Units;
using TrimOut.Papers;

namespace TrimOut.Verbs;

/// <summary>The options of verbs that write papers as PDF too.</summary>
internal sealed class PrintOptions
{
    /// <summary>Whether to write a PDF.</summary>
    public Option<bool> Pdf { get; } = new("--pdf")
    {
        Description = "Also write each as PDF, printed by a browser of the Chromium family that is on this machine.",
    };

    /// <summary>The sheets.</summary>
    public Option<string?> Size { get; } = new("--size")
    {
        Description = "The sheets of the PDF; left out, letter for a house in inches and A4 for one in millimeters.",
        HelpName = "A4|letter",
    };

    /// <summary>Which browser prints.</summary>
    public Option<string?> Browser { get; } = new("--browser") { Description = "The program of the browser; looked for when left out.", HelpName = "file" };

    /// <summary>The options.</summary>
    public PrintOptions() => Size.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, "A4", "letter");

    /// <summary>What makes the PDF of a paper; null where none was asked for.</summary>
    /// <exception cref="VerbException">There is no browser.</exception>
    public Func<WrittenPaper, byte[]>? Printer(ParseResult parsed, PaperData data)
    {
        if (!parsed.GetValue(Pdf))
        {
            return parsed.GetValue(Browser) is not { } idle ? null
                : throw new VerbException(ExitCode.Usage, $"{idle} would print a PDF, and none is asked for. To have one: --pdf");
        }
        var browser = Printing.Browser.Find(parsed.GetValue(Browser));
        var size = parsed.GetValue(Size) is { } named ? Named(named) : UsualFor(data.House.DisplayUnits);
        return browser.Printer(size, data.Stop);
    }

    /// <summary>The sheets that were named.</summary>
    public static SheetSize Named(string size) => Enum.Parse<SheetSize>(size, ignoreCase: true);

    /// <summary>The sheets of a house where nobody says which.</summary>
    public static SheetSize UsualFor(DisplayUnits units) => units == DisplayUnits.Millimetres ? SheetSize.A4 : SheetSize.Letter;
}
