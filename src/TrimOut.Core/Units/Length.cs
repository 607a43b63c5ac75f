using System.Globalization;

namespace TrimOut.Core.Units;

/// <summary>A length, exact to the nanometre: every tape fraction down to 1/64 in and every decimal of a millimetre down to 0.000001 mm.</summary>
/// <remarks>
/// One inch is 25.4 mm exactly (international yard and pound agreement of 1959), so 1/64 in is 396,875 nm and no
/// tape fraction is ever rounded. Lengths may be negative as differences; what a person types may not.
/// </remarks>
public readonly record struct Length : IComparable<Length>
{
    internal const long NanometresPerInch = 25_400_000;
    internal const long NanometresPerMillimetre = 1_000_000;

    private readonly long _nanometres;

    private Length(long nanometres) => _nanometres = nanometres;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The exact number of nanometres.</summary>
    public long Nanometres => _nanometres;

    /// <summary>Inches, as a number to calculate with.</summary>
    public decimal Inches => (decimal)_nanometres / NanometresPerInch;

    /// <summary>Feet of twelve inches (never the retired survey foot).</summary>
    public decimal Feet => Inches / 12;

    /// <summary>Millimetres.</summary>
    public decimal Millimetres => (decimal)_nanometres / NanometresPerMillimetre;

    /// <summary>Metres.</summary>
    public decimal Metres => Millimetres / 1000;

    /// <summary>A length of so many nanometres.</summary>
    public static Length FromNanometres(long nanometres) => new(nanometres);

    /// <summary>A length in millimetres, rounded to the nanometre.</summary>
    /// <exception cref="OverflowException">More than about nine million kilometres.</exception>
    public static Length FromMillimetres(decimal millimetres) => FromNanometres(millimetres, NanometresPerMillimetre);

    /// <summary>A length in metres, rounded to the nanometre.</summary>
    /// <exception cref="OverflowException">More than about nine million kilometres.</exception>
    public static Length FromMetres(decimal metres) => FromMillimetres(metres * 1000);

    /// <summary>A length in inches, rounded to the nanometre.</summary>
    /// <exception cref="OverflowException">More than about nine million kilometres.</exception>
    public static Length FromInches(decimal inches) => FromNanometres(inches, NanometresPerInch);

    /// <summary>A length in inches and a fraction of one: <c>FromInches(45, 1, 2)</c> is 45 1/2 in.</summary>
    /// <param name="whole">Whole inches.</param>
    /// <param name="numerator">Top of the fraction.</param>
    /// <param name="denominator">Bottom of the fraction: a power of two up to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is on no tape.</exception>
    public static Length FromInches(long whole, long numerator, long denominator) =>
        denominator is 1 or 2 or 4 or 8 or 16 or 32 or 64
            ? new(whole * NanometresPerInch + numerator * (NanometresPerInch / denominator))
            : throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "A tape has halves to sixty-fourths.");

    /// <summary>A length in feet, rounded to the nanometre.</summary>
    /// <exception cref="OverflowException">More than about nine million kilometres.</exception>
    public static Length FromFeet(decimal feet) => FromInches(feet * 12);

    /// <summary>This length rounded down to a whole number of steps: for what must fit inside.</summary>
    /// <param name="step">The step, longer than nothing.</param>
    public Length RoundDown(Length step)
    {
        var (steps, rest) = Math.DivRem(_nanometres, Positive(step));
        return new((rest < 0 ? steps - 1 : steps) * step._nanometres);
    }

    /// <summary>This length rounded up to a whole number of steps: for what must be long enough.</summary>
    /// <param name="step">The step, longer than nothing.</param>
    public Length RoundUp(Length step) => RoundDown(step) is var down && down == this ? this : down + step;

    /// <summary>This length to the nearest whole number of steps, halves away from nothing: for showing only.</summary>
    /// <param name="step">The step, longer than nothing.</param>
    public Length RoundNearest(Length step) => new((long)Math.Round((decimal)_nanometres / Positive(step), MidpointRounding.AwayFromZero) * step._nanometres);

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(_nanometres));

    /// <summary>The shorter of two.</summary>
    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>The longer of two.</summary>
    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Length other) => _nanometres.CompareTo(other._nanometres);

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => new(a._nanometres + b._nanometres);

    /// <summary>Difference; negative when the second is longer.</summary>
    public static Length operator -(Length a, Length b) => new(a._nanometres - b._nanometres);

    /// <summary>The other way.</summary>
    public static Length operator -(Length a) => new(-a._nanometres);

    /// <summary>So many times a length, rounded to the nanometre.</summary>
    public static Length operator *(Length a, decimal times) => new((long)Math.Round(a._nanometres * times, MidpointRounding.AwayFromZero));

    /// <summary>A part of a length, rounded to the nanometre.</summary>
    /// <exception cref="DivideByZeroException">The divisor is nothing.</exception>
    public static Length operator /(Length a, decimal by) => new((long)Math.Round(a._nanometres / by, MidpointRounding.AwayFromZero));

    /// <summary>How many times one length goes into another.</summary>
    /// <exception cref="DivideByZeroException">The divisor is nothing.</exception>
    public static decimal operator /(Length a, Length b) => (decimal)a._nanometres / b._nanometres;

    /// <summary>Shorter than.</summary>
    public static bool operator <(Length a, Length b) => a._nanometres < b._nanometres;

    /// <summary>Longer than.</summary>
    public static bool operator >(Length a, Length b) => a._nanometres > b._nanometres;

    /// <summary>No longer than.</summary>
    public static bool operator <=(Length a, Length b) => a._nanometres <= b._nanometres;

    /// <summary>No shorter than.</summary>
    public static bool operator >=(Length a, Length b) => a._nanometres >= b._nanometres;

    /// <summary>Exact millimetres with a unit, whatever the culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Millimetres / 1.000000000000000000000000000000m} mm");

    private static Length FromNanometres(decimal count, long each) =>
        new(decimal.ToInt64(Math.Round(count * each, MidpointRounding.AwayFromZero)));

    private static long Positive(Length step) => step._nanometres > 0
        ? step._nanometres
        : throw new ArgumentOutOfRangeException(nameof(step), step, "A rounding step is longer than nothing.");
}
