using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Evidence;

/// <summary>A reading or a mark that shows that something is right, and what it was made with: with something else it shows nothing.</summary>
/// <param name="Phase">The phase in which it is made.</param>
/// <param name="Made">The value that was put when it was made.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Mends">The field in which it is made anew.</param>
/// <param name="With">What it was made with.</param>
internal sealed record Proof(Phase Phase, Head Made, Arg Label, FieldRef Mends, ImmutableArray<Proof.Ground> With)
{
    private static readonly Fact[] Volts = [RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity, RunFacts.WentDead];

    private static readonly Fact[] Loops =
    [
        RunFacts.FirstLoop, RunFacts.FirstApart, RunFacts.FirstToFrame, RunFacts.SecondLoop, RunFacts.SecondApart, RunFacts.SecondToFrame,
    ];

    /// <summary>Something that a proof was made with: a value of an item.</summary>
    /// <param name="Item">The item.</param>
    /// <param name="Fact">The fact.</param>
    /// <param name="Key">Of a keyed fact, which of its values.</param>
    /// <param name="Grows">Whether a first value is something new too, such as a further remote; else it only says what was there.</param>
    internal sealed record Ground(Item Item, Fact Fact, string? Key = null, bool Grows = false)
    {
        /// <summary>The value that it has now.</summary>
        public Head? Now => Item.Latest(Fact.Field(Key));

        /// <summary>The value that it had when something was made, where it has another one now; null where it has the same, or none.</summary>
        public Head? Before(Head made) => Now is { Stored: { } now } head && head.IsAfter(made) && head.When(made) is { Stored: { } then } before && then != now
            ? before
            : null;

        /// <summary>Whether it was put since something was made, and nothing stood there then.</summary>
        public bool IsNew(Head made) => Grows && Now is { Stored: not null } head && head.IsAfter(made) && head.When(made)?.Stored is null;
    }

    /// <summary>All of a unit, as far as they are there.</summary>
    public static IEnumerable<Proof> Of(Unit unit)
    {
        var serial = new Ground(unit.Item, UnitFacts.Serial);
        if (unit.Run is { } run)
        {
            var way = Way(run);
            var cable = new Ground(run.Item, RunFacts.Cable);
            foreach (var loop in Loops)
            {
                if (Read(loop.Phase!.Value, run.Item, loop, cable) is { } read)
                    yield return read;
            }
            foreach (var volts in Volts)
            {
                if (Read(Phase.Power, run.Item, volts, volts == RunFacts.LoadedVolts ? [.. way, serial] : [.. way]) is { } read)
                    yield return read;
            }
            if (Read(Phase.RoughIn, run.Item, RunFacts.TailAtPanel, [.. Elsewhere(run)]) is { } tail)
                yield return tail;
            if (Marked("spliced", unit, cable, serial) is { } spliced)
                yield return spliced;
        }
        var hub = new Ground(unit.Item, UnitFacts.Hub);
        var remotes = unit.Remotes.SelectMany(r => new Ground[]
        {
            new(r.Item, RemoteFacts.Moves, unit.Id, Grows: true), new(r.Item, RemoteFacts.Type),
        }).ToArray();
        var presets = unit.House.Look(Lookups.PresetsByUnit, unit.Id)
            .Select(p => new Ground(unit.House.Find(p)!, PresetFacts.Position, unit.Id, Grows: true));
        foreach (var proof in new[]
        {
            Read(Phase.Hang, unit.Item, UnitFacts.CordConfirmedBy, serial),
            Marked("hub-paired", unit, hub, serial), Marked("remotes-paired", unit, [serial, .. remotes]),
            Marked("moved-by-all", unit, [hub, serial, .. remotes]),
            Read(Phase.Limits, unit.Item, UnitFacts.OpenGap, serial), Read(Phase.Limits, unit.Item, UnitFacts.CloseGap, serial),
            Marked("preset-stored", unit, [serial, .. presets]),
        })
        {
            if (proof is not null)
                yield return proof;
        }
    }

    /// <summary>What a reading at the window end comes from: over the run of another unit too.</summary>
    private static IEnumerable<Ground> Way(HomeRun run)
    {
        foreach (var fact in new Fact[] { RunFacts.Panel, RunFacts.Output, RunFacts.Cable, RunFacts.BranchesOff })
            yield return new Ground(run.Item, fact);
        if (run.BranchesOff is not { } trunk)
            yield break;
        foreach (var fact in new Fact[] { RunFacts.Panel, RunFacts.Output, RunFacts.Cable })
            yield return new Ground(trunk.Item, fact);
    }

    /// <summary>The panel that a tail was left for, where the other one hangs at another place.</summary>
    private static IEnumerable<Ground> Elsewhere(HomeRun run)
    {
        var panel = new Ground(run.Item, RunFacts.Panel);
        if (run.Item.Latest(RunFacts.TailAtPanel) is { Stored: not null } left && panel.Before(left)?.Value is ItemRef was
            && run.House.FindPanel(was.Id)?.Item.Get(PanelFacts.Location) is { } before && run.Panel?.Item.Get(PanelFacts.Location) is { } now
            && !string.Equals(before, now, StringComparison.OrdinalIgnoreCase))
            yield return panel;
    }

    private static Proof? Read(Phase phase, Item item, Fact fact, params Ground[] with) => item.Latest(fact) is { Stored: not null } made
        ? new Proof(phase, made, Arg.Label(fact), FieldRef.To(item, fact), [.. with])
        : null;

    private static Proof? Marked(string id, Unit unit, params Ground[] with) =>
        StepList.Find(id) is { } step && unit.Item.Latest(step.Field) is { Value: StepMark { NotNeededBecause: null } } made
            ? new Proof(step.Phase, made, Arg.Label(step), FieldRef.To(unit.Item, UnitFacts.Step, id), [.. with])
            : null;
}
