using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A cable does not carry the tag of another unit, nor a tag that its own window had before.</summary>
/// <remarks>
/// <para>Why: two cables that carry each other's tag at both ends agree with themselves, and each unit is tested, landed and named
/// as the other. Where the two ends differ another check speaks.</para>
/// <para>To clear: see which window each cable really goes to, then label both ends with its tag.</para>
/// </remarks>
public sealed class LabelOffUnit : RunCheck
{
    private static readonly Message OtherTag = new("Its cable is labeled \"{0}\", which is the tag of another unit.");
    private static readonly Message OldTag = new("Its cable is labeled \"{0}\", which was its tag once; its tag is {1} now.", "old-tag");
    private static readonly Message NewLabels = new("Make new labels that say {0}, for both ends, and write here what they say.");
    private static readonly Message FindOut =
        new("Short the window end and read at the panel which cable it is; then label both ends with the tag of its unit.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("label-off-unit", "Cable has another unit's tag", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "no label is the tag of another unit, or an earlier tag of its own"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (!subject.Labels.Any())
            return NotChecked.Of(subject, RunFacts.LabelAtWindow);
        if (subject.Labels.Skip(1).Any())
            return new Outcome.DoesNotApply();
        var label = subject.Labels.First();
        var field = FieldRef.To(subject.Item, subject.LabelAtWindow is not null ? RunFacts.LabelAtWindow : RunFacts.LabelAtPanel);
        return IsOfAnother(subject, label) ? new Outcome.Found(OtherTag.With(Arg.Typed(label)), FindOut, field)
            : subject.Unit.WasTagged(tag => Same(label, tag))
                ? new Outcome.Found(OldTag.With(Arg.Typed(label), Arg.Name(subject.Unit)), NewLabels.With(Arg.Name(subject.Unit)), field)
            : new Outcome.Fine();
    }

    private static bool Same(string one, string two) => SameName.Comparer.Equals(one, two);

    private static bool IsOfAnother(HomeRun run, string label) =>
        // A tag of a unit is the window's, with a letter where it has several.
        new[] { label, label.Length > 1 ? label[..^1] : label }.SelectMany(t => run.House.Look(Lookups.WindowsByTag, t)).Distinct()
            .SelectMany(w => run.House.FindWindow(w)!.Units)
            .Any(u => u.Id != run.Unit.Id && Same(u.Tag, label));
}
