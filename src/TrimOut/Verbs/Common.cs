using System.CommandLine;
using TrimOut.Core;
using TrimOut.Desks;
using TrimOut.HouseFile;

namespace TrimOut.Verbs;

/// <summary>Arguments and options that several verbs have.</summary>
internal static class Common
{
    /// <summary>A house that is only looked at.</summary>
    public static Argument<string> AnyHouse() => new("HOUSE") { Description = "A .trimout file, or a folder with a history as text." };

    /// <summary>A house that is worked on.</summary>
    public static Argument<string> House() => new("HOUSE") { Description = "A .trimout file." };

    /// <summary>Whether to go on with a house whose journal is damaged.</summary>
    public static Option<bool> GoOn { get; } = new("--go-on")
    {
        Description = "Go on with what is sound of a house whose journal is damaged; ends with 2 then.",
    };

    /// <summary>Whose changes are written.</summary>
    public static Option<string> By()
    {
        var by = new Option<string>("--by")
        {
            Description = "Who does this; stands in the history. Left out: who the screens were told works here, else your login name.",
            HelpName = "name",
            DefaultValueFactory = _ => Settings.Read().By ?? LoginName.Now,
        };
        // What is no UTF-8 comes as this character, and the history would keep that for ever in place of a name.
        by.Validators.Add(result =>
        {
            if (result.Tokens.Any(t => t.Value.Contains('\ufffd', StringComparison.Ordinal)))
            {
                result.AddError("--by: the name has bytes that are no UTF-8, so it can't be kept as you wrote it. "
                    + "Type it in a terminal that is set to UTF-8, or in plain letters.");
            }
        });
        return by;
    }

    /// <summary>An option's value where somebody gave it; null where it was left out.</summary>
    public static string? Given(ParseResult parsed, Option<string> option) => parsed.GetResult(option) is { Implicit: false } ? parsed.GetValue(option) : null;

    /// <summary>A house file's name, with its ending.</summary>
    public static string WithEnding(string path) => path.EndsWith(".trimout", StringComparison.OrdinalIgnoreCase) ? path : path + ".trimout";

    /// <summary>
    /// Writes a row of data with tabs between its cells. A line end or a tab in a cell would begin a row or a cell that nobody wrote: it is written out.
    /// </summary>
    public static void Row(params IEnumerable<string> cells) => Console.Out.WriteLine(string.Join('\t', cells.Select(ShownText.Line)));

    /// <summary>Says something to the user that is no data.</summary>
    public static void Say(string text) => Console.Error.WriteLine(text);
}
