namespace TrimOut.Core.Units;

/// <summary>Current, in amperes.</summary>
/// <param name="Amperes">Amperes.</param>
public readonly record struct Current(decimal Amperes) : IComparable<Current>
{
    /// <inheritdoc/>
    public int CompareTo(Current other) => Amperes.CompareTo(other.Amperes);

    /// <summary>Sum.</summary>
    public static Current operator +(Current a, Current b) => new(a.Amperes + b.Amperes);

    /// <summary>Difference.</summary>
    public static Current operator -(Current a, Current b) => new(a.Amperes - b.Amperes);

    /// <summary>So many times as much.</summary>
    public static Current operator *(Current a, decimal times) => new(a.Amperes * times);

    /// <summary>Ohm's law: the voltage that a current drops over a resistance.</summary>
    public static Voltage operator *(Current i, Resistance r) => new(i.Amperes * r.Ohms);

    /// <summary>Less than.</summary>
    public static bool operator <(Current a, Current b) => a.Amperes < b.Amperes;

    /// <summary>More than.</summary>
    public static bool operator >(Current a, Current b) => a.Amperes > b.Amperes;

    /// <summary>No more than.</summary>
    public static bool operator <=(Current a, Current b) => a.Amperes <= b.Amperes;

    /// <summary>No less than.</summary>
    public static bool operator >=(Current a, Current b) => a.Amperes >= b.Amperes;

    /// <summary>The number and its unit, to three decimals.</summary>
    public override string ToString() => NumberText.Show(Amperes, "A");
}
