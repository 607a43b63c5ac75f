using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>There is as much of each cable on hand as its home runs need.</summary>
/// <remarks>
/// <para>Why: the last run is pulled on the day before the drywall comes.</para>
/// <para>To clear: bring another box. Whether the lengths can be cut from the boxes is the cut plan's to say.</para>
/// </remarks>
public sealed class CableShortOnHand : HouseCheck
{
    private static readonly Message OneRun = new("{0} of {1} for 1 run");
    private static readonly Message SeveralRuns = new("{0} of {1} for {2} runs");
    private static readonly Message AtLeastOneRun = new("at least {0} of {1} for 1 run");
    private static readonly Message AtLeastSeveralRuns = new("at least {0} of {1} for {2} runs");
    private static readonly Message OnHandUnknown = new("cable on hand; needed are {0}");
    private static readonly Message LengthOfRun = new("length of the run of {0}");
    private static readonly Message TooLittle = new("Needed are {0}; {1} are on hand.");
    private static readonly Message BringMore = new("Bring {0} more, in whole runs: a run has no splice.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("cable-short-on-hand", "Not enough cable on hand", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "sum of legs x (1 + allowance) + tail at window + tail at panel <= on hand; a tail not measured yet is taken as the whole width"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        foreach (var cable in house.Runs.Where(r => r.Item.Get(RunFacts.Cable) is not null).GroupBy(r => r.Item.Get(RunFacts.Cable)!.Value.Id))
        {
            if (cable.First().Cable is { } type)
                yield return Result(type, Judge(type, [.. cable]));
        }
    }

    private Outcome Judge(CableType type, ImmutableArray<HomeRun> runs)
    {
        var needed = runs.Aggregate(Length.Zero, (sum, r) => sum + (r.Needed ?? Length.Zero));
        var figure = Figure(type, runs, needed);
        if (type.OnHand is not { } there)
            return new Outcome.NotChecked(OnHandUnknown.With(figure), FieldRef.To(type.Item, CableTypeFacts.OnHand));
        var working = Working.Of(Info.Source.Formula, () =>
            [("runs", NumberText.Plain(runs.Length)), ("needed", Arg.Whole(needed).For(new Reader(type.House))), ("on hand", there.RunIn(type))]);
        if (needed > there)
        {
            return new Outcome.Found(TooLittle.With(figure, Arg.Run(there)), BringMore.With(Arg.Whole(needed - there)),
                FieldRef.To(type.Item, CableTypeFacts.OnHand), working);
        }
        return runs.FirstOrDefault(r => r.Needed is null) is { } open
            ? new Outcome.NotChecked(LengthOfRun.With(Arg.Name(open)),
                (RunFigures.UnknownLength(open) ?? Unknown.Of(open.Unit.Window, WindowFacts.RoughWidth)).FillIn)
            : new Outcome.Fine(working);
    }

    private static Sentence Figure(CableType type, ImmutableArray<HomeRun> runs, Length needed)
    {
        var (cable, all) = (Arg.Name(type), runs.All(r => r.Needed is not null));
        return runs.Length == 1
            ? (all ? OneRun : AtLeastOneRun).With(Arg.Whole(needed), cable)
            : (all ? SeveralRuns : AtLeastSeveralRuns).With(Arg.Whole(needed), cable, runs.Length);
    }
}
