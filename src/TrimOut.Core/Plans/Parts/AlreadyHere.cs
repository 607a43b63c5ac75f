using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What the marks of the work show to be in the house: nobody orders what is in the wall already (common practice, no published source).</summary>
internal static class AlreadyHere
{
    /// <summary>Whether what something takes in a phase is there, because a step was done that can't be done without it.</summary>
    /// <param name="house">The house.</param>
    /// <param name="item">What the part is for: a unit, run, panel, hub or remote.</param>
    /// <param name="phase">The phase in which the part is first needed.</param>
    /// <remarks>A step that is asked again since something was replaced was done before: what it took is there.</remarks>
    public static bool Is(House house, Item item, Phase phase) => (item.Kind, phase) switch
    {
        (ItemKind.Run, Phase.Power) => house.FindUnit(item.Under!) is { } unit && Any(unit, "spliced"),
        (ItemKind.Run, _) => house.FindUnit(item.Under!) is { Run: { } run } && HouseCuts.IsPulled(run),
        (ItemKind.Unit, Phase.Power) => house.FindUnit(item.Id) is { } unit && Any(unit, "hub-paired", "remotes-paired", "open-limit", "close-limit"),
        (ItemKind.Unit, _) => house.FindUnit(item.Id) is { } unit && (Any(unit, "brackets-fixed") || Hangs(unit)),
        (ItemKind.Panel, _) => house.FindPanel(item.Id) is { } panel && Any(panel, "panel-hung", "mains-connected"),
        (ItemKind.Hub, _) => house.UnitsAt(Lookups.UnitsByHub, item.Id).Any(u => Any(u, "hub-paired")),
        (ItemKind.Remote, _) => house.FindRemote(item.Id) is { } remote && remote.Units.Any(u => Any(u, "remotes-paired")),
        _ => false,
    };

    /// <summary>Whether a unit hangs, or did until it was replaced.</summary>
    public static bool Hangs(Unit unit) => Any(unit, "clicked-in");

    private static bool Any(Subject subject, params ReadOnlySpan<string> steps)
    {
        foreach (var id in steps)
        {
            var step = StepList.Find(id)!;
            if (subject.MarkOf(step) is { NotNeededBecause: null } || AskedAgain.Since(subject, step) is not null)
                return true;
        }
        return false;
    }
}
