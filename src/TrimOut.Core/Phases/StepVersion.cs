using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>The version of the step list that work was done by, noted beside the work.</summary>
/// <remarks>Nothing is noted for the first version: histories of old have no notes, and are by it.</remarks>
internal static class StepVersion
{
    private const string Field = "steps-version";

    private static readonly string[] FieldOf = [.. PhaseNames.All.Select(p => $"{Field}:{KebabCase.Of(p)}")];

    /// <summary>The version that a phase of a subject was last worked on by, or else the one that it was added by.</summary>
    public static int NotedAt(Subject subject, Phase phase) => Math.Max(Noted(subject.Item, Field), Noted(subject.Item, FieldOf[(int)phase]));

    /// <summary>The note that was made when an item was added; null where none was.</summary>
    public static Head? AddedBy(Item item) => item.Latest(Field);

    /// <summary>Whether a field holds a note of a version, which is no fact.</summary>
    public static bool IsNote(string field) => field == Field || FieldOf.Contains(field);

    /// <summary>What is to be noted beside the edits of a change.</summary>
    /// <param name="house">The house before it.</param>
    /// <param name="edits">Its edits.</param>
    /// <param name="steps">The list that the work is done by.</param>
    public static IEnumerable<Edit> For(House house, IEnumerable<Edit> edits, StepList steps)
    {
        if (steps.Version == 1)
            yield break;
        var version = steps.Version.ToString(CultureInfo.InvariantCulture);
        if (house.Items.Count == 1 && !house.Job.Fields.Any() && edits.Any(e => e is not Edit.Undo))
            yield return new Edit.Put(House.RootId, Field, version, []);
        var noted = new HashSet<(string, Phase)>();
        foreach (var edit in edits)
        {
            if (edit is Edit.Add { Kind: ItemKind.Unit or ItemKind.Panel } add)
                yield return new Edit.Put(add.Item, Field, version, []);
            else if (edit is Edit.Put { Value: not null } put && steps.Steps.FirstOrDefault(s => s.Field == put.Field) is { } step &&
                WalkerOf(house, put.Item) is { } subject && IsOpen(subject, step.Phase, steps) && noted.Add((put.Item, step.Phase)))
                yield return new Edit.Put(put.Item, FieldOf[(int)step.Phase], version, []);
        }
    }

    private static bool IsOpen(Subject subject, Phase phase, StepList steps) =>
        NotedAt(subject, phase) < steps.Version && steps.HeldTo(phase, subject) == steps.Version && !Progress.Of(subject, phase, steps).Complete;

    private static Subject? WalkerOf(House house, string id) =>
        id == House.RootId ? new JobItself(house) : (Subject?)house.FindUnit(id) ?? house.FindPanel(id);

    private static int Noted(Item item, string field)
    {
        var highest = 1;
        foreach (var head in item.Heads(field))
            highest = int.TryParse(head.Stored, NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? Math.Max(highest, version) : highest;
        return highest;
    }
}
