using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What the marks of the work show to be in the house: nobody orders what is in the wall already (common practice, no published source).</summary>
internal static class AlreadyHere
{
    private static readonly string[] OnBrackets = ["clicked-in", "moves-free", "open-limit", "close-limit", "level-with-neighbours"];

    private static readonly string[] Joined = ["spliced", "volts-read", "output-proved"];

    private static readonly string[] OnItsPanel = ["landed", .. Joined];

    private static readonly string[] OfPanel = ["panel-hung", "mains-connected", "off-before-joints"];

    private static readonly string[] Driven = ["hub-paired", "remotes-paired", "moved-by-all", "open-limit", "close-limit", "preset-stored"];

    private static readonly string[] ByHub = ["hub-paired", "moved-by-all"];

    private static readonly string[] ByRemote = ["remotes-paired", "moved-by-all"];

    /// <summary>Whether what something takes in a phase is there: a step that can't be done without it was, or something was done to it in service.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">What the part is for: a unit, run, panel, hub or remote.</param>
    /// <param name="phase">The phase in which the part is first needed.</param>
    /// <remarks>
    /// A step that is asked again since something was replaced was done before: what it took is there. A step shows nothing of a panel, hub, remote or power
    /// that was chosen for the unit after it was marked.
    /// </remarks>
    public static bool Is(House house, Item item, Phase phase) => (item.Kind, phase) switch
    {
        (ItemKind.Run, Phase.Power) => house.FindUnit(item.Under) is { } unit && Any(unit, null, Joined),
        (ItemKind.Run, _) => house.FindUnit(item.Under) is { Run: { } run } && HouseCuts.IsPulled(run),
        (ItemKind.Unit, Phase.Power) => house.FindUnit(item.Id) is { } unit && Any(unit, unit.Item.Latest(UnitFacts.Power), Driven),
        (ItemKind.Unit, _) => house.FindUnit(item.Id) is { } unit && (Any(unit, null, "brackets-fixed") || Hangs(unit)),
        (ItemKind.Panel, _) => house.FindPanel(item.Id) is { } panel && (Any(panel, null, OfPanel) || WasServed(house, item)
            || house.UnitsAt(Lookups.UnitsByPanel, item.Id).Any(u => Any(u, u.Run!.Item.Latest(RunFacts.Panel), OnItsPanel))),
        (ItemKind.Hub, _) => WasServed(house, item)
            || house.UnitsAt(Lookups.UnitsByHub, item.Id).Any(u => Any(u, u.Item.Latest(UnitFacts.Hub), ByHub))
            || new Hub(house, item).Remotes.Any(r => Answers(r, r.Item.Latest(RemoteFacts.Hub))),
        (ItemKind.Remote, _) => house.FindRemote(item.Id) is { } remote
            && (WasServed(house, item) || Answers(remote, null) || remote.Presets.Any(p => p.Positions.Any(at => IsStored(p, at.Unit)))),
        _ => false,
    };

    /// <summary>Whether a unit hangs, or did until it was replaced.</summary>
    public static bool Hangs(Unit unit) => Any(unit, null, OnBrackets) || WasServed(unit.House, unit.Item);

    /// <summary>Whether a unit answers to a remote, or did; where a change is given, since that one.</summary>
    private static bool Answers(Remote remote, Head? since) =>
        remote.Units.Any(u => Any(u, Later(since, remote.Item.Latest(RemoteFacts.Moves.Field(u.Id))), ByRemote));

    private static bool IsStored(Preset preset, Unit unit) => Any(unit, preset.Item.Latest(PresetFacts.Position.Field(unit.Id)), "preset-stored");

    private static bool WasServed(House house, Item item) => !house.Under(item, ItemKind.Service).IsEmpty;

    private static Head? Later(Head? one, Head? other) => one is null || (other is not null && other.IsAfter(one)) ? other : one;

    internal static bool Any(Subject subject, Head? since, params ReadOnlySpan<string> steps)
    {
        foreach (var id in steps)
        {
            var step = StepList.Find(id)!;
            var done = subject.MarkOf(step) is { NotNeededBecause: null } ? subject.Item.Latest(step.Field)
                : AskedAgain.Since(subject, step) is not null ? subject.Item.Latest(AskedAgain.Field(step))
                : null;
            if (done is not null && since?.IsAfter(done) != true)
                return true;
        }
        return false;
    }
}
