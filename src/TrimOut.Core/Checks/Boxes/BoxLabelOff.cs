using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>The box that was matched to a unit carries its tag.</summary>
/// <remarks>
/// <para>Why: two units of nearly one size change places, and both hang a quarter inch wrong.</para>
/// <para>To clear: find the box of this tag, or say that the label is wrong once the size is proved.</para>
/// </remarks>
public sealed class BoxLabelOff : UnitCheck
{
    private static readonly Message AnotherTag = new("The box says \"{0}\"; this is {1}.");
    private static readonly Message LookForBox = new("Look for the box of {0}, and measure what is in this one.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("box-label-off", "Box has another tag", Severity.Stop, Phase.Receive,
        new Source(Source.CommonPractice, "box label = tag of the unit"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.BoxLabel) is not { } label ? NotChecked.Of(subject, UnitFacts.BoxLabel)
        : string.Equals(Plain(label), Plain(subject.Tag), StringComparison.OrdinalIgnoreCase) ? new Outcome.Fine()
        : new Outcome.Found(AnotherTag.With(Arg.Typed(label), Arg.Name(subject)), LookForBox.With(Arg.Name(subject)),
            FieldRef.To(subject.Item, UnitFacts.BoxLabel));

    private static string Plain(string label) => string.Concat(label.Where(char.IsLetterOrDigit));
}
