using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Copies;

/// <summary>No two windows have one tag.</summary>
/// <remarks>
/// <para>Why: two laptops can each add a window under the next free tag; boxes and cables of one then go to the other.</para>
/// <para>To clear: give one of them another tag, or remove it when both are the same opening.</para>
/// </remarks>
public sealed class TagTwice() : Check<Window>(Subjects.Windows)
{
    private static readonly Message OneOther = new("{0} is also the tag of a window in {1}.");
    private static readonly Message SeveralOthers = new("{0} is also the tag of {1} windows in {2}.");
    private static readonly Message NoRoom = new("no room");
    private static readonly Message AnotherTag = new("Give one of them another tag, or remove it if both are the same opening.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tag-twice", "Two windows have the same tag", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice, "every tag on one window only, whatever its case"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        if (subject.Item.Get(WindowFacts.Tag) is not { } tag)
            return new Outcome.DoesNotApply();
        var others = subject.House.Look(Lookups.WindowsByTag, tag).Where(w => w != subject.Id).Select(w => subject.House.FindWindow(w)!).ToList();
        return others.Count == 0
            ? new Outcome.Fine()
            : new Outcome.Found(Fault(subject, tag, others), AnotherTag, FieldRef.To(subject.Item, WindowFacts.Tag));
    }

    private static Sentence Fault(Window window, string typed, List<Window> others)
    {
        var tag = Arg.Of([Arg.Typed(ShownText.Key(typed).ToUpperInvariant())], Arg.Name(window));
        var rooms = Arg.Of(others.Select(w => Arg.Name(w)),
            Arg.All(others.Select(w => w.Room).DistinctBy(r => r?.Name).Select(r => r is null ? NoRoom : Arg.Name(r))));
        return others.Count == 1 ? OneOther.With(tag, rooms) : SeveralOthers.With(tag, others.Count, rooms);
    }
}
