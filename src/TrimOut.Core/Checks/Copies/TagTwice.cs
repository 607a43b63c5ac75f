using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Copies;

/// <summary>No two windows have one tag.</summary>
/// <remarks>
/// <para>Why: two laptops can each add a window under the next free tag; boxes and cables of one then go to the other.</para>
/// <para>To clear: give one of them another tag, or remove it when both are the same opening.</para>
/// </remarks>
public sealed class TagTwice : Check<Window>
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tag-twice", "Two windows have one tag", Severity.Stop, Phase.WalkThrough,
        "tags", new Source(Source.CommonPractice, "every tag on one window only, whatever its case"));

    /// <inheritdoc/>
    protected override IEnumerable<Window> Subjects(House house) => house.Windows.Where(w => w.Item.Get(WindowFacts.Tag) is not null);

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        var others = subject.House.Windows.Where(w => w.Id != subject.Id && string.Equals(w.Tag, subject.Tag, StringComparison.OrdinalIgnoreCase)).ToList();
        return others.Count == 0
            ? new Outcome.Fine()
            : new Outcome.Found($"{subject.Tag} is also the tag of {(others.Count == 1 ? "a window" : $"{others.Count} windows")} in {string.Join(", ", others.Select(w => w.Room?.Name ?? "no room").Distinct())}.",
                "Give one of them another tag, or remove it if both are the same opening.", FieldRef.To(subject.Item, WindowFacts.Tag));
    }
}
