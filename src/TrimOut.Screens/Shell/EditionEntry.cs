using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>
/// Asks what another sheet or edition is: one for which every value waits to be looked at again, or the same one, typed right now.
/// </summary>
internal static class EditionEntry
{
    private const string Mistake = "typing mistake";

    /// <summary>The question; null where no value was checked against the sheet or the edition that stands there.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="house">The house.</param>
    /// <param name="part">The part.</param>
    /// <param name="fact">What was typed to.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="then">Where it goes on; null where it stays.</param>
    public static Entry? For(IScreen screen, House house, Item part, Fact fact, string typed, Func<IScreen, ScreenContext, Transition>? then)
    {
        if (KitCheck.WaitFor(house, part, fact, typed) is not (> 0 and var waiting))
            return null;
        var (was, now) = (fact.ShowOf(part, house), typed.Trim());
        var one = waiting == 1;
        var other = fact.Name == AboutSheet.Sheet ? "another sheet" : "new edition";
        return new Entry($"{fact.Label} {now}", "", $"{NumberText.Counted(waiting, "value was", "values were")} checked against {was}. {other}: "
            + $"{(one ? "it waits" : "they wait")} to be checked again. {Mistake}: {was} was a slip, and {(one ? "it stays" : "they stay")} checked",
            (text, context) => Draft(context.House, context.House.Find(part.Id) ?? part, fact, now, text, other).Then<Transition>(draft =>
                new Transition(screen, new Ask.Save(draft, then))))
        {
            Options = [new(other, other), new(Mistake, Mistake)],
        };
    }

    private static Result<Core.History.Draft> Draft(House house, Item part, Fact fact, string typed, string answer, string other) =>
        answer.Trim() is not { Length: > 0 } said
        ? new Refusal($"Say which: {other}, or {Mistake}.")
        : other.StartsWith(said, StringComparison.OrdinalIgnoreCase) ? SetFact.Typed(house, part, fact, typed)
        : Mistake.StartsWith(said, StringComparison.OrdinalIgnoreCase) ? KitCheck.Mistyped(house, part, fact, typed)
        : new Refusal($"Say which: {other}, or {Mistake}.");
}
