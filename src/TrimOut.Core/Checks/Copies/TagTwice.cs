using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Copies;

/// <summary>No two windows have one tag.</summary>
/// <remarks>
/// <para>Why: two laptops can each add a window under the next free tag; boxes and cables of one then go to the other.</para>
/// <para>To clear: give one of them another tag, or remove it when both are the same opening.</para>
/// </remarks>
public sealed class TagTwice : HouseCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tag-twice", "Two windows have one tag", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "every tag on one window only, whatever its case"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var byTag = house.Windows.Where(w => w.Item.Get(WindowFacts.Tag) is not null).ToLookup(w => w.Tag, StringComparer.OrdinalIgnoreCase);
        return house.Windows.Where(w => w.Item.Get(WindowFacts.Tag) is not null).Select(w => Result(w, Judge(w, byTag[w.Tag])));
    }

    private static Outcome Judge(Window window, IEnumerable<Window> sameTag)
    {
        var others = sameTag.Where(w => w.Id != window.Id).ToList();
        return others.Count == 0
            ? new Outcome.Fine()
            : new Outcome.Found($"{window.Tag} is also the tag of {(others.Count == 1 ? "a window" : $"{others.Count} windows")} in {string.Join(", ", others.Select(w => w.Room?.Name ?? "no room").Distinct())}.",
                "Give one of them another tag, or remove it if both are the same opening.", FieldRef.To(window.Item, WindowFacts.Tag));
    }
}
