using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>What was ordered is not changed here after the maker acknowledged it.</summary>
/// <remarks>
/// <para>Why: the maker makes what was acknowledged, whatever stands here since; the box then comes wrong, and nobody knows why.</para>
/// <para>To clear: tell the maker, and write the number of the new acknowledgement; or put back what was ordered. By the order of the history:
/// a value that was put after the acknowledgement, and after the day of the sheet, counts as changed.</para>
/// </remarks>
public sealed class ChangedSinceOrder : UnitCheck
{
    private static readonly Message Changed = new("Written after the maker acknowledged it: {0}.");
    private static readonly Message ValueOf = new("{0}, now {1}");
    private static readonly Message Cleared = new("{0} cleared");
    private static readonly Message CallToday =
        new("Call the maker today: until it is cut it can be changed. Write the new acknowledgement, or put back what was ordered.");
    private static readonly Message SeeWhatCame = new("See what came, and write that here; if it can't be hung so, raise it with the maker.");
    private static readonly Message WriteWhatHangs = new("Write what hangs there: the owner orders a spare by it.");

    private static readonly ImmutableArray<Fact> OfUnit =
    [
        UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity, UnitFacts.HeadCover,
        UnitFacts.OrderWidth, UnitFacts.OrderHeight,
    ];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("changed-since-order", "Changed after the maker acknowledged it", Severity.Caution, Phase.Order,
        new Source(Source.CommonPractice, "nothing that the order tells was put after its acknowledgement"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        if (subject.Item.Latest(UnitFacts.Acknowledgement) is not { Stored: not null } acknowledged)
            return NotChecked.Of(subject, UnitFacts.Acknowledgement);
        var since = subject.Item.Latest(UnitFacts.OrderedOn) is { Stored: not null } frozen && frozen.IsAfter(acknowledged) ? frozen : acknowledged;
        var changed = OfUnit.Select(f => (Item: subject.Item, Fact: f)).Append((subject.Window.Item, WindowFacts.Mount))
            .Where(c => c.Item.Latest(c.Fact) is { } head && head.Id != since.Id && head.IsAfter(since)).ToList();
        return changed.Count == 0
            ? new Outcome.Fine()
            : new Outcome.Found(Changed.With(Arg.All(changed.Select(c => (Arg)Said(subject, c.Item, c.Fact)))),
                Moment.Hangs(subject) ? WriteWhatHangs : subject.BoxIsHere ? SeeWhatCame : CallToday,
                FieldRef.To(changed[0].Item, changed[0].Fact));
    }

    private static Sentence Said(Unit unit, Item item, Fact fact) => item.Latest(fact)?.Value is { } value
        ? ValueOf.With(Arg.Label(fact), Arg.Value(fact, value))
        : Cleared.With(Arg.Label(fact));
}
