using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Every step of every phase, in the order in which it is done.</summary>
public static class StepList
{
    /// <summary>All steps.</summary>
    public static ImmutableArray<Step> All { get; } =
    [
        .. WalkThroughSteps.All, .. RoughInSteps.All, .. CloseInSteps.All, .. MeasureSteps.All, .. OrderSteps.All, .. ReceiveSteps.All,
        .. HangSteps.All, .. PowerSteps.All, .. PairSteps.All, .. LimitsSteps.All, .. HandoverSteps.All,
    ];

    private static readonly ILookup<(Phase, ItemKind), Step> ByPhase = All.ToLookup(s => (s.Phase, s.Subject));

    /// <summary>The steps of one phase for one sort of subject: units, panels or the house.</summary>
    public static IEnumerable<Step> Of(Phase phase, ItemKind subject) => ByPhase[(phase, subject)];

    /// <summary>The steps of one phase that a unit, a panel or the house has to walk through.</summary>
    public static IEnumerable<Step> Of(Phase phase, Subject subject) =>
        Of(phase, subject.Item.Kind).Where(s => subject is not Unit unit || s.Applies(unit));

    /// <summary>The step with that id; null when there is none.</summary>
    public static Step? Find(string id) => All.FirstOrDefault(s => s.Id == id);
}
