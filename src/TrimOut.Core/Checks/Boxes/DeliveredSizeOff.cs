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
/// reads what was made of it: either is right, and a unit that came narrower waits for what the sheet says of that.</para>
/// </remarks>
public sealed class DeliveredSizeOff : UnitCheck
{
    private static readonly Message OtherSize = new("{0} x {1} was ordered; {2} x {3} came.");
    private static readonly Message RaiseIt = new("See whether it belongs to another window; else raise it with the maker before it is hung.");

    private static readonly Message RaiseWhatHangs = new("It hangs: if it fits, waive this and say so; else raise it with the maker now.");

    /// <summary>How far a delivered size may be off: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 16);

    /// <summary>The most that the maker may have taken off a width while the sheet says nothing of it: common practice, no published source.</summary>
    public static readonly Length MostTakenOff = Length.FromInches(1);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("delivered-size-off", "Delivered size is not the order size", Severity.Stop, Phase.Receive,
        new Source(Source.CommonPractice, "delivered - ordered, or delivered width - ordered width less the deduction, within 1/16 in"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        foreach (var fact in (Fact<Length>[])[UnitFacts.OrderWidth, UnitFacts.OrderHeight, UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight])
        {
            if (subject.Item.Get(fact) is null)
                return NotChecked.Of(subject, fact);
        }
        var (width, height) = (subject.Item.Get(UnitFacts.OrderWidth)!.Value, subject.Item.Get(UnitFacts.OrderHeight)!.Value);
        var (gotWidth, gotHeight) = (subject.Item.Get(UnitFacts.DeliveredWidth)!.Value, subject.Item.Get(UnitFacts.DeliveredHeight)!.Value);
        var made = subject.MadeFrom(width);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("ordered", $"{width.In(subject)} x {height.In(subject)}"), ("made, wide", made is { } narrower ? narrower.In(subject) : "not known"),
            ("delivered", $"{gotWidth.In(subject)} x {gotHeight.In(subject)}"),
        ]);
        var (wide, high) = (IsAbout(gotWidth, width) || (made is { } less && IsAbout(gotWidth, less)), IsAbout(gotHeight, height));
        if (!wide && high && made is null && gotWidth < width && width - gotWidth <= MostTakenOff && subject.WidthUnsaid is { } unsaid)
            return NotChecked.Of(subject.Kind, unsaid, subject, UnitFacts.Kind);
        return wide && high
            ? new Outcome.Fine(working)
            : new Outcome.Found(OtherSize.With(width, height, gotWidth, gotHeight), Moment.Hangs(subject) ? RaiseWhatHangs : RaiseIt,
                FieldRef.To(subject.Item, !wide ? UnitFacts.DeliveredWidth : UnitFacts.DeliveredHeight), working);
    }

    private static bool IsAbout(Length got, Length size) => (got - size).Abs() <= Tolerance;
}
