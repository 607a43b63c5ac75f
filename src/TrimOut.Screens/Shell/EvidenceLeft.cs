using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Shell;

/// <summary>What is undone with the mark of a step: its evidence is saved by itself, and may have been typed on the wrong unit with it.</summary>
internal static class EvidenceLeft
{
    /// <summary>
    /// The changes that were made for a change that marks steps, right before it and of nothing but evidence of these steps; the latest first.
    /// </summary>
    public static ImmutableArray<Change> TypedFor(Change mark, HouseLog log, House house, StepList steps)
    {
        var evidence = Evidence(mark, house, steps).Select(e => (e.Holder.Id, e.Fact.Name)).ToHashSet();
        if (evidence.Count == 0)
            return [];
        var before = log.Changes.Reverse().Where(c => c.Id.Device == mark.Id.Device).SkipWhile(c => c.Id != mark.Id).Skip(1);
        return [.. before.TakeWhile(c => log.IsInForce(c.Id) && c.Edits.All(IsOfIt))];

        bool IsOfIt(Edit edit) => edit is Edit.Put put && evidence.Contains((put.Item, Companion.Beside(put.Field) ?? put.Field));
    }

    /// <summary>
    /// What is noted as evidence of the steps that a change marked and stays, in a sentence with a space before it; nothing where there is none.
    /// </summary>
    public static string In(Change mark, IEnumerable<Change> undone, House house, StepList steps)
    {
        var gone = undone.SelectMany(c => c.Edits.OfType<Edit.Put>()).Select(p => (p.Item, p.Field)).ToHashSet();
        var left = Evidence(mark, house, steps).Where(e => !gone.Contains((e.Holder.Id, e.Fact.Name)) && e.Holder.Latest(e.Fact.Name)?.Stored is not null);
        return left.Select(e => e.Fact.Label).Distinct().ToList() is { Count: > 0 } labels
            ? $" What was noted with it stays: {string.Join(", ", labels)}." : "";
    }

    /// <summary>The names of what changes put, as they follow "with".</summary>
    public static string Named(IEnumerable<Change> changes, House house) => string.Join(", ", changes.Reverse().SelectMany(c => c.Edits.OfType<Edit.Put>())
        .Where(p => Companion.Beside(p.Field) is null).Select(p => house.Find(p.Item) is { } item ? FactTable.Find(item.Kind, p.Field)?.Label : null)
        .OfType<string>().Distinct());

    private static IEnumerable<(Item Holder, Fact Fact)> Evidence(Change mark, House house, StepList steps) =>
        from made in MarksMade.In(mark, house, steps)
        from fact in made.Step.Evidence
        let holder = Progress.Holder(made.Of, fact)
        where holder is not null
        select (holder, fact);
}
