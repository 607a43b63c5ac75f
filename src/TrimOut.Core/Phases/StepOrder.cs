using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>What a step presupposes.</summary>
/// <param name="Before">Ids of steps that are done first: of the same unit, of its panel, of the house; for a step of the house, of every unit.</param>
/// <param name="NoStopOf">Phases none of whose stops may be open at what the step is about.</param>
/// <param name="AllEarlier">Whether every step that is asked in an earlier phase is done first, whatever it is.</param>
public sealed record Presupposed(ImmutableArray<string> Before, ImmutableArray<Phase> NoStopOf, bool AllEarlier = false);

/// <summary>Which step makes no sense before which other, and over which open stops: common practice, no published source.</summary>
/// <remarks>
/// Only what would have to be done again, or is lost, stands here: not the order in which it is handiest. A stop that the evidence of a step itself
/// brought up always speaks against marking that step, and needs no line.
/// </remarks>
public static class StepOrder
{
    private static readonly ImmutableDictionary<string, Presupposed> Table = ImmutableDictionary.CreateRange(
    [
        Step("opening-seen"),
        Step("covering-planned"),
        Step("socket-seen", "covering-planned"),
        Step("entry-marked", "covering-planned"),
        Step("openings-counted"),
        Step("paint-asked"),

        Step("route-chosen", "covering-planned"),
        Step("air-asked", "route-chosen"),
        Step("kept-from-mains"),
        Step("holes-guarded"),
        Step("drilling-guarded"),
        // Whatever is wrong with the entry or the lead side is pulled into the wall with the cable.
        Step("cable-pulled", "route-chosen").OverNoStopOf(Phase.WalkThrough),
        Step("both-ends-labelled", "cable-pulled"),
        Step("wall-photographed", "cable-pulled"),
        Step("spares-noted"),
        Step("fire-stops-seen", "cable-pulled"),
        Step("tested-first", "cable-pulled"),

        // From here on a wrong side, a thin gauge or a short tail costs a wall: whoever begins knows what is still wrong behind it.
        Step("cable-found", "cable-pulled").OverNoStopOf(Phase.WalkThrough, Phase.RoughIn),
        Step("entry-measured", "cable-found"),
        Step("tail-measured", "cable-found"),
        Step("tested-second", "cable-found"),

        Step("measured"),
        Step("part-measured", "measured"),
        Step("overlap-chosen"),
        Step("measured-again", "measured"),
        Step("in-the-way-noted"),

        Step("finish-chosen"),
        Step("size-worked-out", "measured").OverNoStopOf(Phase.Measure),
        Step("sheet-frozen", "measured-again", "finish-chosen", "size-worked-out").OverNoStopOf(Phase.WalkThrough, Phase.CloseIn, Phase.Measure, Phase.Order),
        Step("acknowledged", "sheet-frozen"),

        Step("box-matched", "sheet-frozen").OverNoStopOf(Phase.Receive),
        Step("looked-over", "sheet-frozen"),
        Step("serial-noted", "sheet-frozen"),

        Step("brackets-fixed", "box-matched").OverNoStopOf(Phase.Measure, Phase.Order, Phase.Receive),
        Step("centre-support-clear", "brackets-fixed").OverNoStopOf(Phase.Hang),
        Step("lead-in-front", "cable-found"),
        Step("clicked-in", "box-matched", "looked-over", "brackets-fixed", "centre-support-clear").OverNoStopOf(Phase.Receive, Phase.Hang),
        Step("cords-safe", "clicked-in"),
        Step("moves-free", "clicked-in"),

        Step("panel-hung"),
        Step("mains-connected", "panel-hung").OverNoStopOf(Phase.Power),
        Step("landed", "tested-second", "panel-hung").OverNoStopOf(Phase.RoughIn, Phase.CloseIn),
        Step("off-before-joints", "panel-hung"),
        Step("spliced", "landed", "off-before-joints").OverNoStopOf(Phase.Power),
        Step("volts-read", "spliced", "mains-connected").OverNoStopOf(Phase.Power),
        Step("output-proved", "volts-read"),

        // What is wrong with the power is taken for a bad motor once a unit is paired.
        Step("hub-paired", "volts-read").OverNoStopOf(Phase.Power, Phase.Pair),
        Step("remotes-paired", "volts-read").OverNoStopOf(Phase.Power, Phase.Pair),
        Step("moved-by-all", "hub-paired", "remotes-paired").OverNoStopOf(Phase.Power, Phase.Pair),

        Step("open-limit", "clicked-in", "volts-read").OverNoStopOf(Phase.Hang, Phase.Power),
        Step("close-limit", "clicked-in", "volts-read").OverNoStopOf(Phase.Hang, Phase.Power),
        Step("level-with-neighbours", "open-limit", "close-limit"),
        Step("preset-stored", "remotes-paired", "open-limit", "close-limit").OverNoStopOf(Phase.Limits),

        Step("shown", "moved-by-all", "open-limit", "close-limit").OverNoStopOf([.. PhaseNames.All]).AfterAllEarlier(),
        // What is shown, handed over and agreed is of work that was tested and has power: else it is done once more before a witness.
        Step("demonstrated", "tested-second", "volts-read", "moved-by-all", "open-limit", "close-limit"),
        Step("power-cut-shown", "clicked-in", "volts-read"),
        Step("binder-given", "tested-second", "volts-read"),
        Step("open-items-agreed", "tested-second", "volts-read"),
        Step(SignOff.StepId, "shown", "demonstrated", "binder-given", "open-items-agreed").OverNoStopOf([.. PhaseNames.All]).AfterAllEarlier(),
    ]);

    private static readonly Presupposed Nothing = new([], []);

    /// <summary>What a step presupposes; nothing for a step that a later version made.</summary>
    public static Presupposed Of(Step step) => Table.GetValueOrDefault(step.Id, Nothing);

    /// <summary>The steps that it presupposes and that are not done yet, each with the units, panels or the house that lack it.</summary>
    /// <param name="step">The step.</param>
    /// <param name="subject">Whose step it is: a unit, a panel or the house.</param>
    /// <param name="steps">The list of steps that the work is done by.</param>
    public static IEnumerable<(Step Before, IReadOnlyList<Subject> Lacking)> OpenBefore(Step step, Subject subject, StepList steps) =>
        Of(step).Before.Select(id => steps.Steps.FirstOrDefault(s => s.Id == id)).OfType<Step>()
            .Select(before => (before, (IReadOnlyList<Subject>)[.. Doing(before, subject).Where(s => Lacks(s, before, steps))]))
            .Where(b => b.Item2.Count > 0);

    /// <summary>Who does a step that another one presupposes.</summary>
    private static IEnumerable<Subject> Doing(Step before, Subject subject) => before.Subject switch
    {
        _ when before.Subject == subject.Item.Kind => [subject],
        ItemKind.House => [new JobItself(subject.House)],
        ItemKind.Panel when subject is Unit { Run.Panel: { } panel } => [panel],
        ItemKind.Unit when subject is JobItself => subject.House.Units,
        _ => [],
    };

    private static bool Lacks(Subject subject, Step before, StepList steps) =>
        subject.MarkOf(before) is null && steps.Open(before.Phase, subject).Contains(before) && steps.IsAsked(before, subject);

    /// <summary>The ids of the steps that the table knows.</summary>
    public static IEnumerable<string> Ids => Table.Keys;

    private static KeyValuePair<string, Presupposed> Step(string id, params string[] before) => new(id, new Presupposed([.. before], []));

    private static KeyValuePair<string, Presupposed> AfterAllEarlier(this KeyValuePair<string, Presupposed> step) =>
        new(step.Key, step.Value with { AllEarlier = true });

    private static KeyValuePair<string, Presupposed> OverNoStopOf(this KeyValuePair<string, Presupposed> step, params Phase[] phases) =>
        new(step.Key, step.Value with { NoStopOf = [.. phases] });
}
