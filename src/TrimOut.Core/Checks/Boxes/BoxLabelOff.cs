using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Boxes;

/// <summary>The box that was matched to a unit carries its tag, or the number that the maker gave it alone.</summary>
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
        new Source(Source.CommonPractice,
            "box label = tag of the unit, alone or with its room, one that it had once, or the number of its own acknowledgement"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) =>
        subject.Item.Get(UnitFacts.BoxLabel) is not { } label ? NotChecked.Of(subject, UnitFacts.BoxLabel)
        : OwnLabels(subject).Any(own => IsSame(label, own)) || IsOfItsEarlierTag(subject, label) ? new Outcome.Fine()
        : new Outcome.Found(AnotherTag.With(Arg.Typed(label), Arg.Name(subject)), LookForBox.With(Arg.Name(subject)),
            FieldRef.To(subject.Item, UnitFacts.BoxLabel));

    /// <summary>Its tag, alone or with its room; and the number under which the maker acknowledged it, where no other unit has that one too.</summary>
    private static IEnumerable<string> OwnLabels(Unit unit)
    {
        yield return unit.Tag;
        if (unit.Window.Room is { } room)
        {
            foreach (var name in new[] { room.Name, room.FullName })
            {
                yield return unit.Tag + name;
                yield return name + unit.Tag;
            }
        }
        if (unit.Item.Evidence(UnitFacts.Acknowledgement) is not { } number)
            yield break;
        yield return number + unit.Tag;
        yield return unit.Tag + number;
        if (!unit.House.Units.Any(u => u.Id != unit.Id && SameName.Comparer.Equals(u.Item.Get(UnitFacts.Acknowledgement), number)))
            yield return number;
    }

    /// <summary>Whether the maker wrote the tag that it was ordered by, and no unit has that one now.</summary>
    private static bool IsOfItsEarlierTag(Unit unit, string label) =>
        unit.WasTagged(tag => IsSame(label, tag)) && !unit.House.Units.Any(u => IsSame(label, u.Tag));

    private static bool IsSame(string label, string own) => string.Equals(Plain(label), Plain(own), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string label) => string.Concat(label.Where(char.IsLetterOrDigit));
}
