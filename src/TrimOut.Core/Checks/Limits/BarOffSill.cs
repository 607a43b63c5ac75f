using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Limits;

/// <summary>Closed, the bar just touches the sill.</summary>
/// <remarks>
/// <para>Why: above it light comes in; beyond it the fabric goes slack and bows.</para>
/// <para>To clear: set the close limit again.</para>
/// </remarks>
public sealed class BarOffSill : UnitCheck
{
    private static readonly Message StandsOff = new("Closed, the bar stands {0} above the sill.");
    private static readonly Message SetAgain = new("Set the close limit again: the bar just touches, no slack and no bow.");

    private static readonly Message TooShortForThat =
        new("It is {0} shorter than its opening is high, and closed its bar is said to stand {1} above the sill.");
    private static readonly Message MeasureAgain = new("Close it and measure again under the bar; if it reaches the sill, put right the height that is wrong.");

    /// <summary>How much shorter than its opening it may be and still reach the sill, by its brackets: common practice, no published source.</summary>
    public static readonly Length Reaches = Length.FromInches(3);

    /// <summary>A gap that still counts as touching: common practice, no published source.</summary>
    public static readonly Length Tolerance = Length.FromInches(0, 1, 8);

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("bar-off-sill", "Closed bar is off the sill", Severity.Caution, Phase.Limits,
        new Source(Source.CommonPractice, "gap <= 1/8 in; inside mounts; " +
            "smallest height - delivered height, or order height, <= 3 in where the gap is that small"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Window.Mount == Mount.Outside ? new Outcome.DoesNotApply()
        : subject.Item.Get(UnitFacts.CloseGap) is not { } gap ? NotChecked.Of(subject, UnitFacts.CloseGap)
        : gap <= Tolerance && ShortBy(subject) is { } less
            ? new Outcome.Found(TooShortForThat.With(less, gap), MeasureAgain, FieldRef.To(subject.Item, UnitFacts.CloseGap))
        : gap <= Tolerance ? new Outcome.Fine()
        : new Outcome.Found(StandsOff.With(gap), SetAgain, FieldRef.To(subject.Item, UnitFacts.CloseGap));

    private static Length? ShortBy(Unit unit) => (unit.Window.SmallestHeight, unit.Item.Get(UnitFacts.DeliveredHeight) ?? unit.Item.Get(UnitFacts.OrderHeight))
        is ({ } opening, { } height) && opening - height > Reaches ? opening - height : null;
}
