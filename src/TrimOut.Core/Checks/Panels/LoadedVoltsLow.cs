using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>While the unit moves, as much voltage arrives as its cable lets through, and no more than it can.</summary>
/// <remarks>
/// <para>Why: what is lost beyond the cable is lost in a splice, and a bad splice gets worse.</para>
/// <para>To clear: with the panel off, make the splices again, pull on each, and read again.</para>
/// </remarks>
public sealed class LoadedVoltsLow : RunCheck
{
    private static readonly Message LostOutside =
        new("{0} were read while it moved; {1} are predicted: {2} are lost outside the cable, in a splice most likely.");
    private static readonly Message SpliceAgain = new("Panel off. Make the splices again, pull on each, and read again.");

    private static readonly Message NotUnderLoad =
        new("{0} were read while it moved and {1} with nothing connected; the cable loses {2} or more: it stood still, or was misread.", "not-under-load");
    private static readonly Message ReadWhileItMoves = new("Read it again at the unit itself while the unit lifts.");

    /// <summary>
    /// The least part of what the sheet's current loses on the hottest cable that any unit loses while it lifts: common practice, no published source.
    /// </summary>
    public const decimal LeastShare = 0.4m;

    /// <summary>How much less than predicted may be read: what the two readings may be off together.</summary>
    public static Voltage Tolerance(Voltage open, Voltage loaded) => new(HandMeter.OfVolts(open.Volts) + HandMeter.OfVolts(loaded.Volts));

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loaded-volts-low", "Loaded volts are not what the cable explains", Severity.Caution, Phase.Power,
        new Source(Source.CommonPractice,
            "loaded volts >= open-circuit volts - running current x loop of the cable - what both readings may be off, 0.5 % and 0.02 V each; and " +
                "at least 0.4 of that loss is read, less what the readings may be off: with one meter for both, 0.5 % of their difference and 0.04 V"));

    /// <summary>How far the difference of the two readings may be off: what one meter shows too much, it shows too much of both.</summary>
    private static decimal Between(HomeRun run, Voltage open, Voltage loaded) =>
        run.Item.Latest(Companion.Meter(RunFacts.OpenVolts.Name))?.Stored is { } meter
        && run.Item.Latest(Companion.Meter(RunFacts.LoadedVolts.Name))?.Stored == meter
            ? HandMeter.OfVolts(Math.Abs(open.Volts - loaded.Volts)) + (HandMeter.Digits * HandMeter.VoltStep)
            : Tolerance(open, loaded).Volts;

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.LoadedVolts) is not { } loaded)
            return NotChecked.Of(subject, RunFacts.LoadedVolts);
        if (subject.Item.Get(RunFacts.OpenVolts) is not { } open)
            return NotChecked.Of(subject, RunFacts.OpenVolts);
        if (Cables.RunFigures.UnknownLimits(subject) is { } sheet)
            return sheet;
        if (subject.OneWay is not { } length)
            return Cables.RunFigures.UnknownLength(subject)!;
        var limits = subject.Limits!.Value;
        var predicted = new Voltage(Math.Abs(open.Volts)) - (limits.Supply - limits.WhileRunning(length));
        var read = new Voltage(Math.Abs(loaded.Volts));
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("open-circuit", open.ToString()), ("running current", limits.Running.ToString()), ("length, one way", length.RunIn(subject)),
            ("predicted", predicted.ToString()), ("read", loaded.ToString()), ("tolerance", Tolerance(open, loaded).ToString()),
            ("loop by these volts", TwoWire.LoopOf(new Voltage(Math.Abs(open.Volts)) - read, limits.Running).ToString()),
            ("second loop test", subject.Show(RunFacts.SecondLoop) is { Length: > 0 } second ? second : "not read"),
        ]);
        // The sheet's current is the most, and so is the temperature: a cable in the cool and a unit with little to lift lose less, and never so little.
        var lost = new Voltage(Math.Abs(open.Volts)) - read;
        var least = (limits.Supply - limits.WhileRunning(length)).Volts * LeastShare;
        if (Math.Abs(open.Volts) >= limits.Least.Volts && read.Volts <= Math.Abs(open.Volts) + Tolerance(open, loaded).Volts
            && Between(subject, open, loaded) is var band && band < least && lost.Volts + band < least)
        {
            return new Outcome.Found(NotUnderLoad.With(loaded, open, new Voltage(least)), ReadWhileItMoves,
                FieldRef.To(subject.Item, RunFacts.LoadedVolts), working);
        }
        return read >= predicted - Tolerance(open, loaded)
            ? new Outcome.Fine(working)
            : new Outcome.Found(LostOutside.With(loaded, predicted, predicted - read), SpliceAgain, FieldRef.To(subject.Item, RunFacts.LoadedVolts), working);
    }
}
