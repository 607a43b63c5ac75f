using System.Collections.Frozen;
using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>What the sheet of a kind says about one step: how it is done, how long the button is held for it, and what shows that it worked.</summary>
/// <param name="How">How it is done; null where the sheet has no text for it.</param>
/// <param name="Hold">How long the button is held; null where none is held.</param>
/// <param name="Cue">What shows that it worked; null where nothing does.</param>
public sealed record StepCue(Fact<string>? How, Fact<TimeSpan>? Hold, Fact<string>? Cue)
{
    private static readonly StepCue Pairing = new(null, CoveringKindFacts.PairHold, CoveringKindFacts.PairCue);

    private static readonly StepCue Limit = new(CoveringKindFacts.LimitsHow, CoveringKindFacts.LimitHold, CoveringKindFacts.LimitCue);

    private static readonly FrozenDictionary<string, StepCue> ByStep = new Dictionary<string, StepCue>
    {
        ["hub-paired"] = Pairing,
        ["remotes-paired"] = Pairing,
        ["open-limit"] = Limit,
        ["close-limit"] = Limit,
        ["level-with-neighbours"] = new(CoveringKindFacts.LevelHow, null, null),
        ["preset-stored"] = new(null, CoveringKindFacts.PresetHold, CoveringKindFacts.PresetCue),
    }.ToFrozenDictionary();

    /// <summary>The steps that a sheet says something about.</summary>
    public static ImmutableArray<string> Steps { get; } = [.. StepList.All.Select(s => s.Id).Where(ByStep.ContainsKey)];

    /// <summary>What a sheet says about a step; null for a step that no sheet speaks of.</summary>
    public static StepCue? Of(Step step) => ByStep.GetValueOrDefault(step.Id);

    /// <summary>How long the button of a unit is held for a step; null where none is, or where the sheet was not read for it.</summary>
    public static TimeSpan? HoldOf(Unit unit, Step step) => Of(step)?.Hold is { } hold ? unit.Kind?.Item.Get(hold) : null;

    /// <summary>What stands in the kit of a unit for it, in sentences; empty where nothing does.</summary>
    public string Said(CoveringKind kind)
    {
        var how = How is null ? null : kind.Item.Get(How);
        var cue = Cue is null ? null : kind.Item.Get(Cue);
        var held = Hold is not null && kind.Item.Get(Hold) is { } hold
            ? $"Hold {NumberText.Show((decimal)hold.TotalSeconds, "s")} until {cue ?? "the cue on the maker's sheet"}."
            : cue is null ? null : $"Hold until {cue}.";
        return string.Join(" ", new[] { how, held }.OfType<string>());
    }

    /// <summary>What is blank in the kit of a unit for it.</summary>
    public IEnumerable<Fact> Blank(CoveringKind kind) =>
        new Fact?[] { How, Hold, Cue }.OfType<Fact>().Where(f => kind.Item.Latest(f)?.Stored is null);
}
