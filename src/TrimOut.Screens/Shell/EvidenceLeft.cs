using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Shell;

/// <summary>What stays when the mark of a step is undone: its evidence is saved by itself, and may have been typed on the wrong unit with it.</summary>
internal static class EvidenceLeft
{
    /// <summary>What is noted as evidence of the steps that a change marked, in a sentence with a space before it; nothing where there is none.</summary>
    public static string In(Change change, House house, StepList steps)
    {
        var left = from put in change.Edits.OfType<Edit.Put>()
                   where put.Value is not null && put.Field.StartsWith($"{StepMark.FactName}:", StringComparison.Ordinal)
                   let step = steps.Steps.FirstOrDefault(s => put.Field == UnitFacts.Step.Field(s.Id))
                   let subject = Progress.Walkers(house).FirstOrDefault(s => s.Id == put.Item)
                   where step is not null && subject is not null
                   from fact in step.Evidence
                   where Progress.Holder(subject, fact)?.Latest(fact.Name)?.Stored is not null
                   select fact.Label;
        return left.Distinct().ToList() is { Count: > 0 } labels ? $" What was noted with it stays: {string.Join(", ", labels)}." : "";
    }
}
