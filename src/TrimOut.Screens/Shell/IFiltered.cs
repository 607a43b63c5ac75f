using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>A screen whose list can be narrowed, as one types, to the rows that have some words.</summary>
internal interface IFiltered : IScreen
{
    /// <summary>What is looked for; empty where nothing is.</summary>
    string Search { get; }

    /// <summary>Whether rows may be hidden.</summary>
    bool Filters => Search.Length > 0;

    /// <summary>Whether the frame says what is looked for, and how much of the list is shown.</summary>
    bool FrameSays => true;

    /// <summary>How many rows are shown, and how many there are.</summary>
    (int Shown, int All) Count(ScreenContext context);

    /// <summary>With only the rows that have what is looked for; the cursor stays on its row, or goes to the first one.</summary>
    IScreen Searching(string search, ScreenContext context);

    /// <summary>With every row.</summary>
    IScreen Unfiltered(ScreenContext context) => Searching("", context);

    /// <summary>The key that does to the list what a key that was pressed beside the words is meant to.</summary>
    string InTheList(string stroke) => stroke;

    /// <summary>What is left when the words were taken: a list goes on with its filter.</summary>
    IScreen Found(ScreenContext context) => this;
}

/// <summary>The one key that narrows a list, on every screen that has one.</summary>
internal static class Filtering
{
    /// <summary>The key.</summary>
    /// <param name="of">What the list is of: "units".</param>
    /// <param name="with">What the words are looked for in: "tag, kind, room or floor".</param>
    public static IKeyAction Key<T>(string of, string with)
        where T : IFiltered => new KeyAction<T>("/", "Filter", $"Shows only {of} with what is typed, as one types: {with}.",
            (s, _) => Transition.Type(s, Ask(s, with)));

    /// <summary>Whether a row has every word that is looked for, in any order.</summary>
    public static bool Fits(string text, string search) =>
        search.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));

    /// <summary>Where the row under the cursor is among other rows, or the first of these where it is none of them.</summary>
    public static int Keep<T>(IReadOnlyList<T> before, int selected, IReadOnlyList<T> after, Func<T, object?> id)
    {
        if (selected < 0 || selected >= before.Count)
            return 0;
        var now = id(before[selected]);
        return Math.Max(0, after.ToList().FindIndex(r => Equals(id(r), now)));
    }

    /// <summary>What the frame says of a list that is narrowed.</summary>
    public static string InWords(IFiltered screen, ScreenContext context, bool typing)
    {
        var (shown, all) = screen.Count(context);
        return $"\"{screen.Search}\": {(shown == 0 ? "none" : NumberText.Plain(shown))} of {NumberText.Plain(all)} shown"
            + $"{(typing ? "" : "; / changes it, Esc shows all")}";
    }

    private static Entry Ask(IFiltered screen, string with) => new("Show only", screen.Search, with, (_, _) => new Transition(screen))
    {
        Live = (s, text, context) => ((IFiltered)s).Searching(text.Trim(), context),
        Echo = (_, _) => "Up and Down choose, Enter takes it, Esc leaves it as it was.",
    };
}
