using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Cables;

/// <summary>The first loop test reads what the recorded run must read.</summary>
/// <remarks>
/// <para>Why: a loop that reads something else is an open, a short, a nail, another cable, or a run that goes elsewhere.</para>
/// <para>To clear: read it again with the leads taken off; then look for the fault that the reading points at, or put the legs right.</para>
/// </remarks>
public sealed class LoopOffLength : RunCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loop-off-length", "First loop test does not fit the run", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "reading = 2 x length x ohms per metre at the cable's temperature + meter leads, within 10 % + 0.1 ohm for the contacts; without a temperature 20 C, without leads none"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.FirstTest is not { } test)
            return Unknown.Of(subject, RunFacts.FirstLoop);
        if (subject.Cable is not { Conductor: { } size } cable)
            return Unknown.Of(subject.Cable, CableTypeFacts.Conductor, subject, RunFacts.Cable);
        if (cable.Stranding is not { } made)
            return Unknown.Of(cable, CableTypeFacts.Stranding);
        if (Conductors.OhmsPerMetre(size, made, test.At) is not { Ok: true } ohms)
            return new Outcome.NotChecked($"a conductor of {cable.Name} that is in the table", FieldRef.To(cable.Item, CableTypeFacts.Conductor));
        if (subject.OneWay is not { } length)
            return RunFigures.UnknownLength(subject)!;
        var expected = test.Expected(length, ohms.Value);
        var shown = subject.Show(RunFacts.FirstLoop);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("length, one way", length.RunIn(subject)), ($"ohms per metre at {test.At}", NumberText.Plain(Math.Round(ohms.Value, 6))), ("reckoned with", test.Circumstances), ("expected", expected.ToString()),
            ("read", shown), ("tolerance", LoopReading.Tolerance(expected).ToString()),
        ]);
        return LoopReading.Agrees(test.Read, expected)
            ? new Outcome.Fine(working)
            : new Outcome.Found($"The loop reads {shown}; {length.RunIn(subject)} of {cable.Name} read {expected}{(test.Leads is null && test.CableAt is null ? "" : $" ({test.Circumstances})")}. {Reading(subject, test, expected, ohms.Value)}",
                "Read it again with clean leads, the far end shorted. Then look for the fault, or put the legs right.", FieldRef.To(subject.Item, RunFacts.FirstLoop), working);
    }

    private static string Reading(HomeRun run, LoopTest test, Resistance expected, decimal ohmsPerMetre) =>
        test.Read == LoopReading.Open ? "A conductor is cut, or the far end is not shorted."
        : test.Read < expected ? $"That is {TwoWire.FromLoop(test.OfCable, ohmsPerMetre).LimitIn(run)} of cable: it is shorted there, another run, or the legs are recorded too long."
        : $"That is {TwoWire.FromLoop(test.OfCable, ohmsPerMetre).LimitIn(run)} of cable: a thinner one, another run, a bad joint, or the legs are recorded too short.";
}
