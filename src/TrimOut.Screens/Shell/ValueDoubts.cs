using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>What may be a slip in a value that could be taken as it is typed, asked about before it is.</summary>
internal static class ValueDoubts
{
    /// <summary>The lowest mains voltage there is as a rule, in volts: common practice, no published source.</summary>
    private const decimal LeastMains = 100;

    /// <summary>How many times what its outputs give a panel draws at the most, even a wasteful one: common practice, no published source.</summary>
    private const decimal MostTimes = 10;

    /// <summary>The question that a detail asks of a text; null for a detail that asks none.</summary>
    /// <param name="fact">The detail.</param>
    /// <param name="item">What it is a detail of.</param>
    public static Func<string, ScreenContext, string?>? Of(Fact fact, Item item) =>
        fact == WindowFacts.Tag ? (text, context) => TagDoubt.Of(text, context.House)
        : fact == WindowFacts.NotCoveredBecause ? (text, _) => Reasons.Against(text)
        : OrderGoesOut.IsSaidBy(fact) ? (text, context) => text.Trim().Length == 0 ? null : OrderGoesOut.Against(context.House, item, fact)
        : fact == PanelTypeFacts.InputCurrent ? (text, context) => DrawsTooMuch(text, context, item)
        : IsNameOfPart(fact) ? (text, _) => NameDoubt.Of(text, "a part")
        : null;

    private static bool IsNameOfPart(Fact fact) => FactTable.IsKit(fact.Subject) && fact == FactTable.Find(fact.Subject, "name");

    private static string? DrawsTooMuch(string text, ScreenContext context, Item item)
    {
        var typed = SetFact.Typed(context.House, item, PanelTypeFacts.InputCurrent, text);
        if (!typed.Ok || context.With(typed.Value).House.Find(item.Id) is not { } panel || panel.Get(PanelTypeFacts.InputCurrent) is not { } input)
            return null;
        var amps = panel.Get(PanelTypeFacts.TotalCurrent)?.Amperes
            ?? panel.Get(PanelTypeFacts.OutputCurrent)?.Amperes * panel.Get(PanelTypeFacts.Outputs);
        var draws = input.Amperes * LeastMains;
        return panel.Get(PanelTypeFacts.Supply)?.Volts * amps is { } gives && draws > MostTimes * gives
            ? $"{input} from the mains are {NumberText.Plain((int)draws)} W or more, and its outputs give {NumberText.Plain((int)gives)} W together." : null;
    }
}
