using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Controls;
using TrimOut.Screens.Figures;
using TrimOut.Screens.History;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Panels;
using TrimOut.Screens.Papers;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Walk;
using TrimOut.Screens.WhatIf;

namespace TrimOut.Screens.Shell;

/// <summary>The keys that mean the same on every screen.</summary>
internal static class CommonKeys
{
    private static readonly IReadOnlyList<(string Key, string Name, string Help, Func<ScreenContext, IScreen, IScreen> Make)> Screens =
    [
        ("1", "Job sheet", "All units by room, with one mark for each phase.", (c, _) => JobSheetScreen.At(c)),
        ("2", "Walk",
            "One phase, unit after unit, step after step: the one walked last, else the one shown on the job sheet, else that of the unit under the cursor.",
            WalkScreen.From),
        ("3", "Panels", "The outputs in the mechanical room.", (c, _) => PanelsScreen.At(c)),
        ("4", "Cables", "Home runs: lengths, volts, tests.", (c, _) => CablesScreen.At(c)),
        ("5", "Controls", "Hubs, remotes and presets: which remote moves which unit.", (c, _) => ControlsScreen.At(c)),
        ("6", "Punch list", "What is to be fixed, waived or agreed.", (c, _) => PunchScreen.At(c)),
        ("7", "Papers", "What can be printed: look at it, write it.", (c, _) => PapersScreen.At(c)),
        ("8", "History", "Who changed what, and when.", (c, _) => HistoryScreen.At(c)),
        ("9", "Kit", "What the makers' sheets say, to be checked against them.", (c, _) => KitScreen.At(c)),
        ("0", "House", "Client, address, dates, units, crew, sign-off.", (c, _) => SheetScreen.OfHouse(c.House)),
    ];

    /// <summary>The main screens, on the digits.</summary>
    public static readonly IReadOnlyList<KeyAction<IScreen>> Sections =
        [.. Screens.Select(screen =>
            new KeyAction<IScreen>(screen.Key, screen.Name, screen.Help, (s, _) => new Transition(s, new Ask.Section(context => screen.Make(context, s))))
                { OnBar = false })];

    private static readonly IReadOnlyList<IKeyAction> Always =
    [
        new KeyAction<IScreen>("?", "Keys", "Shows the keys of this screen.", (s, _) => new Transition(s, new Ask.Help())),
        new KeyAction<IScreen>("esc", "Back", "Goes one step back; never leaves the program.", (s, _) => new Transition(s, new Ask.Back())) { OnBar = false },
        new KeyAction<IScreen>("L", "Look", "Changes the look: dark, sunlight, plain.", (s, _) => new Transition(s, new Ask.NextLook())) { OnBar = false },
        new KeyAction<IScreen>(ShellState.MouseKey, "Mouse",
            "Leaves the mouse to the terminal, to select text with, or takes it back for clicks and the wheel; remembered.",
            (s, _) => new Transition(s, new Ask.SwitchMouse())) { OnBar = false },
        new KeyAction<IScreen>(ShellState.RedrawKey, "Redraw", "Draws the whole terminal again, also while something is typed.", (s, _) => new Transition(s))
            { OnBar = false },
        new KeyAction<IScreen>(ShellState.MoreKey, "Next part",
            "Shows the next part of a message that is too long for its place, also while something is typed.",
            (s, _) => Transition.Say(s, "No message here is longer than its place.")) { OnBar = false },
        new KeyAction<IScreen>("f3", "Your name", "Says who is working here: the name stands beside every change.",
            (s, _) => new Transition(s, new Ask.AskWho())) { OnBar = false },
        new KeyAction<IScreen>("q", "Leave", "Leaves TrimOut after a question that says whether all is saved.", (s, _) => new Transition(s, new Ask.Leave()))
            { OnBar = false },
    ];

    private static readonly KeyAction<IScreen> Copy = new("Y", "Copy", "Hands the tag, what is wrong, or the whole list to the terminal's clipboard.",
        (s, context) => Transition.Type(s, Copying.Choice(s, context)))
    { Disabled = Copying.NotBecause, OnBar = false };

    private static readonly IReadOnlyList<IKeyAction> WithHouse =
    [
        new KeyAction<IScreen>("u", "Undo", "Shows this laptop's latest change and takes it back.", (s, _) => new Transition(s, new Ask.Undo()))
            { Disabled = OnlyToLookAt, OnBar = false },
        new KeyAction<IScreen>("U", "Redo", "Brings back what was undone.", (s, _) => new Transition(s, new Ask.Redo()))
            { Disabled = OnlyToLookAt, OnBar = false, Also = ["ctrl+r"] },
        new KeyAction<IScreen>(ShellState.ElsewhereKey, "Write elsewhere",
            "Asks where, writes the whole house to that new file and goes on there: for when its own can't be saved to.",
            (s, _) => new Transition(s, new Ask.Elsewhere())) { OnBar = false },
        new KeyAction<IScreen>("=", "What if", "What arrives over a cable, beginning with the figures of the unit under the cursor.",
            (s, context) => Transition.Open(s, WhatIfScreen.At(context, (s as IAsked)?.UnitAt(context)))) { OnBar = false },
        new KeyAction<IScreen>("y", "Workings", "Where the figures of what is under the cursor come from: formula, inputs, source.",
            (s, context) => Transition.Open(s, FiguresScreen.For(((IAsked)s).FiguresAt(context)!)))
            { Disabled = NoFigures, OnBar = false },
        Copy,
        new KeyAction<IScreen>("m", "Missing details", "Lists the details that checks wait for; on that list, goes back to what is to be fixed.",
            (s, _) => s is PunchScreen list
                ? new Transition(list with { WantsFacts = !list.WantsFacts, Selected = 0 })
                : new Transition(s, new Ask.Section(PunchScreen.OfMissingFacts))) { OnBar = false },
        .. Sections,
    ];

    private static string? NoFigures(IScreen screen, ScreenContext context) =>
        (screen as IAsked)?.FiguresAt(context) is { All.Count: > 0 } ? null : "Move to a unit, a run, a panel or a cut plan first.";

    private static string? OnlyToLookAt(IScreen screen, ScreenContext context) =>
        screen is AsItStoodScreen ? "This is the house as it stood, to look at only. Esc goes back to today." : null;

    public static IEnumerable<IKeyAction> For(ShellState shell) =>
        [.. Always, .. shell.Open is not null ? WithHouse : shell.Screen is ITable ? [Copy] : [], Find(shell)];

    private static KeyAction<IScreen> Find(ShellState shell) =>
        new(":", "Find", "Finds anything by its name: an action of any screen, a tag, a room, a detail, a paper.",
            (s, context) => Transition.Type(s, FindEntry(s,
                shell.Open is null ? Here(shell) : [.. Here(shell), .. Elsewhere(s, context), .. Places.Of(s, context)])))
        { OnBar = false, Also = ["ctrl+p"] };

    private static List<IKeyAction> Here(ShellState shell) => [.. shell.Actions.Select(a => a.Action).Where(a => !a.Strokes.Contains(":"))];

    /// <summary>What the other main screens can do: the screen is gone to, and then it is done.</summary>
    private static IEnumerable<IKeyAction> Elsewhere(IScreen here, ScreenContext context) =>
        from section in Screens
        let screen = section.Make(context, here)
        where screen.GetType() != here.GetType()
        from action in screen.Keys
        where !Moves.Strokes.Contains(action.Strokes[0])
        select new KeyAction<IScreen>(action.Strokes[0], $"{action.Name} ({section.Name})", action.Help,
            (s, _) => new Transition(s, new Ask.Section(c => section.Make(c, s), action)));

    private static Entry FindEntry(IScreen screen, IReadOnlyList<IKeyAction> actions) =>
        new("Find", "", "a part of the name of an action, a tag, a room, a detail or a paper; Up and Down walk through what has it",
            (text, _) => Match(actions, text) switch
        {
            [var one] => new Transition(screen, new Ask.Action(one)),
            [] => new Refusal($"Nothing is called \"{text}\"."),
            var many => many.FirstOrDefault(a => string.Equals(a.Name, text, StringComparison.OrdinalIgnoreCase)) is { } exact
                ? new Transition(screen, new Ask.Action(exact))
                : new Refusal($"More than one: {Named(many)}. Type more of the name."),
        })
        {
            Options = [.. actions.Select(a => new Option(a.Name, a.Name))],
            Echo = (text, _) => Match(actions, text) is { Count: > 0 } found
                ? found.Count == 1 ? $"{found[0].Name}: {found[0].Help}" : Named(found)
                : new Refusal("Nothing has that in its name."),
        };

    private static List<IKeyAction> Match(IReadOnlyList<IKeyAction> actions, string text) =>
        text.Trim() is { Length: > 0 } part ? [.. actions.Where(a => Filtering.Fits(a.Name, part))] : [];

    private static string Named(List<IKeyAction> found) =>
        $"{string.Join("; ", found.Take(MostNamed).Select(a => a.Name))}{(found.Count > MostNamed ? $"; {found.Count - MostNamed} more" : "")}";

    private const int MostNamed = 12;
}
