using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.Screens;

namespace TrimOut.Verbs;

/// <summary><c>trimout open</c>: the screens, with a house.</summary>
internal static class OpenVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("HOUSE") { Description = "A .trimout file, or a folder with a sample job: of that a house file of your own is made the first time." };
        var read = new Option<bool>("--read-only") { Description = "Only look; goes also while another program has the house open." };
        var by = Common.By();
        var verb = new Command("open", "Open a house on the screens.") { path, read, by };
        verb.SetAction(parsed => Run(parsed.GetValue(by)!, desk => parsed.GetValue(read) ? desk.OpenToRead(parsed.GetRequiredValue(path)) : desk.Open(parsed.GetRequiredValue(path))));
        return verb;
    }

    /// <summary>Shows the screens.</summary>
    /// <param name="by">Whose changes are written.</param>
    /// <param name="open">Opens the house to begin with; null begins with the house picker.</param>
    public static int Run(string by, Func<Desk, Core.Result<Scribe>>? open)
    {
        if (OpenScreens.CannotBecause() is { } because)
            throw new VerbException(ExitCode.NoTerminal, because);
        var desk = new Desk(by);
        var house = open is null ? null : open(desk).OrEnd(desk.Fault);
        if (OpenScreens.Run(desk, house) is { } failed)
            throw new VerbException(ExitCode.NoTerminal, failed);
        foreach (var remark in desk.Remarks)
            Common.Say(remark);
        return ExitCode.Fine;
    }
}
