using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>One covering on a window.</summary>
public sealed class Unit : Subject
{
    private HomeRun? _run;

    internal Unit(House house, Item item, Window window) : base(house, item) => Window = window;

    /// <summary>The window it hangs in.</summary>
    public Window Window { get; }

    /// <summary>Its home run; null while none is planned, and for a unit that no panel feeds.</summary>
    public HomeRun? Run => OnPanel && House.Under(Item, ItemKind.Run) is [var run, ..] ? RunOf(run) : null;

    /// <summary>Its home run as an item, also where the unit is said to need none: what was pulled lies in the wall; null where none was planned.</summary>
    public Item? CableThatIsThere => House.Under(Item, ItemKind.Run) is [var run, ..] ? run : null;

    /// <summary>Its place from the left.</summary>
    public int? Position => Item.Get(UnitFacts.Position);

    /// <summary>The window's tag, with a letter where the window has several units: W07, W08A, W08B.</summary>
    public string Tag => Window.Tag + Letter;

    /// <summary>Its letter where the window has several units, from A on the left; else empty.</summary>
    internal string Letter => Window.Units.Length < 2 ? "" : ((char)('A' + Window.IndexOf(this))).ToString();

    /// <summary>Whether a label says a tag that it had once and has no more.</summary>
    /// <param name="isSame">Whether the label is a tag.</param>
    internal bool WasTagged(Func<string, bool> isSame)
    {
        if (isSame(Tag) || isSame(Window.Tag))
            return false;
        for (var before = Window.Item.Latest(WindowFacts.Tag)?.Before; before is not null; before = before.Before)
        {
            if (before.Value is string tag && (isSame(tag) || isSame(tag + Letter)))
                return true;
        }
        return false;
    }

    /// <summary>What the maker's sheet says about its kind; null while no kind is chosen.</summary>
    public CoveringKind? Kind => field ??= Target(UnitFacts.Kind) is { } kind ? new CoveringKind(House, kind) : null;

    /// <summary>Its head cover; null while none is chosen.</summary>
    public HeadCover? HeadCover => field ??= Target(UnitFacts.HeadCover) is { } cover ? new HeadCover(House, cover) : null;

    /// <summary>The parts of the kit that it consists of, that feed it and that move it, as far as they are chosen.</summary>
    public IEnumerable<Item> Parts => new[] { Kind?.Item, HeadCover?.Item, Run?.Cable?.Item, Run?.Panel?.Type?.Item, Hub?.Target(HubFacts.Type) }
        .Concat(Remotes.Select(r => r.Target(RemoteFacts.Type))).OfType<Item>().Distinct();

    /// <summary>Its hub; null until it is paired.</summary>
    public Hub? Hub => Target(UnitFacts.Hub) is { } hub ? new Hub(House, hub) : null;

    /// <summary>The side the cable reaches it.</summary>
    public Side? LeadSide => Item.Get(UnitFacts.LeadSide);

    /// <summary>The side where the cable leaves the wall.</summary>
    public Side? EntrySide => Item.Get(UnitFacts.EntrySide);

    /// <summary>Distance of the entry from the side of the opening: as found after drywall, else as planned.</summary>
    public Length? EntryFromJamb => Item.Get(UnitFacts.EntryAsBuilt) ?? Item.Get(UnitFacts.EntryFromJamb);

    /// <summary>Distance of the entry back from the room face.</summary>
    public Length? EntryBack => Item.Get(UnitFacts.EntryBack);

    /// <summary>Distance of the entry below the head.</summary>
    public Length? EntryBelowHead => Item.Get(UnitFacts.EntryBelowHead);

    /// <summary>Distance of its brackets back from the room face, as measured.</summary>
    public Length? Setback => Item.Get(UnitFacts.Setback);

    /// <summary>The day on which its box is to come; null while nobody said.</summary>
    public DateOnly? BoxExpectedOn => Item.Get(UnitFacts.ExpectedOn);

    /// <summary>
    /// Whether its box is here: somebody said so, or read its label, its size or the unit's serial. Once it was ordered again, only what was written after
    /// that counts: all before is of the box that came wrong.
    /// </summary>
    public bool BoxIsHere => IsWritten(null) && (!ComesAgain || IsHung);

    /// <summary>Whether what came was ordered again, and nobody has written anything of a box since.</summary>
    public bool ComesAgain => Item.Latest(UnitFacts.ReorderedOn) is { Stored: not null } again && !IsWritten(again);

    /// <summary>Whether something was written of the box that is the last to come: where it was ordered again, after that.</summary>
    /// <param name="fact">What was written.</param>
    public bool IsOfTheLastBox(Fact fact) => Item.Latest(fact) is { Stored: not null } head
        && (Item.Latest(UnitFacts.ReorderedOn) is not { Stored: not null } again || head.IsAfter(again));

    /// <summary>Whether something is written of its box: its label, its size, or the serial of the unit in it.</summary>
    public bool BoxIsRead => Item.Get(UnitFacts.BoxLabel) is not null || Item.Get(UnitFacts.DeliveredWidth) is not null
        || Item.Get(UnitFacts.DeliveredHeight) is not null || Item.Get(UnitFacts.Serial) is not null;

    /// <summary>Whether its box was to come and did not, and nobody ordered it again since.</summary>
    public bool BoxDidNotCome => !BoxIsHere && Item.Get(UnitFacts.Arrival) == Arrival.NotArrived && Item.Get(UnitFacts.ReorderedOn) is null;

    /// <summary>What drives it.</summary>
    public PowerSource? Power => Item.Get(UnitFacts.Power);

    /// <summary>Whether it needs a home run: yes until something else is said.</summary>
    public bool OnPanel => Power is null or PowerSource.Panel;

    /// <summary>
    /// The width of its part of the opening: the whole where it is alone; finished, else rough; alike where what is written of the parts does not fit the
    /// rough opening; null while not known.
    /// </summary>
    public Length? PartWidth => (Window.PartsMisread ? null : Item.Get(UnitFacts.PartWidth))
        ?? (Window.Units.Length <= 1 ? Window.KnownWidth : Window.KnownWidth / Window.Units.Length);

    /// <summary>Where its part lies along the opening, from the left of the opening; null while a width is not known.</summary>
    public Stretch? Place => Window.KnownWidth is not { } opening ? null
        : Window.Units is { Length: > 1 } several
            ? Stretch.SideBySide(opening, [.. several.Select(u => u.PartWidth!.Value)], EndOf(several[0]), EndOf(several[^1]))[Window.IndexOf(this)]
            : new Stretch(Length.Zero, PartWidth ?? opening);

    /// <summary>How wide it is: as ordered, else its part, and outside both overlaps; null while that is not known.</summary>
    public Length? OwnWidth => Item.Get(UnitFacts.OrderWidth) ?? (Window.Mount != Mount.Outside ? PartWidth
        : PartWidth is { } part && Window.Item.Get(WindowFacts.OverlapEachSide) is { } overlap ? part + overlap * 2 : null);

    /// <summary>How far it comes down: as ordered, else the height of the opening, and outside what is above it; null while that is not known.</summary>
    public Length? Drop => Item.Get(UnitFacts.OrderHeight) ?? (Window.Mount != Mount.Outside ? Window.KnownHeight
        : Window.KnownHeight + Window.Item.Get(WindowFacts.HeadAbove));

    /// <summary>Where the cable leaves the wall, from the left of the opening; null while that is not known.</summary>
    public Length? EntryAlong => (EntrySide, EntryFromJamb, Window.KnownWidth) switch
    {
        (Side.Left, { } jamb, _) => jamb,
        (Side.Right, { } jamb, { } opening) => opening - jamb,
        _ => null,
    };

    /// <summary>The end at which it has its motor: that of its kind, and of a kind that is made either way the side of the lead; else null.</summary>
    public Side? MotorSide => Kind?.MotorEnd switch
    {
        MotorEnd.Left => Side.Left,
        MotorEnd.Right => Side.Right,
        MotorEnd.Either => LeadSide,
        _ => null,
    };

    /// <summary>The way of its cable from the wall to the motor, with what is used up behind it; null while any of that is not known.</summary>
    public Length? WayToMotor => (EntryAlong, MotorSide, UpToHead, Kind?[CoveringKindFacts.LeadBehind]) is ({ } entry, { } end, { } up, { } behind)
        && MotorAlong(end) is { } motor ? TailPath.ToMotor(entry, motor, up, behind) : null;

    /// <summary>How far it is from the entry up to where it hangs: outside also what it hangs above the opening; null while the entry is not known.</summary>
    public Length? UpToHead => EntryBelowHead
        + (Window.Mount == Mount.Outside ? Window.Item.Get(WindowFacts.HeadAbove) ?? Length.Zero : Length.Zero);

    /// <summary>Where its motor hangs, from the left of the opening; null while that is not known.</summary>
    /// <param name="motor">The end at which it has its motor.</param>
    public Length? MotorAlong(Side motor) => motor == Side.Left ? Span?.From : Span?.To;

    /// <summary>Its place; outside, where its overlap is known, as far as it reaches past the opening.</summary>
    private Stretch? Span => Place is not { } place ? null
        : Window.Mount != Mount.Outside || Window.Item.Get(WindowFacts.OverlapEachSide) is not { } overlap ? place
        : new Stretch(Window.IndexOf(this) == 0 ? place.From - overlap : place.From,
            Window.IndexOf(this) == Window.Units.Length - 1 ? place.To + overlap : place.To);

    /// <summary>
    /// What a tail is held against: the width of its part, outside with its overlap, and where its cable comes out beside another unit, the way along the
    /// head from there to its far end; null while a width is not known.
    /// </summary>
    public Length? ToFarEnd => Span is not { } span ? PartWidth
        : IsBehindOthers && EntryAlong is { } entry ? Length.Max(span.To - entry, entry - span.From)
        : span.To - span.From;

    /// <summary>
    /// The tail that no stop speaks of: half of the width that it is held against, or the way to the motor where that is longer, as far as they are
    /// known; null while neither is.
    /// </summary>
    public Length? LeastTail => Longer(ToFarEnd / 2, WayToMotor);

    /// <summary>The tail that is planned for it: all of that width, or the way to the motor where that is longer; null while neither is known.</summary>
    public Length? WholeTail => Longer(ToFarEnd, WayToMotor);

    private static Length? Longer(Length? one, Length? other) => (one, other) is ({ } first, { } second) ? Length.Max(first, second) : one ?? other;

    /// <summary>Whether its cable comes out beside another unit of its window, and has to go along the head behind that one.</summary>
    public bool IsBehindOthers => Window.Units.Length > 1 && (EntryAlong, Place) is ({ } entry, { } place) && (entry < place.From || entry > place.To);

    /// <summary>Half of what its hole takes at the least: half the cable by its sheet; nothing while that is not known.</summary>
    public Length EntryRadius => Run?.Cable?.Diameter / 2 ?? Length.Zero;

    /// <summary>How its width is ordered by the sheet of its kind; null while the mount, the kind or the sheet says nothing of it.</summary>
    public OrderedWidth? OrderedWidth => Window.Mount is { } mount ? Kind?.Item.Get(CoveringKindFacts.OrderedWidthAt(mount)) : null;

    /// <summary>What comes off the width of its opening by the sheet of its kind, whoever takes it off; null while nothing is said of it.</summary>
    public Length? Deduction => Window.Mount is { } mount ? Kind?[CoveringKindFacts.DeductionAt(mount)] : null;

    /// <summary>How wide it is made when so much is ordered; null while the sheet does not say who takes what off.</summary>
    /// <param name="ordered">The ordered width.</param>
    public Length? MadeFrom(Length ordered) => OrderedWidth switch
    {
        Facts.OrderedWidth.Made => ordered,
        Facts.OrderedWidth.Opening => ordered - Deduction,
        _ => null,
    };

    /// <summary>
    /// How wide it is made: of what was ordered; while nothing is ordered, of its part as it would be ordered. Null while the width, the mount, or what the
    /// sheet takes off is not known.
    /// </summary>
    public Length? MadeWidth => Item.Get(UnitFacts.OrderWidth) is { } ordered ? MadeFrom(ordered)
        : OrderedWidth is null ? null
        : Window is { Mount: Mount.Inside, Units.Length: 1 } ? PartWidth - Deduction
        : OwnWidth is { } own ? MadeFrom(own) : null;

    /// <summary>What has to be known before <see cref="MadeWidth"/> is: of the unit, its window or its kind; null when nothing is lacking.</summary>
    public Fact? MadeWidthLacks => MadeWidth is not null ? null
        : Kind is null ? UnitFacts.Kind
        : Window.Mount is null ? WindowFacts.Mount
        : PartWidth is null && Item.Get(UnitFacts.OrderWidth) is null ? WindowFacts.RoughWidth
        : OwnWidth is null ? WindowFacts.OverlapEachSide
        : WidthUnsaid;

    /// <summary>Where it hangs along the opening as it is made, over the middle of its part; null while <see cref="MadeWidth"/> is.</summary>
    public Stretch? MadeAlong => MadeWidth is { } made ? Over(made) : null;

    /// <summary>
    /// Where its end brackets sit along the opening, each from an end of the unit as it is made: the one answer for checks and papers. Null while where it
    /// hangs or the width of a bracket is not known.
    /// </summary>
    public (Stretch Left, Stretch Right)? EndBrackets => (MadeAlong, Kind?[CoveringKindFacts.EndBracket]) is ({ } hangs, { } bracket)
        ? (new Stretch(hangs.From, Length.Min(hangs.From + bracket, hangs.To)), new Stretch(Length.Max(hangs.To - bracket, hangs.From), hangs.To))
        : null;

    /// <summary>Where so wide a unit lies over the middle of its part, from the left of the opening; null while its part is not known.</summary>
    /// <param name="wide">How wide it is.</param>
    public Stretch? Over(Length wide) => Place is { } place
        ? new Stretch(place.From - (wide - (place.To - place.From)) / 2, place.To + (wide - (place.To - place.From)) / 2) : null;

    /// <summary>What the sheet of its kind does not say of the width for its mount: how it is ordered, or what comes off; null when it says both.</summary>
    public Fact? WidthUnsaid => Window.Mount is not { } mount ? null
        : OrderedWidth is null ? CoveringKindFacts.OrderedWidthAt(mount)
        : Deduction is null ? CoveringKindFacts.DeductionAt(mount)
        : null;

    /// <summary>The width that the finished measures give to order; null while a measure or a fact of the kit is missing.</summary>
    public Length? WorkedOutWidth => Kind?[CoveringKindFacts.RoundTo] is not { } step ? null
        : Window.Units.Length > 1 ? Item.Get(UnitFacts.PartWidth)?.RoundDown(step)
        : Window.Mount switch
        {
            Mount.Inside => Window.SmallestWidth is { } width ? OrderSize.InsideWidth(width, Window.PlumbWidth ?? width, OrderedWidth, Deduction, step) : null,
            Mount.Outside => Window.LargestWidth is { } width && Window.Item.Get(WindowFacts.OverlapEachSide) is { } overlap
                ? OrderSize.OutsideWidth(width, overlap, step) : null,
            _ => null,
        };

    /// <summary>The height that the finished measures give to order; null while a measure or a fact of the kit is missing.</summary>
    public Length? WorkedOutHeight => (Kind?[CoveringKindFacts.RoundTo], Window.LargestHeight, Window.Mount) switch
    {
        ({ } step, { } height, Mount.Inside) => OrderSize.InsideHeight(height, step),
        ({ } step, { } height, Mount.Outside) => Window.Item.Get(WindowFacts.HeadAbove) is { } above ? OrderSize.OutsideHeight(height, above, step) : null,
        _ => null,
    };

    /// <summary>Whether its order went out: a day of it is written, or the maker's number for it.</summary>
    public bool IsOrdered => Item.Latest(UnitFacts.OrderedOn)?.Stored is not null || Item.Evidence(UnitFacts.Acknowledgement) is not null;

    /// <summary>What is not written of the size that is ordered: its width, its height, or both.</summary>
    public IReadOnlyList<Fact<Length>> BlankOfOrderSize =>
        [.. new[] { UnitFacts.OrderWidth, UnitFacts.OrderHeight }.Where(f => Item.Latest(f)?.Stored is null)];

    /// <summary>
    /// Whether it is wide enough for a centre support by its kind's sheet: the one answer for checks, steps, drawings and the list of parts. As wide as the
    /// limit is wide enough. Null while its width or the limit is not known, which is no "no"; outside an opening of less than the limit it stays open until
    /// the overlap is known. No at any width where the sheet has none.
    /// </summary>
    public bool? NeedsCentreSupport => Kind?[CoveringKindFacts.CentreFrom] is not { } from ? null
        : Kind.NeedsNoCentreSupport ? false
        : OwnWidth is { } width ? width >= from
        : PartWidth >= from ? true : null;

    /// <summary>Remotes that move it.</summary>
    public IEnumerable<Remote> Remotes => House.Look(Lookups.RemotesByUnit, Id).Select(r => House.FindRemote(r)!);

    private bool IsHung => Phases.StepList.All.Any(s => s is { Phase: Phases.Phase.Hang, Subject: ItemKind.Unit } && MarkOf(s) is not null);

    private bool IsWritten(Head? since)
    {
        return (Item.Get(UnitFacts.Arrival) == Arrival.Arrived && IsSince(UnitFacts.Arrival))
            || IsSince(UnitFacts.BoxLabel) || IsSince(UnitFacts.DeliveredWidth) || IsSince(UnitFacts.Serial)
            || (since is not null && IsSince(UnitFacts.Damage));

        bool IsSince(Fact fact) => Item.Latest(fact) is { Stored: not null } head && (since is null || head.IsAfter(since));
    }

    private static Length EndOf(Unit unit) => unit.Kind?[CoveringKindFacts.EndAllowance] ?? Length.Zero;

    /// <summary>Its run, which is there.</summary>
    internal HomeRun RunOf(Item run) => _run ??= new HomeRun(House, run, this);
}
