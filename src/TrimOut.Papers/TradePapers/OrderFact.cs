using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Papers.Tables;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.TradePapers;

/// <summary>What an order sheet prints of a unit, and the fields that it comes from.</summary>
/// <param name="Label">What it is called.</param>
/// <param name="Entry">What is printed.</param>
/// <param name="Value">The same for the table: a length as a number in the units of the house.</param>
/// <param name="Same">Whether two states of the unit say the same: a length is the same in whatever units it is shown.</param>
/// <param name="From">The fields that it comes from, by item.</param>
internal sealed record OrderFact(
    string Label, Func<Unit, Inline> Entry, Func<Unit, SheetCell> Value, Func<Unit, Unit, bool> Same, Func<Unit, IEnumerable<(string Item, string Field)>> From)
{
    /// <summary>Whether it is a length, so that the head of its column says the unit.</summary>
    public bool IsLength { get; private init; }

    /// <summary>The values of sheets behind it that nobody checked.</summary>
    /// <param name="unit">The unit.</param>
    public IReadOnlyList<Fact> UncheckedBehind(Unit unit) => UncheckedValues.Read(unit, u => Value(u).ToString()).Unchecked;

    /// <summary>The head of its column in the table.</summary>
    /// <param name="units">What lengths are in.</param>
    public string HeadIn(DisplayUnits units) => Label.ToLowerInvariant() + (IsLength ? $", {SheetCell.UnitOf(units)}" : "");

    public static readonly OrderFact Tag = new("Box label", u => u.Tag, u => u.Tag, (a, b) => a.Tag == b.Tag, u =>
    [
        (u.Window.Id, WindowFacts.Tag.Name),
        .. u.House.Items.Values.Where(i => i.Under == u.Window.Id && i.Kind == ItemKind.Unit)
            .SelectMany(i => new[] { (i.Id, UnitFacts.Position.Name), (i.Id, Item.RemovedField) }),
    ]);

    public static readonly OrderFact Kind = OfUnit(UnitFacts.Kind);
    public static readonly OrderFact Width = Size(UnitFacts.OrderWidth);

    /// <summary>Whether the width is that of the opening or the made one, by the kind and the mount, so that each line says it.</summary>
    public static readonly OrderFact WidthIs = new("Width is",
        u => OrderedWidthOf(u) is { } fact ? u.Kind!.Entry(fact) : Inline.Dash,
        u => OrderedWidthOf(u) is { } fact ? u.Kind!.Show(fact) : "",
        (a, b) => a.OrderedWidth is null || a.OrderedWidth == b.OrderedWidth,
        u =>
        [
            (u.Id, UnitFacts.Kind.Name), (u.Window.Id, WindowFacts.Mount.Name),
            .. OrderedWidthOf(u) is { } fact ? [(u.Kind!.Id, fact.Name)] : Array.Empty<(string, string)>(),
        ]);

    public static readonly OrderFact Height = Size(UnitFacts.OrderHeight);
    public static readonly OrderFact Mount = Of(WindowFacts.Mount, u => u.Window);
    public static readonly OrderFact LeadSide = OfUnit(UnitFacts.LeadSide);
    public static readonly OrderFact MotorEnd = PerUnit(Of(CoveringKindFacts.MotorEnd, u => u.Kind, UnitFacts.Kind));
    public static readonly OrderFact Power = OfUnit(UnitFacts.Power);
    public static readonly OrderFact Fabric = OfUnit(UnitFacts.Fabric);
    public static readonly OrderFact Colour = OfUnit(UnitFacts.Colour);
    public static readonly OrderFact Opacity = OfUnit(UnitFacts.Opacity);
    public static readonly OrderFact HeadCover = OfUnit(UnitFacts.HeadCover);

    /// <summary>The room, which is not looked up in the views of the house: a house of the past has none yet.</summary>
    public static readonly OrderFact Room = new("Room", u => RoomOf(u).OrDash(), u => RoomOf(u) ?? "", (a, b) => RoomOf(a) == RoomOf(b), u =>
    [
        (u.Window.Id, WindowFacts.Room.Name), (u.Window.RoomId ?? "", RoomFacts.Name.Name), (u.Window.RoomId ?? "", Item.RemovedField),
    ]);

    /// <summary>All that is frozen with a sheet. The maker's number comes only afterwards.</summary>
    public static readonly IReadOnlyList<OrderFact> All =
        [Tag, Room, Kind, Width, WidthIs, Height, Mount, MotorEnd, LeadSide, Power, Fabric, Colour, Opacity, HeadCover];

    /// <summary>The fact of the kit that says what the width of a unit is; null while its kind or its mount is not known.</summary>
    public static Fact<OrderedWidth>? OrderedWidthOf(Unit unit) =>
        unit is { Kind: not null, Window.Mount: { } mount } ? CoveringKindFacts.OrderedWidthAt(mount) : null;

    /// <summary>The end of the motor: that of the kind, and of a kind that is made either way the side of the lead, which no maker can guess.</summary>
    private static OrderFact PerUnit(OrderFact ofKind) => new(
        ofKind.Label,
        u => EitherWay(u) ? u.BySheet(x => EitherWay(x) ? LeadSide.Entry(x) : Inline.Dash) : ofKind.Entry(u),
        u => EitherWay(u) ? LeadSide.Value(u) : ofKind.Value(u),
        (a, b) => EitherWay(a) == EitherWay(b) && (EitherWay(a) ? LeadSide : ofKind).Same(a, b),
        u => [.. ofKind.From(u), .. LeadSide.From(u)]);

    private static bool EitherWay(Unit unit) => unit.Kind is { MotorEnd: Core.Facts.MotorEnd.Either };

    /// <summary>A size of the unit, which is marked where it was taken from an offer that rests on values that nobody checked.</summary>
    private static OrderFact Size(Fact<Length> fact) => OfUnit(fact) with { Entry = u => u.BySheet(OfUnit(fact).Entry) };

    /// <summary>Width and height as they were ordered, and where they were typed over since also what stands there now: the box is made by the order.</summary>
    public static Inline SizeOrdered(Unit unit, PaperData data)
    {
        var now = Both(unit);
        // What was ordered again was ordered as it stood then.
        return unit.Item.Get(UnitFacts.ReorderedOn) is null && data.FrozenOf(unit) is { } then && !(Width.Same(then, unit) && Height.Same(then, unit))
            ? Inline.Ours($"{Both(then)}; typed over since: {now}") : now;

        static Inline Both(Unit of) => of.BySheet(x => x.Sizes(" x ", UnitFacts.OrderWidth, UnitFacts.OrderHeight));
    }

    private static OrderFact OfUnit(Fact fact) => Of(fact, u => u);

    /// <param name="fact">The fact.</param>
    /// <param name="of">What it is a fact of.</param>
    /// <param name="by">The fact of the unit that chooses what it is a fact of; null for the unit itself and its window.</param>
    private static OrderFact Of(Fact fact, Func<Unit, Subject?> of, Fact? by = null) => new(
        fact.Label,
        u => of(u)?.Entry(fact) ?? Inline.Dash,
        u => fact is Fact<Length> length ? SheetCell.Of(of(u)?.Item.Get(length), u.House.DisplayUnits) : of(u)?.Show(fact) ?? "",
        (a, b) => Compared(of(a), fact) == Compared(of(b), fact),
        u => Fields(u, fact, of, by))
    {
        IsLength = fact is Fact<Length>,
    };

    /// <summary>What tells whether two states say the same: of another item its name, of all else what is stored.</summary>
    private static string? Compared(Subject? subject, Fact fact) => fact is Fact<ItemRef> ? subject?.Show(fact) : subject?.Item.Latest(fact.Name)?.Stored;

    private static IEnumerable<(string Item, string Field)> Fields(Unit unit, Fact fact, Func<Unit, Subject?> of, Fact? by)
    {
        if (by is not null)
            yield return (unit.Id, by.Name);
        if (of(unit) is not { } subject)
            yield break;
        yield return (subject.Id, fact.Name);
        if (fact is Fact<ItemRef> && subject.Item.Latest(fact.Name)?.Value is ItemRef target)
        {
            yield return (target.Id, "name");
            yield return (target.Id, Item.RemovedField);
        }
    }

    private static string? RoomOf(Unit unit) => unit.Window.RoomId is { } id && unit.House.Find(id) is { Removed: false } room ? unit.House.NameOf(room) : null;
}
