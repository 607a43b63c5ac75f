using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Safety;

/// <summary>Brackets are fixed into something that holds.</summary>
/// <remarks>
/// <para>Why: plasterboard alone lets go, and a unit comes down on whoever stands under it.</para>
/// <para>To clear: screws into wood, steel or masonry, or anchors that are made for the load, as the sheet asks.</para>
/// </remarks>
public sealed class FixedIntoBoardAlone : UnitCheck
{
    private static readonly Message NothingBehind = new("Its brackets are fixed into drywall alone.");
    private static readonly Message FixAnew =
        new("Take it down. Fix the brackets into wood, steel or masonry, or with anchors that are made for the load, as the sheet asks.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("fixed-into-board-alone", "Brackets hold in drywall alone", Severity.Stop, Phase.Hang,
        new Source(Source.CommonPractice + "; the maker's sheet says what its brackets need", "fixed into wood, masonry, steel, or anchors made for the load"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) => subject.Item.Get(UnitFacts.FixedInto) switch
    {
        null => NotChecked.WhereAsked(subject, "brackets-fixed", subject, UnitFacts.FixedInto),
        FixedInto.BoardAlone => new Outcome.Found(NothingBehind, FixAnew, FieldRef.To(subject.Item, UnitFacts.FixedInto)),
        _ => new Outcome.Fine(),
    };
}
