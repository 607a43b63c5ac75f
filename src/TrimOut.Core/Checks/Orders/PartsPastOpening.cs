using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Orders;

/// <summary>Several units of one opening fit into it side by side.</summary>
/// <remarks>
/// <para>Why: each unit by itself is right, and together they do not go in.</para>
/// <para>To clear: make the parts smaller, with a gap between them.</para>
/// </remarks>
public sealed class PartsPastOpening : WindowCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("parts-past-opening", "Units together are wider than the opening", Severity.Stop, Phase.Order,
        new Source(Source.CommonPractice, "sum of the parts <= smallest of top, middle, bottom"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Units.Length < 2 || subject.Mount == Mount.Outside)
            return new Outcome.DoesNotApply();
        if (subject.SmallestWidth is not { } opening)
            return Unknown.Of(subject, WindowFacts.WidthTop);
        if (subject.Units.FirstOrDefault(u => u.Item.Get(UnitFacts.PartWidth) is null) is { } without)
            return new Outcome.NotChecked($"part of the opening of {without.Tag}", FieldRef.To(without.Item, UnitFacts.PartWidth));
        var parts = subject.Units.Select(u => u.Item.Get(UnitFacts.PartWidth)!.Value).ToList();
        var sum = parts.Aggregate(Length.Zero, (a, b) => a + b);
        var working = Working.Of(Info.Source.Formula, () => [.. parts.Select((p, at) => (subject.Units[at].Tag, p.In(subject))), ("sum", sum.In(subject)), ("opening", opening.In(subject))]);
        return sum <= opening
            ? new Outcome.Fine(working)
            : new Outcome.Found($"The parts make {sum.In(subject)} together; the opening is {opening.In(subject)} at its narrowest.",
                $"Take {(sum - opening).In(subject)} or more off the parts.", FieldRef.To(subject.Units[^1].Item, UnitFacts.PartWidth), working);
    }
}
