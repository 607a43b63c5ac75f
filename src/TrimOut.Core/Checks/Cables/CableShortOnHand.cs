using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>There is as much of each cable on hand as the home runs need that are still to be pulled.</summary>
/// <remarks>
/// <para>Why: the last run is pulled on the day before the drywall comes.</para>
/// <para>To clear: bring another box. Whether the lengths can be cut from the boxes is the cut plan's to say.</para>
/// </remarks>
public sealed class CableShortOnHand() : Check<CableType>(Subjects.Of(ItemKind.CableType, (house, item) => new CableType(house, item)))
{
    private static readonly Message OneRun = new("{0} of {1} for 1 run", "whole");
    private static readonly Message SeveralRuns = new("{0} of {1} for {2} runs", "whole");
    private static readonly Message AtLeastSeveralRuns = new("at least {0} of {1} for {2} runs", "at-least");
    private static readonly Message OnHandUnknown = new("cable on hand; needed are {0}");
    private static readonly Message LengthOfRun = new("length of the run of {0}");
    private static readonly Message TooLittle = new("Needed are {0}; {1} are on hand.");
    private static readonly Message BringMore = new("Bring {0} more, in whole runs: a run has no splice.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("cable-short-on-hand", "Not enough cable on hand", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice,
            "runs not pulled yet: " +
            "sum of legs x (1 + allowance) + tail at window + tail at panel <= on hand; a tail not measured yet is taken as the whole width"));

    /// <inheritdoc/>
    public override Outcome Judge(CableType subject)
    {
        var runs = subject.House.Look(Lookups.NeedsOfCable, subject.Id);
        if (runs.Count == 0)
            return new Outcome.DoesNotApply();
        var needed = Sum(runs);
        if (needed > subject.OnHand)
        {
            // What is in the wall is no longer needed. Only now is it asked which runs those are: for most cables there is enough for all.
            runs = [.. runs.Where(r => !HouseCuts.IsPulled(subject.House.FindUnit(r.Unit)!.Run!))];
            if (runs.Count == 0)
                return new Outcome.DoesNotApply();
            needed = Sum(runs);
        }
        var figure = Figure(subject, runs, needed);
        if (subject.OnHand is not { } there)
        {
            return runs.All(r => r.Needed is null) ? NotChecked.Of(subject, CableTypeFacts.OnHand)
                : new Outcome.NotChecked(OnHandUnknown.With(figure), FieldRef.To(subject.Item, CableTypeFacts.OnHand));
        }
        var working = Working.Of(Info.Source.Formula, () =>
            [("runs", NumberText.Plain(runs.Count)), ("needed", Arg.Whole(needed).For(new Reader(subject.House))), ("on hand", there.RunIn(subject))]);
        if (needed > there)
        {
            return new Outcome.Found(TooLittle.With(figure, Arg.Run(there)), BringMore.With(Arg.Whole(needed - there)),
                FieldRef.To(subject.Item, CableTypeFacts.OnHand), working);
        }
        return runs.FirstOrDefault(r => r.Needed is null).Unit is { } unit && subject.House.FindUnit(unit)?.Run is { } open
            ? new Outcome.NotChecked(LengthOfRun.With(Arg.Name(open)),
                (RunFigures.UnknownLength(open) ?? NotChecked.Of(open.Unit.Window, WindowFacts.RoughWidth)).FillIn)
            : new Outcome.Fine(working);
    }

    private static Length Sum(IReadOnlyList<(string Unit, Length? Needed)> runs) =>
        runs.Aggregate(Length.Zero, (sum, r) => sum + (r.Needed ?? Length.Zero));

    private static Sentence Figure(CableType type, IReadOnlyList<(string Unit, Length? Needed)> runs, Length needed)
    {
        var (cable, all) = (Arg.Name(type), runs.All(r => r.Needed is not null));
        return runs.Count == 1
            ? OneRun.With(Arg.Whole(needed), cable)
            : (all ? SeveralRuns : AtLeastSeveralRuns).With(Arg.Whole(needed), cable, runs.Count);
    }
}
