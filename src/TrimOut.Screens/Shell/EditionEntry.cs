using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>
/// Asks what another sheet or edition is, or one that is named for the first time: one for which every value waits to be looked at again, or the same one that
/// the values were checked against.
/// </summary>
internal static class EditionEntry
{
    private const string Mistake = "typing mistake";
    private const string Again = "check again";
    private const string This = "this one";

    /// <summary>The question; null where no value was checked against the sheet or the edition that stands there.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="house">The house.</param>
    /// <param name="part">The part.</param>
    /// <param name="fact">What was typed to.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="then">Where it goes on; null where it stays.</param>
    public static Entry? For(IScreen screen, House house, Item part, Fact fact, string typed, Func<IScreen, ScreenContext, Transition>? then)
    {
        if (KitCheck.WaitFor(house, part, fact, typed) is not { Count: > 0 } waiting)
            return null;
        var (was, now) = (fact.ShowOf(part, house), typed.Trim());
        var (it, waits, stays) = waiting.Count == 1 ? ("it", "waits", "stays") : ("they", "wait", "stay");
        var isFirst = was.Length == 0;
        var (other, same) = isFirst ? (Again, This) : (fact.Name == AboutSheet.Sheet ? "another sheet" : "new edition", Mistake);
        return new Entry($"{fact.Label} {now}", "", isFirst
            ? $"{Told(waiting, part)} against {(fact.Name == AboutSheet.Sheet ? "a sheet" : "an edition")} that nobody named. "
                + $"{Again}: {it} {waits} to be checked against {now}. {This}: it was {now}, and {it} {stays} checked"
            : $"{Told(waiting, part)} against {was}. {other}: {it} {waits} to be checked again. {Mistake}: {was} was a slip, and {it} {stays} checked",
            (text, context) => Draft(context.House, context.House.Find(part.Id) ?? part, fact, now, text, other, same).Then<Transition>(draft =>
                new Transition(screen, new Ask.Save(draft, then))))
        {
            Options = [new(other, other), new(same, same)],
        };
    }

    /// <summary>What waits, in words: values that were checked, and blanks that were looked for and do not stand on the sheet.</summary>
    private static string Told(IReadOnlyList<Fact> waiting, Item part)
    {
        var values = waiting.Count(f => part.Latest(f)?.Stored is not null);
        var notFound = waiting.Count - values;
        string?[] told = [values > 0 ? $"{NumberText.Counted(values, "value was", "values were")} checked" : null,
            notFound > 0 ? $"{NumberText.Counted(notFound, "blank was", "blanks were")} looked for" : null];
        return string.Join(" and ", told.OfType<string>());
    }

    private static Result<Core.History.Draft> Draft(House house, Item part, Fact fact, string typed, string answer, string other, string same) =>
        answer.Trim() is not { Length: > 0 } said
        ? new Refusal($"Say which: {other}, or {same}.")
        : other.StartsWith(said, StringComparison.OrdinalIgnoreCase) ? SetFact.Typed(house, part, fact, typed)
        : same.StartsWith(said, StringComparison.OrdinalIgnoreCase) ? KitCheck.SameSheet(house, part, fact, typed)
        : new Refusal($"Say which: {other}, or {same}.");
}
