using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Plans.Parts;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Photos;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers;

/// <summary>What papers are written from. The same data give the same papers, byte for byte.</summary>
/// <remarks>What takes long is worked out once, when a paper first asks for it, and shared by all papers that are written from the same data.</remarks>
/// <param name="Log">The house with its history: what was frozen is printed as it was then.</param>
/// <param name="Date">The day that stands on the paper.</param>
/// <param name="Report">What the checks say of the house.</param>
public sealed record PaperData(HouseLog Log, DateOnly Date, CheckReport Report)
{
    // A copy with other options is of the same house, and shares it.
    private readonly WorkedOut _once = new();

    /// <summary>The house as it stands.</summary>
    public House House => Log.House;

    /// <summary>Leaves out what only the trade needs: meter readings, progress by phase, who marked what.</summary>
    public bool OwnerOnly { get; init; }

    /// <summary>What the files of this house's papers are named by, so that two houses can be written into one folder; empty for a single one.</summary>
    public string FilesOf { get; init; } = "";

    /// <summary>The list of steps that the work is done by.</summary>
    public StepList Steps { get; init; } = StepList.Shipped;

    /// <summary>How many saves of the house are in doubt at the least, and so on no paper; 0 where nobody knows how many, null where none is.</summary>
    public long? InDoubt { get; init; }

    /// <summary>How labels lie on their sheets; as long as nobody says, on plain paper to be cut out.</summary>
    public LabelGrid Labels
    {
        get => field ?? LabelGrid.Plain(House.DisplayUnits);
        init;
    }

    /// <summary>Reads a picture by its path as it was typed, for papers that show pictures; null where only their paths are to be listed.</summary>
    public Func<string, Photo>? Photos { get; init; }

    /// <summary>What the marked figures rest on that a paper prints, for its head.</summary>
    internal IReadOnlyList<PrintedMark> Printed { get; init; } = [];

    /// <summary>Stops the writing.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>The cut plans, which may be given where they are there already.</summary>
    public ImmutableArray<PlannedCable> Cuts
    {
        get => _once.Cuts.IsDefault ? _once.Cuts = CutPlans.Of(House, stop: Stop) : _once.Cuts;
        init => _once.Cuts = value;
    }

    /// <summary>The units on frozen order sheets, as they were frozen.</summary>
    internal IReadOnlyList<FrozenUnit> Frozen => _once.Frozen ??= FrozenUnit.All(Log);

    /// <summary>A unit as it stood when it was last frozen on an order sheet; null for one that is on none.</summary>
    internal Unit? FrozenOf(Unit unit) => (_once.FrozenById ??= Frozen.GroupBy(f => f.AsFrozen.Id).ToDictionary(g => g.Key, g => g.Last().AsFrozen))
        .GetValueOrDefault(unit.Id);

    /// <summary>The units that have a part of the kit, by the id of the part.</summary>
    internal ILookup<string, Unit> UnitsByPart => _once.UnitsByPart ??= House.Units.SelectMany(u => u.Parts, (unit, part) => (unit, part))
        .ToLookup(x => x.part.Id, x => x.unit);

    /// <summary>Everything that the house takes.</summary>
    internal ImmutableArray<PartLine> Parts => _once.Parts.IsDefault ? _once.Parts = HouseParts.Of(House, Cuts) : _once.Parts;

    /// <summary>By when each line of that must be ordered.</summary>
    internal ImmutableArray<CallOff> CallOffs => _once.CallOffs.IsDefault ? _once.CallOffs = CallOff.Of(House, Log.Changes, Parts, Steps) : _once.CallOffs;

    /// <summary>The data of a house as it stands; the checks are run.</summary>
    public static PaperData Of(HouseLog log, DateOnly date) => new(log, date, CheckReport.Of(log.House));

    private sealed class WorkedOut
    {
        public ImmutableArray<PlannedCable> Cuts;
        public ImmutableArray<PartLine> Parts;
        public ImmutableArray<CallOff> CallOffs;
        public IReadOnlyList<FrozenUnit>? Frozen;
        public Dictionary<string, Unit>? FrozenById;
        public ILookup<string, Unit>? UnitsByPart;
    }
}
