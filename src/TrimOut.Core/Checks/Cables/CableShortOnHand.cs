using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Cables;

/// <summary>There is as much of each cable on hand as its home runs need.</summary>
/// <remarks>
/// <para>Why: the last run is pulled on the day before the drywall comes.</para>
/// <para>To clear: bring another box. Whether the lengths can be cut from the boxes is the cut plan's to say.</para>
/// </remarks>
public sealed class CableShortOnHand : HouseCheck
{
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
        var figure = $"{(runs.Any(r => r.Needed is null) ? "at least " : "")}{Whole(needed, type)} of {type.Name} for {runs.Length} run{(runs.Length == 1 ? "" : "s")}";
        if (type.OnHand is not { } there)
            return new Outcome.NotChecked($"cable on hand; needed are {figure}", FieldRef.To(type.Item, CableTypeFacts.OnHand));
        var working = Working.Of(Info.Source.Formula, () => [("runs", NumberText.Plain(runs.Length)), ("needed", Whole(needed, type)), ("on hand", there.RunIn(type))]);
        if (needed > there)
            return new Outcome.Found($"Needed are {figure}; {there.RunIn(type)} are on hand.", $"Bring {Whole(needed - there, type)} more, in whole runs: a run has no splice.",
                FieldRef.To(type.Item, CableTypeFacts.OnHand), working);
        return runs.FirstOrDefault(r => r.Needed is null) is { } open
            ? new Outcome.NotChecked($"length of the run of {open.Name}", (RunFigures.UnknownLength(open) ?? Unknown.Of(open.Unit.Window, WindowFacts.RoughWidth)).FillIn)
            : new Outcome.Fine(working);
    }

    private static string Whole(Length length, CableType type) => type.House.DisplayUnits == DisplayUnits.Inches
        ? NumberText.Show(Math.Ceiling(length.Feet), "ft")
        : NumberText.Show(Math.Ceiling(length.Metres), "m");
}
