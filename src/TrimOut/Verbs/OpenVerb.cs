using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.Screens;
using TrimOut.Screens.Shell;

namespace TrimOut.Verbs;

/// <summary><c>trimout open</c>: the screens, with a house.</summary>
internal static class OpenVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("HOUSE")
        {
            Description = "A .trimout file, or a folder with a sample job: of that a house file of your own is " +
            "made the first time."
        };
        var read = new Option<bool>("--read-only") { Description = "View only; goes also while another program has the house open." };
        var (by, mouse) = (Common.By(), MouseOption.Build());
        var verb = new Command("open", "Open a house on the screens.") { path, read, by, mouse, Common.GoOn };
        verb.SetAction(parsed => Run(Common.Given(parsed, by), parsed.GetValue(mouse), parsed.GetRequiredValue(path),
            parsed.GetValue(read) || parsed.GetValue(Common.GoOn), parsed.GetValue(Common.GoOn)));
        return verb;
    }

    /// <summary>Shows the screens.</summary>
    /// <param name="by">Whose changes are written; null where nobody said so on the command line.</param>
    /// <param name="mouse">Whether the mouse is taken, as the option says; null where it was left out.</param>
    /// <param name="path">The house to begin with; null begins with the house picker.</param>
    /// <param name="toRead">Whether the house is only looked at.</param>
    /// <param name="goOn">Whether a house whose journal is damaged is shown as far as it is sound.</param>
    public static int Run(string? by, string? mouse, string? path = null, bool toRead = false, bool goOn = false)
    {
        if (OpenScreens.CannotBecause() is { } because)
            throw new VerbException(ExitCode.NoTerminal, because);
        var library = Task.Run(OpenScreens.GetReady);
        var unclear = new List<string>();
        var desk = new Desk(by, goOn: goOn, mouse: MouseOption.Of(mouse, Environment.GetEnvironmentVariable(MouseOption.Variable), unclear.Add));
        desk.Remarks.AddRange(unclear);
        var (house, held) = path is null ? (null, null) : Begin(desk, path, toRead);
        library.Wait();
        return Ended(Streams.Bare(() => OpenScreens.Run(desk, house, held)), desk.Remarks, desk.Unsaved);
    }

    /// <summary>What to end with when the screens are gone.</summary>
    /// <param name="fault">What to say of the fault that stopped them; null when the user left.</param>
    /// <param name="remarks">What the user should hear.</param>
    /// <param name="unsaved">What is not on the disk.</param>
    internal static int Ended(string? fault, IReadOnlyList<string> remarks, IReadOnlyList<string> unsaved)
    {
        foreach (var lost in unsaved)
            Common.Say($"NOT SAVED: {lost}");
        if (fault is not null)
            throw new VerbException(ExitCode.Fault, fault);
        foreach (var remark in remarks)
            Common.Say(remark);
        return unsaved.Count == 0 ? ExitCode.Fine : ExitCode.Disk;
    }

    private static (Scribe? House, LockedHouse? Held) Begin(Desk desk, string path, bool toRead)
    {
        var opened = toRead ? desk.OpenToRead(path) : desk.Open(path);
        return !opened.Ok && desk.CanStillLook ? (null, new LockedHouse(path, opened.Reason!)) : (opened.OrEnd(desk.Fault), null);
    }
}
