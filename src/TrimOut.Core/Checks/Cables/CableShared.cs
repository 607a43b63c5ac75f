using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>Units that hang on one cable are as many as the sheet allows, and enough voltage arrives at each when all start together.</summary>
/// <remarks>
/// <para>Why: their currents add on the common stretch, so the last one stalls where each alone would run.</para>
/// <para>To clear: a home run for each unit. Where the sheet allows several on an output: a thicker cable or a shorter way.</para>
/// </remarks>
public sealed class CableShared : HouseCheck
{
    private static readonly Message Circle = new("{0} branches off a cable that comes back to it: none of them begins at a panel.", "circle");
    private static readonly Message SayWhichBegins = new("Say which of them begins at the panel.");
    private static readonly Message OneAllowed = new("{0} share one cable; the sheet allows 1 unit on an output.");
    private static readonly Message SeveralAllowed = new("{0} share one cable; the sheet allows {1} units on an output.");
    private static readonly Message AllTogether = new("{0} All together, {1} would arrive here.");
    private static readonly Message RunForEach = new("Pull a home run for each unit, while the wall is open.");
    private static readonly Message AskMaker = new("Ask the maker whether the output may feed them all; else power one of them another way.");
    private static readonly Message TooFewVolts = new("{0} arrive when all {1} units on the cable start together; it needs {2}.");
    private static readonly Message PastTable = new("From the panel to it are {0} of cable; the kit's table ends at {1}.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("cable-shared", "Several units on one cable", Severity.Stop, Phase.RoughIn,
        new Source("Ohm's law; the currents of all units behind a stretch add. The maker's sheet says whether it is allowed",
            "units on the cable <= units per output; volts at each = volts before it - 2 x stretch x ohms per meter x current of all behind >= minimum " +
                "volts; way to each <= longest run"));

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
            foreach (var result in runs.Zip(Judge(runs, after)).SelectMany(j => Results(j.First, j.Second)))
                yield return result;
        }
        foreach (var run in house.Runs.Where(r => r.BranchesOff is not null && !reached.Contains(r.Id)))
            yield return Result(run, new Outcome.Found(Circle.With(Arg.Name(run)), SayWhichBegins, FieldRef.To(run.Item, RunFacts.BranchesOff)));
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
            ? SharedCable.Of(trunk.Supply!.Value, [.. runs.Select((r, at) =>
                new Tap(after[at], Stretch(r)!.Value, r.OhmsPerMetre!.Value, Load.Of(r.Unit)!.Value))])
            : [];
        return runs.Select((run, at) => Allowed(trunk) is not { } most
                ? trunk.Panel is { } panel ? NotChecked.Of(panel.Type, PanelTypeFacts.UnitsPerOutput, panel, PanelFacts.Type)
                : NotChecked.Of(trunk, RunFacts.Panel)
            // Where the sheet is waived for, the volts still are to arrive.
            : runs.Count > most ? Outcome.All(Forbidden(runs, run, most, unknown is null ? results[at] : null),
                unknown is null ? Arrives(runs, run, results[at]) as Outcome.Found : null)!
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

    private static Outcome.Found Forbidden(List<HomeRun> runs, HomeRun run, int most, TapResult? result)
    {
        var names = Arg.All(runs.Select(r => Arg.Name(r)));
        var forbidden = most == 1 ? OneAllowed.With(names) : SeveralAllowed.With(names, most);
        return new Outcome.Found(result is { } volts ? AllTogether.With(forbidden, Arg.Number(Math.Round(volts.Arrives.Volts, 2), "V")) : forbidden,
            Moment.WallOpen(run.Unit) ? RunForEach : AskMaker, FieldRef.To((run.BranchesOff is null ? runs[1] : run).Item, RunFacts.BranchesOff));
    }

    private Outcome Arrives(List<HomeRun> runs, HomeRun run, TapResult there)
    {
        var least = run.Unit.Kind!.LeastVolts!.Value;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("supply", runs[0].Supply!.Value.ToString()), ("units on the cable", NumberText.Plain(runs.Count)),
            ("its stretch", Stretch(run)!.Value.RunIn(run)), ("current through it", there.Through.ToString()),
            ("way from the panel", there.OneWay.RunIn(run)), ("arrive", there.Arrives.ToString()),
            ("minimum volts", least.ToString()), ("longest run", run.Cable!.LongestRun?.RunIn(run) ?? "not in the table"),
        ]);
        var (volts, needed) = Digits.Apart(there.Arrives.Volts, least.Volts, "V");
        return Outcome.All(
            there.Arrives < least ? Faulty(TooFewVolts.With(volts, runs.Count, needed)) : null,
            run.Cable!.LongestRun is { } longest && there.OneWay > longest ? Faulty(PastTable.With(Arg.Run(there.OneWay), Arg.Limit(longest))) : null)
            ?? (run.Cable!.LongestRun is null ? NotChecked.Of(run.Cable, CableTypeFacts.LongestRun, run, RunFacts.Cable) : (Outcome)new Outcome.Fine(working));

        Outcome.Found Faulty(Sentence fault) => new(fault, RunFigures.Mend(run), FieldRef.To(run.Item, RunFacts.Cable), working);
    }

    /// <summary>Legs and tails; a branch has no tail at a panel.</summary>
    private static Length? Stretch(HomeRun run) => run.LegsLength + run.TailAtWindow
        + (run.BranchesOff is null ? run.TailAtPanel : run.TailAtPanel ?? Length.Zero);

    private static Outcome.NotChecked? Unsaid(List<HomeRun> runs)
    {
        foreach (var run in runs)
        {
            if ((RunFigures.UnknownLimits(run) ?? (Stretch(run) is null ? RunFigures.UnknownLength(run) : null)) is { } missing)
                return missing with { Missing = NotChecked.OfOther.With(missing.Missing, Arg.Name(run)) };
        }
        return null;
    }
}
