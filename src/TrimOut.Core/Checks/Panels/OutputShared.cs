using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>An output feeds no more units than the sheet allows.</summary>
/// <remarks>
/// <para>Why: two motors that start together on one output pull it down, and neither moves.</para>
/// <para>To clear: land one of them on a free output.</para>
/// </remarks>
public sealed class OutputShared : HouseCheck
{
    private static readonly Message Shared = new("{0} output {1} feeds {2}; the sheet allows {3}.");
    private static readonly Message LandElsewhere = new("Land one of them on a free output.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("output-shared", "Too many runs on one output", Severity.Stop, Phase.Power,
        new Source(Source.MakersSheet, "runs on an output <= units per output"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var places = house.Runs.Where(r => r.Panel is not null && r.Output is not null).ToLookup(r => (r.Panel!.Id, r.Output));
        foreach (var place in places)
        {
            foreach (var run in place)
                yield return Result(run, Judge(run, run.Panel!, [.. place]));
        }
    }

    private static Outcome Judge(HomeRun run, Panel panel, ImmutableArray<HomeRun> there) =>
        panel.Type?.UnitsPerOutput is not { } most ? Unknown.Of(panel.Type, PanelTypeFacts.UnitsPerOutput, panel, PanelFacts.Type)
        : there.Length <= most ? new Outcome.Fine()
        : new Outcome.Found(Shared.With(Arg.Name(panel), run.Output!.Value, Arg.All(there.Select(r => Arg.Name(r))), most),
            LandElsewhere, FieldRef.To(run.Item, RunFacts.Output));
}
