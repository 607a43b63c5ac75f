using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>No two cables carry the same label.</summary>
/// <remarks>
/// <para>Why: two cables of one name end on each other's outputs.</para>
/// <para>To clear: label one of them anew at both ends.</para>
/// </remarks>
public sealed class LabelTwice : HouseCheck
{
    private static readonly Message AlsoThere = new("\"{0}\" is also on the cable of {1}.");
    private static readonly Message LabelAnew = new("Label one of the two anew, at both ends.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("label-twice", "Two cables carry one label", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "every label on the cables of one unit only"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var byLabel = house.Runs
            .SelectMany(r => Labels(r).Select(l => (Label: l, Run: r)))
            .ToLookup(p => p.Label, p => p.Run, StringComparer.OrdinalIgnoreCase);
        foreach (var run in house.Runs)
        {
            if (!Labels(run).Any())
                yield return Result(run, Unknown.Of(run, RunFacts.LabelAtWindow));
            else if (Labels(run).FirstOrDefault(l => byLabel[l].Any(r => r.Id != run.Id)) is { } twice)
                yield return Result(run, Found(run, twice, byLabel[twice].First(r => r.Id != run.Id)));
            else
                yield return Result(run, new Outcome.Fine());
        }
    }

    private static Outcome.Found Found(HomeRun run, string label, HomeRun other) => new(
        AlsoThere.With(Arg.Typed(label), Arg.Name(other)), LabelAnew,
        FieldRef.To(run.Item, string.Equals(run.LabelAtWindow, label, StringComparison.OrdinalIgnoreCase) ? RunFacts.LabelAtWindow : RunFacts.LabelAtPanel));

    private static IEnumerable<string> Labels(HomeRun run) =>
        new[] { run.LabelAtWindow, run.LabelAtPanel }.OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase);
}
