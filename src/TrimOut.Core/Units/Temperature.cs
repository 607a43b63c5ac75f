namespace TrimOut.Core.Units;

/// <summary>A temperature, in degrees Celsius.</summary>
/// <param name="Celsius">Degrees Celsius.</param>
public readonly record struct Temperature(decimal Celsius)
{
    /// <summary>The temperature that wire tables are made for.</summary>
    public static readonly Temperature Reference = new(20);

    /// <summary>The number and its unit.</summary>
    public override string ToString() => NumberText.Show(Celsius, "C");
}
