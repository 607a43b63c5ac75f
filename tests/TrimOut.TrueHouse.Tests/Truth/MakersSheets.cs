using TrimOut.Core.Facts;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>What a maker prints of a kind of covering, in millimetres, volts and amperes. Invented, and rolled anew for each house.</summary>
public sealed class KindSheet
{
    public required string Name { get; init; }
    public required MotorEnd Motor { get; set; }
    public required RaisedForm Form { get; init; }
    public required double MotorVolts { get; set; }
    public required double LeastVolts { get; set; }
    public required double Running { get; set; }
    public required double Starting { get; set; }
    public WithoutPower WithoutPower { get; set; } = WithoutPower.MovedByHand;
    public required double Widest { get; set; }
    public required double Highest { get; set; }
    public required double EndBracket { get; set; }
    public required double BracketBack { get; set; }
    public required double BracketDown { get; set; }
    public required double CentreBracket { get; set; }
    public required double CentreFrom { get; set; }
    public double? MiddleScrew { get; set; }
    public required double GapLeast { get; set; }
    public required double GapMost { get; set; }
    public required double EndClear { get; set; }
    public required double Setback { get; set; }
    public required double LeadBehind { get; set; }
    public required double Tube { get; set; }
    public required double Fabric { get; set; }
    public required double ExtraFabric { get; set; }
    public required double StackFixed { get; set; }
    public required double StackShare { get; set; }
    public required double DepthNeeded { get; set; }
    public required double DepthFlush { get; set; }
    public required double Step { get; set; }

    /// <summary>How much narrower than its opening an inside mount is made, so that it goes in.</summary>
    public required double Deduction { get; set; }

    /// <summary>Whether the maker asks for the made width, and takes nothing off.</summary>
    public bool MadeWidth { get; set; }
    public required int PairHold { get; init; }
    public required int PresetHold { get; init; }

    /// <summary>How high it stands when it is raised after so long a drop: a roll with what it needs to turn.</summary>
    public double Raised(double drop) => Form == RaisedForm.Stack ? StackFixed + (StackShare * drop) : Winding.Room(Tube, Fabric, drop + ExtraFabric);
}

/// <summary>What a maker prints of a head cover.</summary>
/// <param name="Name">Its name.</param>
/// <param name="RoomInside">The roll that turns in it; null where there is no cover.</param>
/// <param name="Depth">How far it reaches back.</param>
public sealed record CoverSheet(string Name, double? RoomInside, double? Depth);

/// <summary>What a maker prints of a cable.</summary>
public sealed class CableSheet
{
    public required string Name { get; init; }
    public int? Gauge { get; init; }
    public double SquareMillimetres { get; init; }
    public required bool Stranded { get; init; }
    public required CableListing Listing { get; set; }
    public required double LongestRun { get; set; }
    public required double Diameter { get; init; }
    public required double Box { get; init; }
    public string Colours { get; set; } = "red, black";
    public string Plus { get; set; } = "red";

    /// <summary>How the conductor is written.</summary>
    public string Conductor => Gauge is { } gauge ? FormattableString.Invariant($"{gauge} AWG") : FormattableString.Invariant($"{SquareMillimetres} mm2");

    /// <summary>Ohms of one metre of one conductor.</summary>
    public double OhmsPerMetre(double celsius) => Copper.AtOther(Copper.OhmsPerMetreAt20(Gauge, SquareMillimetres, Stranded), 20, celsius);
}

/// <summary>What a maker prints of a panel.</summary>
public sealed class PanelSheet
{
    public required string Name { get; init; }
    public required int Outputs { get; set; }
    public required double Volts { get; set; }
    public required double PerOutput { get; set; }
    public required double Total { get; set; }
    public required int UnitsPerOutput { get; set; }

    /// <summary>What it draws from the mains when it gives all that it can, of 120 V or 230 V: what is printed is never less.</summary>
    public double Input(bool metric) => Math.Ceiling(Total * Volts / (metric ? 230 : 120) / 0.85 * 10) / 10;
}

/// <summary>What a maker prints of a hub or a remote: how much it takes.</summary>
public sealed class ControlSheet
{
    public required string Name { get; init; }
    public required int Most { get; set; }
    public int Gangs { get; init; }
}
