using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Orders;

/// <summary>What was taken out of the house is not on order.</summary>
/// <remarks>
/// <para>Why: a removed unit is on no list any more, and the maker makes it all the same: its box comes, and nobody knows where it belongs.</para>
/// <para>To clear: bring it back; or cancel it with the maker and waive this with what was agreed. It is told of its window, and of the house where the
/// window was removed too.</para>
/// </remarks>
public sealed class RemovedOnOrder : HouseCheck
{
    private static readonly Message OnOrder = new("Removed, and still on order: {0}, {1}.", "on-order");
    private static readonly Message BoxHere = new("Removed, and its box is here: {0}, {1}.", "box-here");
    private static readonly Message ValueOf = new("{0} {1}");
    private static readonly Message Cancel = new("Call the maker today and cancel it, and waive this with what was agreed; or bring it back.");
    private static readonly Message SendBack =
        new("Ask the maker to take it back, or keep it as a spare, and waive this with what was agreed; or bring it back.");

    /// <summary>What the maker knows it by.</summary>
    private static readonly ImmutableArray<Fact> KnownBy =
        [UnitFacts.OrderedOn, UnitFacts.OrderWidth, UnitFacts.OrderHeight, UnitFacts.Acknowledgement];

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("removed-on-order", "Removed, and still on order", Severity.Caution, Phase.Order,
        new Source(Source.CommonPractice, "removed = not ordered, or its order was canceled"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        if (!house.Removals.Any(i => i.Removed))
            return [];
        return house.Items.Values.Where(i => i.Kind == ItemKind.Unit && !house.IsPresent(i) && i.Latest(UnitFacts.OrderedOn) is not null)
            .OrderBy(i => i.Place).Select(i => house.UnitAlone(i.Id)).OfType<Unit>().Select(u => Judge(house, u));
    }

    private CheckResult Judge(House house, Unit unit)
    {
        var window = house.FindWindow(unit.Window.Id);
        if (unit.Item.Get(UnitFacts.OrderedOn) is null)
            return new(Info, window?.Item ?? house.Job, new Outcome.Fine());
        var known = Arg.All(KnownBy.Select(f => (f, unit.Item.Latest(f)?.Value)).Where(f => f.Value is not null)
            .Select(f => (Arg)ValueOf.With(Arg.Label(f.f), Arg.Value(f.f, f.Value!))));
        return new(Info, window?.Item ?? house.Job, new Outcome.Found((unit.BoxIsHere ? BoxHere : OnOrder).With(Arg.Name(unit), known),
            unit.BoxIsHere ? SendBack : Cancel,
            window is null ? FieldRef.To(house.Job, HouseFacts.OpenItemsAgreed) : FieldRef.To(window.Item, WindowFacts.Note)));
    }
}
