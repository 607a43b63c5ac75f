using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>Asks for a fact of an item, refuses on the spot what it can't be, and shows the house as it would be.</summary>
internal static class FactEntry
{
    public static Entry For(IScreen screen, House house, Item item, Fact fact, string? key = null, Func<IScreen, ScreenContext, Transition>? then = null)
    {
        var before = item.Latest(fact.Field(key))?.Stored is null ? Offers.AsBefore(house, item, fact) : null;
        var offered = Offered(house, item, fact, key) ?? (before is { } like ? fact.ShowStored(like.Stored, house) : null);
        return new(Label(house, item, fact, key), fact.ShowOf(item, house, key),
            Hint(fact, house, before is { } had && offered is not null ? $"{offered}, as {had.Of}" : offered),
            (text, context) => EditionEntry.For(screen, context.House, context.House.Find(item.Id) ?? item, fact, text, then) is { } which
                ? Transition.Type(screen, which)
                : Draft(context, item, fact, text, key).Then<Transition>(draft =>
                draft is null ? (then?.Invoke(screen, context) ?? Transition.Say(screen, "Not changed.")) : new Transition(screen, new Ask.Save(draft, then))))
        {
            Options = Disagreeing(item, fact, key) is { Count: > 1 } heads
                ? [.. heads.Select(h => new Option(h.Stored!, fact.Show(h.Value!, house)))]
                : offered is not null ? [.. fact.Options(house).Where(o => o.Shown != offered), new Option(before?.Stored ?? offered, offered)]
                : fact.Options(house),
            Echo = (text, context) => fact.ReadTyped(text, context.House, context.Today)
                .Then<string>(stored => Whose(context.House, item, fact, text, key) ?? Day(fact, stored)
                    ?? $"{fact.Label}: {Hint(fact, context.House, null)}"),
            Note = house.FindUnit(item.Kind == ItemKind.Run ? item.Under : item.Id) is { } unit
                && item.Latest(fact.Field(key))?.Stored is null ? OfferWaits.For(unit, fact) : null,
            Doubt = ValueDoubts.Of(fact, item),
            Preview = (text, context) =>
                text.Trim().Length > 0 && Draft(context, item, fact, text, key) is { Ok: true, Value: { } draft } ? context.With(draft) : context,
        };
    }

    /// <summary>Which day was understood, with its weekday; null for what is no day.</summary>
    private static string? Day(Fact fact, string stored) =>
        fact is Fact<DateOnly> && DateText.Read(stored) is { Ok: true } day ? $"{fact.Label}: {DateText.WithWeekday(day.Value)}" : null;

    private static string Label(House house, Item item, Fact fact, string? key) =>
        $"{house.NameOf(item)}: {fact.Label}{(key is not null && house.Find(key) is { } of ? $" ({house.NameOf(of)})" : "")}";

    /// <summary>What a blank can be offered that has no list of its own, such as the label of a cable: the arrow keys bring it up.</summary>
    private static string? Offered(House house, Item item, Fact fact, string? key) =>
        key is null && item.Latest(fact.Name)?.Stored is null && fact.Options(house).Count == 0
        && house.FindUnit(item.Kind == ItemKind.Run ? item.Under : item.Id) is { } unit ? Offers.For(unit, fact) : null;

    /// <summary>The change that a text makes; null when it changes nothing. A reading that is to be taken again counts where it reads the same.</summary>
    public static Result<Draft?> Draft(ScreenContext context, Item item, Fact fact, string text, string? key)
    {
        var house = context.House;
        var now = house.Find(item.Id) ?? item;
        if (text.Trim() == fact.ShowOf(now, house, key) && Disagreeing(now, fact, key).Count < 2 && !IsToBeReadAgain(context, now, fact.Field(key)))
            return (Draft?)null;
        return SetFact.Typed(house, now, fact, text, key, context.Today).Then<Draft?>(d => d);
    }

    private static bool IsToBeReadAgain(ScreenContext context, Item item, string field) =>
        context.Report.Findings.Any(f =>
            f.Check.Id == "proof-outdated" && f.Found.Mends.Item == item.Id && f.Found.Mends.Field == field);

    /// <summary>The values that two laptops gave a fact without knowing of each other: the arrow keys walk through them, and taking one settles it.</summary>
    private static List<Head> Disagreeing(Item item, Fact fact, string? key) =>
        item.Heads(fact.Field(key)) is { Length: > 1 } heads ? [.. heads.Where(h => h is { Stored: not null, Value: not null })] : [];

    /// <summary>Who put the value that is shown, where two laptops disagree about it; null for any other value.</summary>
    private static string? Whose(House house, Item item, Fact fact, string text, string? key) =>
        Disagreeing(item, fact, key) is { Count: > 1 } heads && heads.LastOrDefault(h => fact.Show(h.Value!, house) == text.Trim()) is { } head
            ? string.Create(CultureInfo.InvariantCulture, $"{text.Trim()} by {head.By}, {head.At:yyyy-MM-dd HH:mm}. Up and Down: the others. Enter keeps it.")
            : null;

    private static string Hint(Fact fact, House house, string? offered) =>
        $"{fact.Help} ({fact.HintFor(house)}{(offered is null ? "" : $"; Up brings {offered}")})";
}
