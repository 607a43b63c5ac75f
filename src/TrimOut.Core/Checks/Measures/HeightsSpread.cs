using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Measures;

/// <summary>The three heights of an opening agree, or an outside mount starts higher above it than they differ by.</summary>
/// <remarks>
/// <para>Why: a large spread is a misread tape more often than a crooked opening, and a crooked opening shows.</para>
/// <para>To clear: measure again. If it stays, think of an outside mount.</para>
/// </remarks>
public sealed class HeightsSpread : WindowCheck
{
    private static readonly Message Apart = new("The heights go from {0} to {1}: {2} apart, where {3} is the limit.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("heights-spread", "The three heights are far apart", Severity.Caution, Phase.Measure,
        new Source(Source.CommonPractice, "largest - smallest <= limit, outside <= head above"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject) =>
        subject.SmallestHeight is { } smallest && subject.LargestHeight is { } largest
            ? Spread.Judge(subject, Apart, smallest, largest, Info.Source.Formula, FieldRef.To(subject.Item,
                Spread.OffTheOthers(subject, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight)), ofWidths: false)
            : NotChecked.Of(subject,
                new[] { WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight }.First(f => subject.Item.Get(f) is null));
}
