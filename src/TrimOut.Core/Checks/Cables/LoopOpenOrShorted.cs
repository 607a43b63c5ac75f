using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>The first loop test finds a way through both conductors, and none that is plainly too short.</summary>
/// <remarks>
/// <para>Why: a cut or shorted cable is a dead window, and after the drywall it is a wall to open.</para>
/// <para>To clear: read it again; if it stays, repair the cable or pull a new one while the wall is open.</para>
/// </remarks>
public sealed class LoopOpenOrShorted : RunCheck
{
    private static readonly Message Open = new("The loop reads open. {0}");
    private static readonly Message Shorted =
        new("The loop reads {0}, as {1} of {2} do; the run is {3}: it is shorted on the way, this is another cable, or the legs are wrong.");
    private static readonly Message NowWallOpen =
        new("Read it again with the far end shorted well. If it stays, find the place or pull a new cable now, while the wall is open.");
    private static readonly Message WallClosed =
        new("Read it again with the far end shorted well. If it stays, look along the way before the house is finished, or pull a new cable.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loop-open-or-shorted", "First loop test finds a cut or a short", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice,
            "not open, and reading >= expected - 10 % - 0.1 ohm, or what the reading may be off where that is more; expected = 2 x " +
                "length x ohms per meter at the cable's temperature + meter leads"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.FirstTest is not { } test)
            return NotChecked.Of(subject, RunFacts.FirstLoop);
        if (test.Read == LoopReading.Open)
            return Found(subject, Open.With(RunFigures.OpenLoop));
        if (subject.Cable is not { Conductor: { } size } cable)
            return NotChecked.Of(subject.Cable, CableTypeFacts.Conductor, subject, RunFacts.Cable);
        if (cable.Stranding is not { } made)
            return NotChecked.Of(cable, CableTypeFacts.Stranding);
        if (Conductors.OhmsPerMetre(size, made, test.At) is not { Ok: true } ohms)
            return NotChecked.Of(cable, CableTypeFacts.Conductor);
        if (subject.OneWay is not { } length)
            return RunFigures.UnknownLength(subject)!;
        var expected = test.Expected(length, ohms.Value);
        var band = LoopBand.AgainstLength(test, expected, subject.LegsLength!.Value, subject.Legs.Length, ohms.Value);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("length, one way", length.RunIn(subject)), ("worked out with", test.Circumstances.In(subject.House)), ("expected", expected.ToString()),
            ("read", subject.Show(RunFacts.FirstLoop)), ("tolerance", new Resistance(Math.Max(LoopReading.Tolerance(expected).Ohms, band.Ohms)).ToString()),
        ]);
        return test.IsOpenOrShorted(expected, band)
            ? Found(subject,
                Shorted.With(Arg.Loop(test.Read), Arg.Limit(TwoWire.FromLoop(test.OfCable, ohms.Value)), Arg.Name(cable), Arg.Run(length)), working)
            : new Outcome.Fine(working);
    }

    private static Outcome.Found Found(HomeRun run, Sentence fault, Working? working = null) =>
        new(fault, Moment.WallOpen(run.Unit) ? NowWallOpen : WallClosed, FieldRef.To(run.Item, RunFacts.FirstLoop), working);
}
