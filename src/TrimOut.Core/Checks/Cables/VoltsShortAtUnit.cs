using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>Enough voltage arrives at the unit, while it runs and in the moment it starts.</summary>
/// <remarks>
/// <para>Why: under its least voltage a motor stalls part way, and the fault looks like a bad motor.</para>
/// <para>To clear: thicker cable, a shorter way, or a panel nearer to it. The kit's table is shown beside it; the tighter governs.</para>
/// </remarks>
public sealed class VoltsShortAtUnit : RunCheck
{
    private static readonly Message TooFewVolts = new("{0} arrive while it runs and {1} while it starts; it needs {2}. {3}");

    private static readonly Message PlannedTooFew = new("With the tails that are planned {0}");
    private static readonly Message SupplyTooLow = new("The supply gives {0}, and it needs {1}: no cable helps.");
    private static readonly Message OtherSheet =
        new("Compare both sheets with what is printed on the unit and on the panel; else plan a panel that gives more, or another kind.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("volts-short-at-unit", "Not enough volts at the unit", Severity.Stop, Phase.RoughIn,
        new Source("Ohm's law; conductors by ASTM B258 and IEC 60028, metric sizes by IEC 60228",
            "supply - current x 2 x length x ohms per meter >= minimum volts; tails not left yet as planned"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (RunFigures.OnSharedCable(subject))
            return new Outcome.DoesNotApply();
        if (RunFigures.UnknownLimits(subject) is { } sheet)
            return sheet;
        var limits = subject.Limits!.Value;
        if (limits.Supply <= limits.Least)
        {
            return new Outcome.Found(SupplyTooLow.With(limits.Supply, limits.Least), OtherSheet,
                FieldRef.To(subject.Unit.Kind!.Item, CoveringKindFacts.LeastVolts));
        }
        if (RunFigures.Reckoned(subject, l => limits.MarginVolts(l).Volts < 0) is not { } reckoned)
            return RunFigures.UnknownLength(subject)!;
        var (length, from) = reckoned;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("supply", limits.Supply.ToString()), ("length, one way", length.RunIn(subject)),
                ("ohms per meter", NumberText.Plain(Math.Round(limits.OhmsPerMetre, 6))),
            ("running", $"{limits.Running}: {limits.WhileRunning(length)} arrive"), ("starting", $"{limits.Starting}: {limits.WhileStarting(length)} arrive"),
            ("minimum volts", limits.Least.ToString()), ("margin", $"{limits.MarginVolts(length)}, {limits.MarginLength(length).LimitIn(subject)}"),
        ]);
        if (limits.MarginVolts(length).Volts >= 0)
            return new Outcome.Fine(working);
        var (running, _) = Digits.Apart(limits.WhileRunning(length).Volts, limits.Least.Volts, "V");
        var (starting, _) = Digits.Apart(limits.WhileStarting(length).Volts, limits.Least.Volts, "V");
        var (_, least) = Digits.Apart(limits.Least.Volts + limits.MarginVolts(length).Volts, limits.Least.Volts, "V");
        var tooFew = TooFewVolts.With(running, starting, least, RunFigures.BothLimits(limits));
        return new Outcome.Found(from == Reckoned.Planned ? PlannedTooFew.With(tooFew) : tooFew, RunFigures.Mend(subject),
            FieldRef.To(subject.Item, RunFacts.Cable), working);
    }
}
