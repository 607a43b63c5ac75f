using TrimOut.Core.Facts;
using TrimOut.Core.GenericKit;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>Begins a house.</summary>
public static class NewHouse
{
    /// <summary>A house with a name, units and the generic kit.</summary>
    public static Result<Draft> Begin(string name, DisplayUnits units) => HouseFacts.Name.ReadTyped(name, House.Empty).Then<Draft>(stored =>
        new Draft($"New house {stored}")
            .PutStored(House.RootId, HouseFacts.Name.Name, stored)
            .Put(House.RootId, HouseFacts.Units, units)
            .Put(House.RootId, HouseFacts.Dwelling, Dwelling.OneOrTwoFamily)
            .Put(House.RootId, HouseFacts.MeterStep, new Resistance(0.01m))
            .Put(House.RootId, HouseFacts.CableAllowance, 10m)
            .Put(House.RootId, HouseFacts.ConductorTemperature, new Temperature(30))
            .Put(House.RootId, HouseFacts.PanelTail, TapeMark.Whole(Length.FromInches(72), units))
            .Put(House.RootId, HouseFacts.SpreadLimit, TapeMark.Whole(Length.FromInches(0, 1, 4), units))
            .Put(House.RootId, HouseFacts.SquareLimit, TapeMark.Whole(Length.FromInches(0, 1, 4), units))
            .Put(House.RootId, HouseFacts.PassLimit, TapeMark.Whole(Length.FromInches(0, 1, 8), units))
            .WithGenericKit(units));
}
