using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Wording;

/// <summary>For whom a sentence becomes words: in a house's units and names, in a language.</summary>
/// <param name="House">The house whose units and names are used.</param>
public sealed record Reader(House House)
{
    /// <summary>The words of the language for English ones; English itself unless said otherwise.</summary>
    public Func<string, string> Words { get; init; } = english => english;

    /// <summary>Whether decimals are parted by a comma.</summary>
    public bool DecimalComma { get; init; }

    /// <summary>What lengths are shown in: the house's units unless said otherwise.</summary>
    public DisplayUnits Units { get; init; } = House.DisplayUnits;

    /// <summary>How finely lengths of openings read: to the marks of a tape unless said otherwise.</summary>
    internal LengthsAs Lengths { get; init; }

    /// <summary>What items are called: by their names in the house unless said otherwise.</summary>
    internal Func<Item, string>? Names { get; init; }

    /// <summary>The name of an item.</summary>
    internal string NameOf(Item item) => Names is { } names ? names(item) : House.NameOf(item, Words);

    /// <summary>The label of a fact, by its subject where the language tells it apart: <c>House: Units</c> beside <c>Units</c>.</summary>
    internal string LabelOf(Fact fact) => First($"{SubjectOf(fact)}: {fact.Label}", fact.Label);

    /// <summary>A choice of a fact, by the fact where the language tells it apart: <c>Polarity: right</c> beside <c>right</c>.</summary>
    internal string ChoiceOf(Fact fact, string choice) => First($"{fact.Label}: {choice}", choice);

    /// <summary>A figure that was printed with a point, its unit behind a space: in the language's number style and with its word for the unit.</summary>
    internal string Figure(string printed)
    {
        var space = printed.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && char.IsLetter(printed[space + 1])
            ? $"{Number(printed[..space])} {Words(printed[(space + 1)..])}"
            : Number(printed);
    }

    /// <summary>What stands before a label to say whose it is.</summary>
    internal static string SubjectOf(Fact fact)
    {
        var kind = KebabCase.Of(fact.Subject).Replace('-', ' ');
        return char.ToUpperInvariant(kind[0]) + kind[1..];
    }

    private string First(string named, string alone) => Words(named) is var word && word != named ? word : Words(alone);

    private string Number(string printed) => DecimalComma ? printed.Replace('.', ',') : printed;
}
