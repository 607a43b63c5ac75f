using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>No two cables carry the same label.</summary>
/// <remarks>
/// <para>Why: two cables of one name end on each other's outputs.</para>
/// <para>To clear: label one of them again at both ends.</para>
/// </remarks>
public sealed class LabelTwice : RunCheck
{
    private static readonly Message AlsoThere = new("\"{0}\" is also on the cable of {1}.");
    private static readonly Message LabelAnew = new("Label one of the two again, at both ends.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("label-twice", "Two cables have the same label", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "every label on the cables of one unit only"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (!subject.Labels.Any())
            return NotChecked.Of(subject, RunFacts.LabelAtWindow);
        return Outcome.All(subject.Labels.Select(l => Found(subject, l,
            [.. subject.House.UnitsAt(Lookups.UnitsByLabel, l).Where(u => u.Id != subject.Unit.Id).Select(u => u.Run).OfType<HomeRun>()])))
            ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome.Found? Found(HomeRun run, string label, List<HomeRun> others) => others.Count == 0 ? null : new(
        AlsoThere.With(Arg.Typed(label), Arg.Of(others.Select(o => Arg.Name(o)), Arg.Name(others[0]))), LabelAnew,
        FieldRef.To(run.Item, string.Equals(run.LabelAtWindow, label, StringComparison.OrdinalIgnoreCase) ? RunFacts.LabelAtWindow : RunFacts.LabelAtPanel));
}
