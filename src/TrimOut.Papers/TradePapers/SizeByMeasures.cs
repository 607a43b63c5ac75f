using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.TradePapers;

/// <summary>A size that the measures give to order, and the facts that it is worked out of.</summary>
/// <param name="Label">What it is called.</param>
/// <param name="Ordered">The fact that holds what was ordered.</param>
/// <param name="WorkedOut">What the measures give; null while one is missing.</param>
/// <param name="From">The facts that it is worked out of as the unit stands.</param>
internal sealed record SizeByMeasures(string Label, Fact<Length> Ordered, Func<Unit, Length?> WorkedOut, Func<Unit, IEnumerable<Fact>> From)
{
    public static readonly IReadOnlyList<SizeByMeasures> All =
    [
        new("Width by the measures", UnitFacts.OrderWidth, u => u.WorkedOutWidth, WidthFrom),
        new("Height by the measures", UnitFacts.OrderHeight, u => u.WorkedOutHeight, HeightFrom),
    ];

    /// <summary>Whether the measures still give what they gave when the sheet was frozen, or give what was ordered.</summary>
    public bool Follows(Unit then, Unit now) =>
        WorkedOut(now) is var gives && (gives == WorkedOut(then) || (gives is not null && gives == then.Item.Get(Ordered)));

    /// <summary>The size as it is printed.</summary>
    public Inline Entry(Unit unit) => WorkedOut(unit)?.Show(unit.House.DisplayUnits).FigureOrDash() ?? Inline.Dash;

    /// <summary>The facts that it is worked out of and that are others now, each with what holds it then and now.</summary>
    public IEnumerable<Changed> ChangedSince(Unit then, Unit now) => From(then).Concat(From(now)).Distinct()
        .Select(f => new Changed(f, HolderOf(then, f), HolderOf(now, f)))
        .Where(c => c.Then?.Item.Latest(c.Fact.Name)?.Stored != c.Now?.Item.Latest(c.Fact.Name)?.Stored);

    private static IEnumerable<Fact> WidthFrom(Unit unit) =>
    [
        UnitFacts.Kind, CoveringKindFacts.RoundTo,
        .. unit.Window.Units.Length > 1
            ? (Fact[])[UnitFacts.PartWidth]
            : [WindowFacts.Mount, WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, .. Outside(unit, WindowFacts.OverlapEachSide)],
    ];

    private static IEnumerable<Fact> HeightFrom(Unit unit) =>
    [
        UnitFacts.Kind, CoveringKindFacts.RoundTo, WindowFacts.Mount, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight,
        .. Outside(unit, WindowFacts.HeadAbove),
    ];

    private static Fact[] Outside(Unit unit, Fact fact) => unit.Window.Mount == Mount.Outside ? [fact] : [];

    private static Subject? HolderOf(Unit unit, Fact fact) => fact.Subject switch
    {
        ItemKind.Window => unit.Window,
        ItemKind.CoveringKind => unit.Kind,
        _ => unit,
    };

    /// <summary>A fact that is another now.</summary>
    /// <param name="Fact">The fact.</param>
    /// <param name="Then">What held it when the sheet was frozen.</param>
    /// <param name="Now">What holds it now.</param>
    public sealed record Changed(Fact Fact, Subject? Then, Subject? Now)
    {
        /// <summary>Whether the sheet prints the fact itself, so that it is listed as a change anyway.</summary>
        public bool IsPrinted => Fact == WindowFacts.Mount || Fact == UnitFacts.Kind;

        /// <summary>The fields that it comes from.</summary>
        public IEnumerable<(string Item, string Field)> Fields => new[] { Then, Now }.OfType<Subject>().Select(s => (s.Id, Fact.Name)).Distinct();
    }
}
