using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>What came has the size that was ordered, or is as wide as the maker makes it of that.</summary>
/// <remarks>
/// <para>Why: a wrong size is found on the ladder, a week after the day on which it could be sent back.</para>
/// <para>To clear: raise it with the maker; put right a size that was misread. A box is printed with the size that was ordered, and a tape on the unit
/// reads what was made of it: either is right. Which of them was read is asked where a unit reads as it was ordered and is made narrower; one that came
/// narrower waits for what the sheet says of that.</para>
/// </remarks>
public sealed class DeliveredSizeOff : UnitCheck
{
    private static readonly Message OtherSize = new("{0} x {1} was ordered; {2} x {3} came.");
    private static readonly Message NothingTakenOff = new("{0} was ordered, of which {1} is made; the unit itself is {2} wide.");
    private static readonly Message RaiseIt = new("See whether it belongs to another window; else raise it with the maker before it is hung.");

    private static readonly Message RaiseWhatHangs = new("It hangs: if it fits, waive this and say so; else raise it with the maker now.");

    /// <summary>The most that the maker may have taken off a width while the sheet says nothing of it: common practice, no published source.</summary>
    public static readonly Length MostTakenOff = Length.FromInches(1);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("delivered-size-off", "Delivered size is not the order size", Severity.Stop, Phase.Receive,
        new Source(Source.CommonPractice,
            "delivered - ordered, or delivered width - ordered width less the deduction, within 1/16 in; by tape on the unit, the latter"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        foreach (var fact in (Fact<Length>[])[UnitFacts.OrderWidth, UnitFacts.OrderHeight, UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight])
        {
            if (subject.Item.Get(fact) is null)
                return NotChecked.Of(subject, fact);
        }
        // Of a box that was ordered again the one that came before says nothing.
        foreach (var read in (Fact<Length>[])[UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight])
        {
            if (!subject.IsOfTheLastBox(read))
                return NotChecked.Of(subject, read);
        }
        var (width, height) = (subject.Item.Get(UnitFacts.OrderWidth)!.Value, subject.Item.Get(UnitFacts.OrderHeight)!.Value);
        var (gotWidth, gotHeight) = (subject.Item.Get(UnitFacts.DeliveredWidth)!.Value, subject.Item.Get(UnitFacts.DeliveredHeight)!.Value);
        var made = subject.MadeFrom(width);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("ordered", $"{width.In(subject)} x {height.In(subject)}"), ("made, wide", made is { } narrower ? narrower.In(subject) : "not known"),
            ("delivered", $"{gotWidth.In(subject)} x {gotHeight.In(subject)}"),
        ]);
        var (asOrdered, high) = (ReceivedWidth.IsAbout(gotWidth, width), ReceivedWidth.IsAbout(gotHeight, height));
        var wide = asOrdered || (made is { } less && ReceivedWidth.IsAbout(gotWidth, less));
        var readFrom = subject.Item.Get(UnitFacts.SizeReadFrom);
        // Right on a label; by tape on the unit nothing was taken off.
        var uncut = ReceivedWidth.IsOfLabelOrUncut(subject) && readFrom != SizeReadFrom.Label;
        var waits = uncut && readFrom is null ? NotChecked.Of(subject, UnitFacts.SizeReadFrom)
            : subject.WidthUnsaid is { } unsaid && (uncut || (!wide && made is null && gotWidth < width && width - gotWidth <= MostTakenOff))
            ? NotChecked.Of(subject.Kind, unsaid, subject, UnitFacts.Kind)
            : null;
        List<Outcome.Found> faults = [];
        if (!high || !(wide || waits is not null))
        {
            faults.Add(new(OtherSize.With(width, height, gotWidth, gotHeight), Mend(subject),
                FieldRef.To(subject.Item, !wide ? UnitFacts.DeliveredWidth : UnitFacts.DeliveredHeight), working));
        }
        if (uncut && readFrom == SizeReadFrom.Unit && made is { } narrower)
            faults.Add(new(NothingTakenOff.With(width, narrower, gotWidth), Mend(subject), FieldRef.To(subject.Item, UnitFacts.DeliveredWidth), working));
        return Outcome.All(faults) ?? waits ?? (Outcome)new Outcome.Fine(working);
    }

    private static Sentence Mend(Unit unit) => Moment.Hangs(unit) ? RaiseWhatHangs : RaiseIt;
}
