using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What the maker's sheet says about a panel.</summary>
public static class PanelTypeFacts
{
    private static readonly Declare Of = new(ItemKind.PanelType);

    public static readonly Fact<string> Name = Of.Text("name", "Panel type", "What the sheet calls it.", null, 40);
    public static readonly Fact<int> Outputs = Of.Count("outputs", "Outputs", "How many units it feeds.", null, 1, 64);
    public static readonly Fact<Voltage> Supply = Of.Volts("supply", "Supply", "Voltage at its outputs.", null, 1, 60);
    public static readonly Fact<Current> OutputCurrent = Of.Amps("output-current", "Current per output", "The most that one output gives.");
    public static readonly Fact<Current> TotalCurrent = Of.Amps("total-current", "Current of all outputs", "The most that all outputs give together.");
    public static readonly Fact<string> InputVolts = Of.MainsVolts("input-volts", "Input voltage",
        "The mains voltage that it is made for, by its plate, such as 120 V or 100 to 240 V.");
    public static readonly Fact<Current> InputCurrent = Of.Amps("input-current", "Input current", "The most that it draws from the mains, by its plate.");
    public static readonly Fact<int> UnitsPerOutput = Of.Count("units-per-output", "Units per output", "How many units one output may feed.", null, 1, 8);

    internal static readonly Fact[] All =
        [Name, Outputs, Supply, OutputCurrent, TotalCurrent, InputVolts, InputCurrent, UnitsPerOutput, .. AboutSheet.Declared(Of)];
}
