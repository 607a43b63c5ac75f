using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Cables;

/// <summary>Units that hang on one cable are as many as the sheet allows, and enough voltage arrives at each when all start together.</summary>
/// <remarks>
/// <para>Why: their currents add on the common stretch, so the last one stalls where each alone would run.</para>
/// <para>To clear: a home run for each unit. Where the sheet allows several on an output: a thicker cable or a shorter way.</para>
/// </remarks>
public sealed class CableShared : HouseCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("cable-shared", "Several units on one cable", Severity.Stop, Phase.RoughIn,
        new Source("Ohm's law; the currents of all units behind a stretch add. The maker's sheet says whether it is allowed",
            "units on the cable <= units per output; volts at each = volts before it - 2 x stretch x ohms per metre x current of all behind >= least volts; way to each <= longest run"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var branches = house.Runs.Where(r => r.BranchesOff is not null).ToLookup(r => r.BranchesOff!.Id);
        if (branches.Count == 0)
            yield break;
        var reached = new HashSet<string>();
        foreach (var trunk in house.Runs.Where(r => r.BranchesOff is null && branches.Contains(r.Id)))
        {
            var (runs, after) = Tree(trunk, branches);
            reached.UnionWith(runs.Select(r => r.Id));
            foreach (var (run, outcome) in runs.Zip(Judge(runs, after)))
                yield return Result(run, outcome);
        }
        foreach (var run in house.Runs.Where(r => r.BranchesOff is not null && !reached.Contains(r.Id)))
            yield return Result(run, new Outcome.Found($"{run.Name} branches off a cable that comes back to it: none of them begins at a panel.", "Say which of them begins at the panel.", FieldRef.To(run.Item, RunFacts.BranchesOff)));
    }

    private static (List<HomeRun> Runs, List<int> After) Tree(HomeRun trunk, ILookup<string, HomeRun> branches)
    {
        var (runs, after) = (new List<HomeRun> { trunk }, new List<int> { -1 });
        for (var at = 0; at < runs.Count; at++)
        {
            foreach (var branch in branches[runs[at].Id])
            {
                runs.Add(branch);
                after.Add(at);
            }
        }
        return (runs, after);
    }

    private IEnumerable<Outcome> Judge(List<HomeRun> runs, List<int> after)
    {
        var trunk = runs[0];
        var unknown = Unsaid(runs);
        var results = unknown is null
            ? SharedCable.Of(trunk.Supply!.Value, [.. runs.Select((r, at) => new Tap(after[at], Stretch(r)!.Value, r.OhmsPerMetre!.Value, Load.Of(r.Unit)!.Value))])
            : [];
        return runs.Select((run, at) => Allowed(trunk) is not { } most
                ? trunk.Panel is { } panel ? Unknown.Of(panel.Type, PanelTypeFacts.UnitsPerOutput, panel, PanelFacts.Type) : Unknown.Of(trunk, RunFacts.Panel)
            : runs.Count > most ? Forbidden(runs, run, most, unknown is null ? results[at] : null)
            : unknown as Outcome ?? Arrives(runs, run, results[at]));
    }

    /// <summary>Units on an output: of the panel it lands on; until then what all panels of the house agree on, or all of the kit while it has none.</summary>
    private static int? Allowed(HomeRun trunk)
    {
        if (trunk.Panel is { } panel)
            return panel.Type?.UnitsPerOutput;
        var house = trunk.House;
        var types = house.Panels.IsEmpty ? house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i)) : house.Panels.Select(p => p.Type);
        return types.Select(t => t?.UnitsPerOutput).Distinct().Take(2).ToList() is [var one] ? one : null;
    }

    private static Outcome.Found Forbidden(List<HomeRun> runs, HomeRun run, int most, TapResult? result) => new(
        $"{string.Join(", ", runs.Select(r => r.Name))} hang on one cable; the sheet allows {(most == 1 ? "1 unit" : $"{most} units")} on an output." +
        (result is { } volts ? $" All together, {NumberText.Show(Math.Round(volts.Arrives.Volts, 2), "V")} would arrive here." : ""),
        Moment.WallOpen(run.Unit) ? "Pull a home run for each unit, while the wall is open." : "Ask the maker whether the output may feed them all; else power one of them another way.",
        FieldRef.To((run.BranchesOff is null ? runs[1] : run).Item, RunFacts.BranchesOff));

    private Outcome Arrives(List<HomeRun> runs, HomeRun run, TapResult there)
    {
        var least = run.Unit.Kind!.LeastVolts!.Value;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("supply", runs[0].Supply!.Value.ToString()), ("units on the cable", NumberText.Plain(runs.Count)), ("its stretch", Stretch(run)!.Value.RunIn(run)), ("current through it", there.Through.ToString()),
            ("way from the panel", there.OneWay.RunIn(run)), ("arrive", there.Arrives.ToString()), ("least volts", least.ToString()), ("longest run", run.Cable!.LongestRun?.RunIn(run) ?? "not in the table"),
        ]);
        if (there.Arrives < least)
        {
            var (volts, needed) = Digits.Apart(there.Arrives.Volts, least.Volts, "V");
            return new Outcome.Found($"{volts} arrive when all {runs.Count} units on the cable start together; it needs {needed}.", RunFigures.Mend(run), FieldRef.To(run.Item, RunFacts.Cable), working);
        }
        return run.Cable!.LongestRun is { } longest && there.OneWay > longest
            ? new Outcome.Found($"From the panel to it are {there.OneWay.RunIn(run)} of cable; the kit's table ends at {longest.LimitIn(run)}.", RunFigures.Mend(run), FieldRef.To(run.Item, RunFacts.Cable), working)
            : new Outcome.Fine(working);
    }

    /// <summary>Legs and tails; a branch has no tail at a panel.</summary>
    private static Length? Stretch(HomeRun run) => run.LegsLength + run.TailAtWindow + (run.BranchesOff is null ? run.TailAtPanel : run.TailAtPanel ?? Length.Zero);

    private static Outcome.NotChecked? Unsaid(List<HomeRun> runs)
    {
        foreach (var run in runs)
        {
            if ((RunFigures.UnknownLimits(run) ?? (Stretch(run) is null ? RunFigures.UnknownLength(run) : null)) is { } missing)
                return missing with { Missing = Unknown.OfOther.With(missing.Missing, Wording.Arg.Name(run)) };
        }
        return null;
    }
}
