using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>A room as it is.</summary>
public sealed class RealRoom
{
    public required string Name { get; init; }
    public required string Floor { get; init; }
    public required string Remote { get; init; }
}

/// <summary>One opening as it is, in millimetres.</summary>
public sealed class RealOpening
{
    public required string Tag { get; set; }
    public required RealRoom Room { get; init; }
    public required Polygon Rough { get; set; }
    public required Polygon Finished { get; set; }

    /// <summary>What was measured in its stead; null where the opening itself was.</summary>
    public Polygon? MeasuredAs { get; set; }
    public required double Depth { get; set; }
    public string Facing { get; init; } = "S";
    public string? LeftOutBecause { get; set; }
    public bool LeftOut { get; set; }
    public bool Outside { get; set; }
    public double Overlap { get; set; }
    public double HeadAbove { get; set; }
    public double WallAbove { get; set; }
    public double GlassBelowHead { get; set; }
    public double? ClearHeight { get; set; }
    public string InTheWay { get; set; } = "none";
    public double StandsOut { get; set; }
    public bool Escape { get; set; }

    /// <summary>Whether its depth is read to what stands in the way, and not to the glass.</summary>
    public bool DepthToFirstThing => InTheWay != "none" && Tag[^1] % 3 == 0;
    public string? MeetsRight { get; set; }
    public int? CornerAngle { get; set; }
    public double? ToCornerRight { get; set; }
    public double? ToCornerLeft { get; set; }
    public List<RealUnit> Units { get; } = [];
}

/// <summary>One covering as it is planned, made and hung.</summary>
public sealed class RealUnit
{
    public required string Key { get; init; }
    public required RealOpening Opening { get; init; }
    public required KindSheet Kind { get; set; }
    public required Side Lead { get; set; }
    public int Position { get; set; } = 1;
    public PowerSource Power { get; set; } = PowerSource.Panel;
    public Side EntrySide { get; set; }

    /// <summary>Whether the cord of a plug-in supply reaches a socket.</summary>
    public SocketNear Socket { get; set; } = SocketNear.InReach;
    public double EntryFromJamb { get; set; }
    public double EntryAsBuilt { get; set; }
    public double EntryBack { get; set; }
    public double EntryBelowHead { get; set; }
    public string? Group { get; set; }
    public double PartWidth { get; set; }
    public CoverSheet Cover { get; set; } = new("None", null, null);
    public string Fabric { get; init; } = "";
    public string Colour { get; init; } = "";
    public Opacity Opacity { get; set; }

    /// <summary>How much wider and longer it came than it was ordered.</summary>
    public double CameWider { get; set; }
    public double CameLonger { get; set; }
    public string BoxLabel { get; set; } = "";
    public string Damage { get; set; } = "none";

    /// <summary>Whether it came in the ordered fabric and colour, and with its motor where it was planned.</summary>
    public bool CameInItsFinish { get; set; } = true;
    public bool MotorAtOtherEnd { get; set; }

    /// <summary>The end at which its lead really leaves it.</summary>
    public Side LeadAsItCame => MotorAtOtherEnd == (Lead == Side.Right) ? Side.Left : Side.Right;
    public string Serial { get; set; } = "";
    public double Setback { get; set; }
    public double? MiddleScrew { get; set; }
    public FixedInto FixedInto { get; set; } = FixedInto.Wood;

    /// <summary>How much lower one of its ends hangs.</summary>
    public double OutOfLevel { get; set; } = 0.4;
    public RealCable? Cable { get; init; }
    public RealPanel? Panel { get; set; }
    public int Output { get; set; }

    /// <summary>The unit whose run really sits on the output that is written for this one; null where it is its own.</summary>
    public RealUnit? LandedInsteadOfIt { get; set; }

    /// <summary>Ohms that its splices at both ends add.</summary>
    public double Splices { get; set; } = 0.01;

    /// <summary>What it really draws, as a part of what its sheet says.</summary>
    public double DrawsShare { get; set; } = 1;
    public bool WiresChangedOver { get; set; }
    public string HubName { get; set; } = "";

    /// <summary>The longest cord or chain that hangs free, wherever the unit stands.</summary>
    public double FreeCord { get; set; }
    public string Hub { get; set; } = "Hub";
    public double OpenGap { get; set; }
    public double CloseGap { get; set; }
}

/// <summary>A supply as it hangs in the mechanical room.</summary>
public sealed class RealPanel
{
    public required string Name { get; init; }
    public required PanelSheet Sheet { get; set; }

    /// <summary>What it really gives without load.</summary>
    public required double Volts { get; set; }
    public bool Signed { get; set; } = true;

    /// <summary>How it was off while joints were made on its outputs.</summary>
    public OffSeen OffForJoints { get; set; } = OffSeen.MeterReadNothing;
    public string Breaker { get; set; } = "";
    public double BreakerRating { get; set; }
    public double ElseOnBreaker { get; set; }
}

/// <summary>A remote with what it moves and the presets on it.</summary>
public sealed class RealRemote
{
    public required string Name { get; init; }
    public required ControlSheet Sheet { get; set; }
    public required RealRoom? Room { get; set; }
    public string Hub { get; set; } = "Hub";
    public string Plate { get; set; } = "";
    public List<RealUnit> Moves { get; } = [];
    public Dictionary<string, List<RealUnit>> Presets { get; } = [];

    /// <summary>When its timer calls its presets; empty where only a key does.</summary>
    public string RunsAt { get; set; } = "";
}

/// <summary>A house as it is, which nobody but the simulator sees, and what its installer gets wrong in writing it down.</summary>
public sealed class RealHouse
{
    public required int Seed { get; init; }
    public required bool Metric { get; init; }
    public required Dwelling Dwelling { get; set; }
    public required Noise Noise { get; init; }
    public required double CableAtFirstTest { get; init; }
    public required double CableAtSecondTest { get; init; }
    public required double WarmestCable { get; init; }
    public required double MeterLeads { get; init; }
    public required double PlannedPanelTail { get; init; }
    public int OldestPaint { get; set; } = 2026;

    /// <summary>Openings on the architect's schedule that nobody walked past.</summary>
    public int NotWalkedPast { get; set; }
    public List<KindSheet> Kinds { get; } = [];
    public List<CoverSheet> Covers { get; } = [];
    public List<CableSheet> Cables { get; } = [];
    public List<PanelSheet> PanelSheets { get; } = [];
    public List<ControlSheet> HubSheets { get; } = [];
    public List<ControlSheet> RemoteSheets { get; } = [];
    public List<RealRoom> Rooms { get; } = [];
    public List<RealOpening> Openings { get; } = [];
    public List<RealPanel> Panels { get; } = [];
    public List<string> Hubs { get; } = ["Hub"];
    public List<RealRemote> Remotes { get; } = [];

    /// <summary>Cable on hand and in each box, in metres, by the name of the cable.</summary>
    public Dictionary<string, List<double>> Boxes { get; } = [];

    /// <summary>What the installer writes otherwise than he should, leaves out, or does besides.</summary>
    public Slips Slips { get; } = new();

    /// <summary>Units that are to be hung.</summary>
    public IEnumerable<RealUnit> Units => Openings.Where(o => !o.LeftOut).SelectMany(o => o.Units);

    /// <summary>Units on home runs.</summary>
    public IEnumerable<RealUnit> Wired => Units.Where(u => u is { Power: PowerSource.Panel, Cable: not null });

    /// <summary>What is replaced, repaired and looked at after the handover, in the order of the days.</summary>
    public List<RealService> Services { get; } = [];

    /// <summary>The day of a stage, and what the house plans for it.</summary>
    public Dictionary<Stage, DateOnly> Days { get; } = [];

    /// <summary>A length that a sheet or a tape of this house can hold: sixteenths of an inch, or whole millimetres.</summary>
    public double OnTape(double millimetres) => Metric ? Math.Round(millimetres) : Math.Round(millimetres * 16 / 25.4) * 25.4 / 16;

    /// <summary>The next such length that is not smaller.</summary>
    public double UpOnTape(double millimetres) => Metric ? Math.Ceiling(millimetres) : Math.Ceiling(millimetres * 16 / 25.4) * 25.4 / 16;

    /// <summary>A length as the installer of this house types it.</summary>
    public string Typed(double millimetres) => new Tape(Metric, Noise).Exactly(millimetres);

    /// <summary>A length of cable as the installer types it.</summary>
    public string TypedRun(double metres) => new Tape(Metric, Noise).Run(metres);

    /// <summary>The most by which the tape may be off.</summary>
    public double TapeError => new Tape(Metric, Noise).Error;
}
