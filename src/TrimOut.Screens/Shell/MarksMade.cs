using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Shell;

/// <summary>The steps that a change marks, each with whatever walks through phases and was marked.</summary>
internal static class MarksMade
{
    /// <summary>Those of a change; not of what is no longer in the house.</summary>
    public static IEnumerable<(Step Step, Subject Of)> In(Change change, House house, StepList steps) =>
        from put in change.Edits.OfType<Edit.Put>()
        where put.Value is not null
        let step = steps.Steps.FirstOrDefault(s => put.Field == UnitFacts.Step.Field(s.Id))
        where step is not null
        let of = put.Item == House.RootId ? new JobItself(house) : house.FindUnit(put.Item) as Subject ?? house.FindPanel(put.Item)
        where of is not null
        select (step, of);
}
