namespace TrimOut.HouseFile.Schedules;

/// <summary>What a building model says of its windows, found by the relations of ISO 16739 (IFC 2x3 and IFC 4).</summary>
internal sealed class IfcModel
{
    private readonly Dictionary<int, StepEntity> _entities = [];
    private readonly Dictionary<int, int> _storeyOf = [];
    private readonly Dictionary<int, int> _openingOf = [];
    private readonly Dictionary<int, int> _wallOf = [];
    private readonly Dictionary<int, int> _spaceOf = [];
    private readonly Dictionary<int, string> _markOf = [];
    private readonly HashSet<string> _roomsAlike;

    /// <summary>Reads the relations.</summary>
    /// <param name="entities">The entities of the kinds that it knows.</param>
    public IfcModel(IEnumerable<StepEntity> entities)
    {
        foreach (var entity in entities)
            _entities[entity.Id] = entity;
        Windows = [.. _entities.Values.Where(e => e.Type is "IFCWINDOW" or "IFCWINDOWSTANDARDCASE").OrderBy(e => e.Line).ThenBy(e => e.Id)];
        foreach (var relation in _entities.Values)
            Relate(relation);
        _roomsAlike = _entities.Values.Where(e => e.Type == "IFCSPACE").Select(e => e.Text(7)).OfType<string>().GroupBy(n => n, StringComparer.Ordinal)
            .Where(n => n.Count() > 1).Select(n => n.Key).ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The windows, in the order of the file.</summary>
    public IReadOnlyList<StepEntity> Windows { get; }

    /// <summary>How many millimetres its unit of length is; null where it names none.</summary>
    public double? MillimetresPerUnit => _entities.Values.Where(e => e.Type == "IFCUNITASSIGNMENT").SelectMany(a => a.References(0)).Select(u => Find(u))
        .Select(u => u is null ? null : UnitOf(u)).FirstOrDefault(u => u is not null);

    /// <summary>What the window is called on plans: its mark, else its tag, else its name.</summary>
    public string TagOf(StepEntity window) => _markOf.GetValueOrDefault(window.Id) is { Length: > 0 } mark ? mark
        : window.Text(7) is { Length: > 0 } tag ? tag : window.Text(2) ?? "";

    /// <summary>The storey that it or the wall around it is in; null where the model does not say.</summary>
    public StepEntity? StoreyOf(StepEntity window) => Around(window).Select(e => _storeyOf.TryGetValue(e, out var storey) ? Find(storey) : null)
        .FirstOrDefault(s => s is { Type: "IFCBUILDINGSTOREY" });

    /// <summary>The room that it bounds, with its number where others have its name; null where the model has no rooms.</summary>
    public string? RoomOf(StepEntity window)
    {
        if (!_spaceOf.TryGetValue(window.Id, out var space) || Find(space) is not { } room)
            return null;
        var (number, full) = (room.Text(2), room.Text(7));
        return full is not { Length: > 0 } ? number : _roomsAlike.Contains(full) ? $"{full} {number}" : full;
    }

    /// <summary>An entity by its number; null where it is not of a kind that is known here.</summary>
    public StepEntity? Find(int? id) => id is { } number ? _entities.GetValueOrDefault(number) : null;

    /// <summary>Takes the points and directions that the placements name.</summary>
    public void Place(IEnumerable<StepEntity> entities)
    {
        var named = _entities.Values.Where(e => e.Type == "IFCAXIS2PLACEMENT3D").SelectMany(e => new[] { e.Reference(0), e.Reference(1), e.Reference(2) })
            .Concat(Contexts.Select(c => c.Reference(5))).OfType<int>().ToHashSet();
        foreach (var entity in entities)
        {
            if (named.Contains(entity.Id))
                _entities[entity.Id] = entity;
        }
    }

    /// <summary>Which way is north in the plane of the model; null where it does not say: then it is up.</summary>
    public StepEntity? TrueNorth => Contexts.Select(c => Find(c.Reference(5))).FirstOrDefault(d => d is not null);

    private IEnumerable<StepEntity> Contexts => _entities.Values.Where(e => e.Type == "IFCGEOMETRICREPRESENTATIONCONTEXT");

    private IEnumerable<int> Around(StepEntity window)
    {
        yield return window.Id;
        if (_openingOf.TryGetValue(window.Id, out var opening))
        {
            yield return opening;
            if (_wallOf.TryGetValue(opening, out var wall))
                yield return wall;
        }
    }

    private void Relate(StepEntity relation)
    {
        switch (relation.Type)
        {
            case "IFCRELCONTAINEDINSPATIALSTRUCTURE" when relation.Reference(5) is { } storey:
                foreach (var element in relation.References(4))
                    _storeyOf[element] = storey;
                break;
            case "IFCRELFILLSELEMENT" when (relation.Reference(4), relation.Reference(5)) is ({ } opening, { } window):
                _openingOf[window] = opening;
                break;
            case "IFCRELVOIDSELEMENT" when (relation.Reference(4), relation.Reference(5)) is ({ } wall, { } opening):
                _wallOf[opening] = wall;
                break;
            case "IFCRELSPACEBOUNDARY" or "IFCRELSPACEBOUNDARY1STLEVEL" or "IFCRELSPACEBOUNDARY2NDLEVEL"
                when (relation.Reference(4), relation.Reference(5)) is ({ } space, { } element) && Find(space) is { Type: "IFCSPACE" }:
                _spaceOf.TryAdd(element, space);
                break;
            case "IFCRELDEFINESBYPROPERTIES" when Find(relation.Reference(5)) is { Type: "IFCPROPERTYSET" } set && MarkIn(set) is { } mark:
                foreach (var element in relation.References(4))
                    _markOf.TryAdd(element, mark);
                break;
        }
    }

    private string? MarkIn(StepEntity set) => set.References(4).Select(p => Find(p)).OfType<StepEntity>()
        .Where(p => p.Type == "IFCPROPERTYSINGLEVALUE" && p.Text(0) is "Mark")
        .Select(p => p.Raw(2) is var raw && raw.IndexOf('\'', StringComparison.Ordinal) is var from and >= 0 && raw.LastIndexOf('\'') is var to && to > from
            ? StepText.Decode(raw[(from + 1)..to]) : null).FirstOrDefault(m => m is { Length: > 0 });

    private double? UnitOf(StepEntity unit) => unit switch
    {
        { Type: "IFCSIUNIT" } when unit.Raw(1) == ".LENGTHUNIT." => Prefix(unit.Raw(2)) * 1000,
        { Type: "IFCCONVERSIONBASEDUNIT" } when unit.Raw(1) == ".LENGTHUNIT." && Find(unit.Reference(3)) is { } measure =>
            measure.Number(0) * (Find(measure.Reference(1)) is { } of ? UnitOf(of) : null),
        _ => null,
    };

    private static double Prefix(string raw) => raw switch { ".MILLI." => 0.001, ".CENTI." => 0.01, ".DECI." => 0.1, ".KILO." => 1000, _ => 1 };
}
