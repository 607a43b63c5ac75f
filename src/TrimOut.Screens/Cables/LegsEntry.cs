using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Cables;

/// <summary>Asks for the legs of a run in one line; the arrow keys bring those of its neighbours.</summary>
internal static class LegsEntry
{
    public const string Name = "Legs";

    public const string Help =
        "Adds legs by one line, such as up 8, across 46 in wall, down 3; a place alone at the end is said of all legs without one; "
        + "Up and Down bring those of other runs, and an empty line adds one to be filled in.";

    /// <param name="screen">The screen that asks.</param>
    /// <param name="run">The run that gets them.</param>
    /// <param name="blank">Where to go when one leg was added that is to be filled in.</param>
    /// <param name="then">Where to go when legs were added; nowhere where it is null.</param>
    public static Entry For(IScreen screen, HomeRun run, Func<IScreen, ScreenContext, Transition> blank, Func<IScreen, ScreenContext, Transition>? then = null)
    {
        var neighbours = QuickLegs.OfNeighbours(run);
        var hint = $"from the panel: {QuickLegs.Example(run.House)}; a place alone at the end is said of all legs without one; "
            + "empty adds one to be filled in"
            + (neighbours.Count == 0 ? "" : "; Up and Down bring the legs of other runs");
        return new Entry($"Legs of {run.Name}", "", hint, (text, now) => Again(run, now) is not { } to ? new Refusal($"{run.Name} is no longer in the house.")
            : text.Trim().Length == 0 ? new Transition(screen, new Ask.Save(AddItems.Leg(to), blank))
            : QuickLegs.Add(to, text).Then<Transition>(draft => new Transition(screen, new Ask.Save(draft, then))))
        {
            Options = [.. neighbours.Select(n => new Option(n, n))],
            Echo = (text, now) => QuickLegs.Echo(Again(run, now) ?? run, text),
            Preview = (text, now) => text.Trim().Length > 0 && Again(run, now) is { } to && QuickLegs.Add(to, text) is { Ok: true } draft
                ? now.With(draft.Value) : now,
        };
    }

    private static HomeRun? Again(HomeRun run, ScreenContext context) => context.House.Runs.FirstOrDefault(r => r.Id == run.Id);
}
