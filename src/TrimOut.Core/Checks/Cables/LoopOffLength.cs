using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>The first loop test reads what the recorded run must read.</summary>
/// <remarks>
/// <para>Why: a loop that reads something else is a bad joint, a short near the window, another cable, or a run that goes elsewhere. It does not see a
/// short so near the window, or a joint so good, that it changes less than the tolerance: that is told beside the figure. A plain short and a cut are
/// another check's.</para>
/// <para>To clear: read it again with the leads taken off; then look for the fault that the reading points at, or put the legs right.</para>
/// </remarks>
public sealed class LoopOffLength : RunCheck
{
    private static readonly Message ConductorInTable = new("a conductor of {0} that is in the table");
    private static readonly Message Off = new("The loop reads {0}; {1} of {2} read {3}. {4}");
    private static readonly Message OffReckoned = new("The loop reads {0}; {1} of {2} read {3} ({4}). {5}");
    private static readonly Message ReadsShort = new("That is {0} of cable: it is shorted there, another run, or the legs are recorded too long.");
    private static readonly Message ReadsLong = new("That is {0} of cable: a thinner one, another run, a bad joint, or the legs are recorded too short.");
    private static readonly Message ReadsLeads = new("Nothing is left for the cable: the leads touched each other, or it is shorted at this end.");
    private static readonly Message ReadAgain = new("Read it again with clean leads, the far end shorted. Then look for the fault, or put the legs right.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loop-off-length", "First loop test does not match the run", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice,
            "reading = 2 x length x ohms per meter at the cable's temperature + meter leads, within the meter's 0.5 % and 2 1/2 steps of its last " +
                "digit, 1.25 % for a temperature within 2.5 K, and legs within 1 % and 80 mm each; while nobody said what its last digit is: within " +
                "10 % + 0.1 ohm for the contacts; without a temperature 20 C, without leads none"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.FirstTest is not { } test)
            return NotChecked.Of(subject, RunFacts.FirstLoop);
        if (subject.Cable is not { Conductor: { } size } cable)
            return NotChecked.Of(subject.Cable, CableTypeFacts.Conductor, subject, RunFacts.Cable);
        if (cable.Stranding is not { } made)
            return NotChecked.Of(cable, CableTypeFacts.Stranding);
        if (Conductors.OhmsPerMetre(size, made, test.At) is not { Ok: true } ohms)
            return new Outcome.NotChecked(ConductorInTable.With(Arg.Name(cable)), FieldRef.To(cable.Item, CableTypeFacts.Conductor));
        if (subject.OneWay is not { } length)
            return RunFigures.UnknownLength(subject)!;
        var expected = test.Expected(length, ohms.Value);
        var band = LoopBand.AgainstLength(test, expected, subject.LegsLength!.Value, subject.Legs.Length, ohms.Value);
        if (test.IsOpenOrShorted(expected, band))
            return new Outcome.DoesNotApply();
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("length, one way", length.RunIn(subject)), ($"ohms per meter at {test.At}", NumberText.Plain(Math.Round(ohms.Value, 6))),
            ("worked out with", test.Circumstances.In(subject.House)), ("expected", expected.ToString()), ("read", subject.Show(RunFacts.FirstLoop)),
            ("tolerance", band.ToString()),
            ("not seen", $"a short in the last {Length.Min(length, TwoWire.FromLoop(band, ohms.Value)).LimitIn(subject)}, a joint under {band}"),
        ]);
        return LoopReading.Agrees(test.Read, expected, band)
                && !(test is { Step: null, ShowsNoCable: true } && expected - (test.Leads ?? default) >= LoopBand.LeastToShow)
            ? new Outcome.Fine(working)
            : new Outcome.Found(Fault(test, length, cable, expected, Reading(test, expected, ohms.Value)), ReadAgain,
                FieldRef.To(subject.Item, RunFacts.FirstLoop), working);
    }

    private static Sentence Fault(LoopTest test, Length length, CableType cable, Resistance expected, Sentence reading)
    {
        Arg[] figures = [Arg.Loop(test.Read), Arg.Run(length), Arg.Name(cable), Arg.Loop(expected)];
        return test.Leads is null && test.CableAt is null ? Off.With([.. figures, reading]) : OffReckoned.With([.. figures, test.Circumstances, reading]);
    }

    private static Sentence Reading(LoopTest test, Resistance expected, decimal ohmsPerMetre) => test.ShowsNoCable
        ? ReadsLeads
        : (test.Read < expected ? ReadsShort : ReadsLong).With(Arg.Limit(TwoWire.FromLoop(test.OfCable, ohmsPerMetre)));
}
