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
        var left = from mark in MarksMade.In(change, house, steps)
                   from fact in mark.Step.Evidence
                   where Progress.Holder(mark.Of, fact)?.Latest(fact.Name)?.Stored is not null
                   select fact.Label;
        return left.Distinct().ToList() is { Count: > 0 } labels ? $" What was noted with it stays: {string.Join(", ", labels)}." : "";
    }
}
