using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>The loop reads the same after drywall as before.</summary>
/// <remarks>
/// <para>Why: nothing was done to the cable in between, so a difference is damage: a screw through it, a cut, a crush. It does not see a short so near
/// the window, or a joint so good, that it changes less than the tolerance, nor a leak: the reading with the far end open sees shorts and leaks.</para>
/// <para>To clear: find the place while the paint is fresh. A tail that was cut shorter on purpose is read as a first test again.</para>
/// </remarks>
public sealed class SecondLoopDiffers : RunCheck
{
    private static readonly Message Differs = new("The first test read {0}, the second {1}. {2}");
    private static readonly Message ReckonedWith = new("{0} ({1})");
    private static readonly Message FirstWasOpen = new("The first test found no way through and the second does: the first can't be trusted.");
    private static readonly Message FirstIsOff =
        new("The second fits the length of the run and the first does not: the first was misread, or it was read of another cable.");
    private static readonly Message MoreThanBefore = new("A joint or a crushed conductor adds resistance, or a lead made bad contact.");
    private static readonly Message LessThanBefore = new("The two conductors touch on the way: a screw or a staple, most likely.");
    private static readonly Message ReadAgain =
        new("Read it again with clean leads. If it stays, look along the way for the screw that was driven last, before the house is finished.");

    private static readonly Message ReadAgainNow =
        new("Read it again with clean leads, panel off. If it stays, look along the way for the screw that was driven last, or keep the unit off its output.");
    private static readonly Message ReadBothWays =
        new("Read it once more, and see at both ends that it is this cable. If it stays, write that as the first reading too, or waive this and say why.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("second-loop-differs", "Second loop test differs from the first", Severity.Stop, Phase.CloseIn,
        new Source(Source.CommonPractice,
            "both at 20 C without leads: difference <= what both readings may be off by the meter, 0.5 % and 2 1/2 steps of its last " +
                "digit, and by 1.25 % for a temperature within 2.5 K; while nobody said what its last digit is: <= 10 % of the first + " +
                "0.1 ohm for the contacts"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.FirstTest is not { } before)
            return NotChecked.Of(subject, RunFacts.FirstLoop);
        if (subject.SecondTest is not { } after)
            return NotChecked.Of(subject, RunFacts.SecondLoop);
        var (first, second) = (before.At20, after.At20);
        var open = first == LoopReading.Open || second == LoopReading.Open;
        var band = open ? default : LoopBand.Between(before, after);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("first", subject.Show(RunFacts.FirstLoop)), ("worked out with", before.Circumstances.In(subject.House)), ("at 20 C without leads", Print(first)),
            ("second", subject.Show(RunFacts.SecondLoop)), ("worked out with", after.Circumstances.In(subject.House)), ("at 20 C without leads", Print(second)),
            ("tolerance", open ? "none" : band.ToString()),
        ]);
        if (LoopReading.Agrees(second, first, band))
            return new Outcome.Fine(working);
        var reading = second == LoopReading.Open ? RunFigures.OpenLoop
            : first == LoopReading.Open ? FirstWasOpen
            : second > first ? MoreThanBefore
            : LessThanBefore;
        if (FitsLength(subject, after) == true && FitsLength(subject, before) == false)
        {
            return new Outcome.Found(Differs.With(Reckoned(before), Reckoned(after), FirstIsOff), ReadBothWays, FieldRef.To(subject.Item, RunFacts.FirstLoop),
                working);
        }
        return new Outcome.Found(Differs.With(Reckoned(before), Reckoned(after), reading), Moment.Hangs(subject.Unit) ? ReadAgainNow : ReadAgain,
            FieldRef.To(subject.Item, RunFacts.SecondLoop), working);
    }

    /// <summary>Whether a reading fits the length of the run, by the cable's sheet; null while that can't be said.</summary>
    private static bool? FitsLength(HomeRun run, LoopTest test)
    {
        if (run.Cable is not { Conductor: { } size, Stranding: { } made } || run.OneWay is not { } length
            || Conductors.OhmsPerMetre(size, made, test.At) is not { Ok: true } ohms)
            return null;
        var expected = test.Expected(length, ohms.Value);
        return LoopReading.Agrees(test.Read, expected, LoopBand.AgainstLength(test, expected, run.LegsLength!.Value, run.Legs.Length, ohms.Value));
    }

    private static Arg Reckoned(LoopTest test) => test.Leads is null && test.CableAt is null
        ? Arg.Loop(test.Read)
        : ReckonedWith.With(Arg.Loop(test.Read), test.Circumstances);

    private static string Print(Resistance ohms) => ohms == LoopReading.Open ? "open" : ohms.ToString();
}
