using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>What was ordered is not changed here after the order was sent, and not after the maker acknowledged it.</summary>
/// <remarks>
/// <para>Why: the maker makes what was sent and acknowledged, whatever stands here since; the box then comes wrong, and nobody knows why.</para>
/// <para>To clear: tell the maker, and write the number of the new acknowledgement, or the day of the new order; or put back what was ordered. By the order
/// of the history: a value that is not the one of the day of the sheet, or of a later acknowledgement that took the place of another one, counts as
/// changed. The first acknowledgement answers what was sent.</para>
/// </remarks>
public sealed class ChangedSinceOrder : UnitCheck
{
    private static readonly Message AfterAnswer = new("Written after the maker acknowledged it: {0}.");
    private static readonly Message AfterOrder = new("Changed after the order was sent: {0}.", "sent");
    private static readonly Message ValueOf = new("{0}, now {1}");
    private static readonly Message Cleared = new("{0} cleared");
    private static readonly Message CallToday =
        new("Call the maker today: until it is cut it can be changed. Write the new acknowledgement, or put back what was ordered.");
    private static readonly Message SendAnew =
        new("Call the maker today: until it is cut it can be changed. Write the day of the order once more when the maker has it so, " +
            "or put back what was sent.");
    private static readonly Message SeeWhatCame = new("See what came, and write that here; if it can't be hung so, raise it with the maker.");
    private static readonly Message WriteWhatHangs = new("Write what hangs there: the owner orders a spare by it.");

    private static readonly ImmutableArray<Fact> OfUnit =
    [
        UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power, UnitFacts.Fabric, UnitFacts.Colour, UnitFacts.Opacity, UnitFacts.HeadCover,
        UnitFacts.OrderWidth, UnitFacts.OrderHeight,
    ];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("changed-since-order", "Changed after it was ordered", Severity.Caution, Phase.Order,
        new Source(Source.CommonPractice, "all that the order tells is what it was on the day of the sheet, or when a new acknowledgement came"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        var answered = subject.Item.Latest(UnitFacts.Acknowledgement) is { Stored: not null } answer ? answer : null;
        var freeze = Freeze.Of(subject.Item);
        if (answered is null && freeze is null)
            return NotChecked.Of(subject, UnitFacts.OrderedOn);
        // What was ordered again was ordered as it stood then.
        var again = subject.Item.Latest(UnitFacts.ReorderedOn) is { Stored: not null } anew ? anew : null;
        var agreed = answered is not null && (freeze is null || IsAnew(answered, freeze.Put)) ? answered : null;
        var changed = OfUnit.Select(f => (subject.Item, Fact: f)).Append((subject.Window.Item, WindowFacts.Mount))
            .Where(c => c.Item.Latest(c.Fact) is { } now && (again is null || now.IsAfter(again))
                && (agreed is not null ? IsOther(now, h => h.IsAfter(agreed)) : IsOther(now, freeze!.IsBefore)))
            .ToLookup(c => answered is not null && c.Item.Latest(c.Fact)!.IsAfter(answered));
        return (Outcome?)Outcome.All(Found(subject, AfterOrder, SendAnew, changed[false]), Found(subject, AfterAnswer, CallToday, changed[true]))
            ?? new Outcome.Fine();
    }

    /// <summary>Whether an acknowledgement took the place of another one that came with a sheet or since.</summary>
    private static bool IsAnew(Head answer, Head frozen)
    {
        var answers = 0;
        for (var one = answer; one is not null && !frozen.IsAfter(one); one = one.Before)
            answers += one.Stored is null ? 0 : 1;
        return answers > 1;
    }

    /// <summary>Whether a value is another one than the last of those that were not put later.</summary>
    private static bool IsOther(Head now, Func<Head, bool> isLater)
    {
        if (!isLater(now))
            return false;
        var then = now.Before;
        while (then is not null && isLater(then))
            then = then.Before;
        return then?.Stored != now.Stored;
    }

    private static Outcome.Found? Found(Unit unit, Message said, Message call, IEnumerable<(Item Item, Fact Fact)> changed) =>
        changed.ToList() is not [var first, ..] all ? null
            : new Outcome.Found(said.With(Arg.All(all.Select(c => (Arg)Said(unit, c.Item, c.Fact)))),
                Moment.Hangs(unit) ? WriteWhatHangs : unit.BoxIsHere ? SeeWhatCame : call, FieldRef.To(first.Item, first.Fact));

    private static Sentence Said(Unit unit, Item item, Fact fact) => item.Latest(fact)?.Value is { } value
        ? ValueOf.With(Arg.Label(fact), Arg.Value(fact, value))
        : Cleared.With(Arg.Label(fact));
}
