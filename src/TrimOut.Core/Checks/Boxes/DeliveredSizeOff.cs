using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>What came has the size that was ordered.</summary>
/// <remarks>
/// <para>Why: a wrong size is found on the ladder, a week after the day on which it could be sent back.</para>
/// <para>To clear: raise it with the maker; put right a size that was misread.</para>
/// </remarks>
public sealed class DeliveredSizeOff : UnitCheck
{
    private static readonly Message OtherSize = new("{0} x {1} was ordered; {2} x {3} came.");
    private static readonly Message RaiseIt = new("See whether it belongs to another window; else raise it with the maker before it is hung.");

    private static readonly Message RaiseWhatHangs = new("It hangs: if it fits, waive this and say so; else raise it with the maker now.");

    /// <summary>How far a delivered size may be off: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 16);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("delivered-size-off", "Delivered size is not the order size", Severity.Stop, Phase.Receive,
        new Source(Source.CommonPractice, "delivered - ordered within 1/16 in"));

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
        var working = Working.Of(Info.Source.Formula, () =>
            [("ordered", $"{width.In(subject)} x {height.In(subject)}"), ("delivered", $"{gotWidth.In(subject)} x {gotHeight.In(subject)}")]);
        return (gotWidth - width).Abs() <= Tolerance && (gotHeight - height).Abs() <= Tolerance
            ? new Outcome.Fine(working)
            : new Outcome.Found(OtherSize.With(width, height, gotWidth, gotHeight), Moment.Hangs(subject) ? RaiseWhatHangs : RaiseIt,
                FieldRef.To(subject.Item, (gotWidth - width).Abs() > Tolerance ? UnitFacts.DeliveredWidth : UnitFacts.DeliveredHeight), working);
    }
}
