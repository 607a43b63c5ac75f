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

    /// <summary>A figure that was printed with a point, its unit behind a space: in the language's number style and with its word for the unit.</summary>
    internal string Figure(string printed)
    {
        var space = printed.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && char.IsLetter(printed[^1])
            ? $"{Number(printed[..space])} {Words(printed[(space + 1)..])}"
            : Number(printed);
    }

    private string Number(string printed) => DecimalComma ? printed.Replace('.', ',') : printed;
}
