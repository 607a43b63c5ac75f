namespace TrimOut.Core.Units;

/// <summary>Electrical resistance, in ohms.</summary>
/// <param name="Ohms">Ohms.</param>
public readonly record struct Resistance(decimal Ohms) : IComparable<Resistance>
{
    /// <inheritdoc/>
    public int CompareTo(Resistance other) => Ohms.CompareTo(other.Ohms);

    /// <summary>Sum.</summary>
    public static Resistance operator +(Resistance a, Resistance b) => new(a.Ohms + b.Ohms);

    /// <summary>Difference.</summary>
    public static Resistance operator -(Resistance a, Resistance b) => new(a.Ohms - b.Ohms);

    /// <summary>So many times as much.</summary>
    public static Resistance operator *(Resistance a, decimal times) => new(a.Ohms * times);

    /// <summary>Less than.</summary>
    public static bool operator <(Resistance a, Resistance b) => a.Ohms < b.Ohms;

    /// <summary>More than.</summary>
    public static bool operator >(Resistance a, Resistance b) => a.Ohms > b.Ohms;

    /// <summary>No more than.</summary>
    public static bool operator <=(Resistance a, Resistance b) => a.Ohms <= b.Ohms;

    /// <summary>No less than.</summary>
    public static bool operator >=(Resistance a, Resistance b) => a.Ohms >= b.Ohms;

    /// <summary>The number and its unit, to three decimals.</summary>
    public override string ToString() => NumberText.Show(Ohms, "ohm");
}
