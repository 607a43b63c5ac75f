using System.Runtime.CompilerServices;

namespace TrimOut.Core.Units;

/// <summary>Refuses figures that no measure and no sheet can have, by the name of the argument: never a number out of nonsense.</summary>
internal static class Refuse
{
    /// <summary>A length that is not negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is.</exception>
    public static Length Negative(Length length, [CallerArgumentExpression(nameof(length))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(length.Nanometres, name);
        return length;
    }

    /// <summary>A number that is not negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is.</exception>
    public static decimal Negative(decimal number, [CallerArgumentExpression(nameof(number))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number, name);
        return number;
    }

    /// <summary>A length that is longer than nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not.</exception>
    public static Length NothingOrLess(Length length, [CallerArgumentExpression(nameof(length))] string? name = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length.Nanometres, name);
        return length;
    }
}
