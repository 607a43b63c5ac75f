using System.Globalization;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Recording;

/// <summary>A hand meter: half a per cent and two digits of its last place, hundredths of an ohm and of a volt; leads and all.</summary>
public sealed class Meter(Noise noise, double digit = 0.01)
{
    private const double Share = 0.005;
    private const double Digits = 2;
    private const double FindsNoWay = 40e6;

    /// <summary>One step of its last place.</summary>
    public double Digit => digit;

    /// <summary>The most by which a reading of so much may be off.</summary>
    public double Error(double of) => (Share * of) + (Digits * digit);

    /// <summary>What it shows of a resistance with its leads.</summary>
    public string Ohms(double ohms, double leads, params ReadOnlySpan<string> what)
    {
        var through = ohms + leads;
        if (through > FindsNoWay)
            return "open";
        return Show(Math.Max(0, Off(through, what)));
    }

    /// <summary>What it shows of a voltage.</summary>
    /// <remarks>Its share of volts is one error of the meter, the same in every reading with it; its last digits are another each time.</remarks>
    public string Volts(double volts, params ReadOnlySpan<string> what) =>
        Show((volts * (1 + (Share * noise.Of("volts", "share")))) + (Digits * digit * noise.Of([.. what, "digits"])));

    private double Off(double value, params ReadOnlySpan<string> what) =>
        (value * (1 + (Share * noise.Of([.. what, "share"])))) + (Digits * digit * noise.Of([.. what, "digits"]));

    private string Show(double value) => (Math.Round(value / digit) * digit).ToString(digit < 0.1 ? "0.00" : "0.0", CultureInfo.InvariantCulture);
}
