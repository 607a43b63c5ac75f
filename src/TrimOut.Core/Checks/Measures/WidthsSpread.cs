using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The three widths of an opening agree, or an outside mount reaches past what they differ by.</summary>
/// <remarks>
/// <para>Why: a large spread is a misread tape more often than a crooked opening, and a crooked opening shows.</para>
/// <para>To clear: measure again. If it stays, think of an outside mount.</para>
/// </remarks>
public sealed class WidthsSpread : WindowCheck
{
    private static readonly Message Apart = new("The widths go from {0} to {1}: {2} apart, where {3} is the limit.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("widths-spread", "The three widths are far apart", Severity.Caution, Phase.Measure,
        new Source(Source.CommonPractice, "largest - smallest <= limit, outside <= overlap"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject) =>
        subject.SmallestWidth is { } smallest && subject.LargestWidth is { } largest
            ? Spread.Judge(subject, Apart, smallest, largest, Info.Source.Formula, FieldRef.To(subject.Item,
                Spread.OffTheOthers(subject, WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom)), ofWidths: true)
            : NotChecked.Of(subject, new[] { WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom }.First(f => subject.Item.Get(f) is null));
}
