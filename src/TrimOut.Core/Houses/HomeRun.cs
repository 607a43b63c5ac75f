using System.Collections.Immutable;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>The unbroken cable from one unit to one panel output.</summary>
public sealed class HomeRun : Subject
{
    internal HomeRun(House house, Item item, Unit unit) : base(house, item) => Unit = unit;

    /// <summary>The unit at its window end.</summary>
    public Unit Unit { get; }

    /// <summary>Its legs, from the panel to the window.</summary>
    public ImmutableArray<Leg> Legs => field.IsDefault ? field = ImmutableArray.CreateRange(House.Under(Item, ItemKind.Leg), i => new Leg(House, i)) : field;

    /// <summary>Its cable; null while none is chosen.</summary>
    public CableType? Cable => field ??= Target(RunFacts.Cable) is { } cable ? new CableType(House, cable) : null;

    /// <summary>The run whose window end it goes on from; null for one that begins at its panel.</summary>
    public HomeRun? BranchesOff => Target(RunFacts.BranchesOff) is { } run && run.Id != Id ? House.FindUnit(run.Under)?.Run : null;

    /// <summary>The first loop test with what was kept beside it; null until it was read.</summary>
    public LoopTest? FirstTest => Test(RunFacts.FirstLoop);

    /// <summary>
    /// From which floor to which panel it goes, for whoever compares it with others of that way; null while no floor is written, and while it could land
    /// on several panels.
    /// </summary>
    internal string? WayToPanel => Unit.Window.Room?.Floor is not { } floor ? null
        : Load.PanelOf(this)?.Id is { } panel ? $"{panel} {floor}"
        : House.ItemsOf(ItemKind.Panel).Any() ? null : floor;

    /// <summary>The second loop test with what was kept beside it; null until it was read.</summary>
    public LoopTest? SecondTest => Test(RunFacts.SecondLoop);

    /// <summary>The panel it lands on; null until it is landed.</summary>
    public Panel? Panel => Target(RunFacts.Panel) is { } panel ? House.FindPanel(panel.Id) : null;

    /// <summary>Whether a reading was taken on a panel: on that which it lands on, unless it was landed on another one when it was read.</summary>
    internal bool WasReadOn(Panel panel, Fact reading) => Item.Latest(reading) is { Stored: not null } read
        && (Item.Latest(RunFacts.Panel)?.When(read)?.Value is not ItemRef then || then.Id == panel.Id);

    /// <summary>The output it lands on, from 1.</summary>
    public int? Output => Item.Get(RunFacts.Output);

    /// <summary>Tail at the window: as found after drywall, else as left at rough-in.</summary>
    public Length? TailAtWindow => Item.Get(RunFacts.TailFound) ?? Item.Get(RunFacts.TailAtWindow);

    /// <summary>Tail in the mechanical room.</summary>
    public Length? TailAtPanel => Item.Get(RunFacts.TailAtPanel);

    /// <summary>What is written on the cable at the window.</summary>
    public string? LabelAtWindow => Item.Get(RunFacts.LabelAtWindow);

    /// <summary>What is written on the cable in the mechanical room.</summary>
    public string? LabelAtPanel => Item.Get(RunFacts.LabelAtPanel);

    /// <summary>What is written on it at either end, each once whatever its case.</summary>
    public IEnumerable<string> Labels => new[] { LabelAtWindow, LabelAtPanel }.OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>The sum of its legs; null while there is none or one has no length.</summary>
    public Length? LegsLength => Legs.Length == 0 || Legs.Any(l => l.Length is null) ? null : Legs.Aggregate(Length.Zero, (sum, l) => sum + l.Length!.Value);

    /// <summary>The legs and tails that are known so far: the run is no shorter; null while no leg has a length.</summary>
    public Length? AtLeast => LegsLength is { } legs ? legs + (TailAtWindow ?? Length.Zero) + (TailAtPanel ?? Length.Zero) : null;

    /// <summary>
    /// Legs and both tails, planned where none was measured, at the window also where it is under half of what it is held against: the way along the head to
    /// the far end of its unit, and what the house plans at its panels; null while a part is not known.
    /// </summary>
    public Length? Planned => LegsLength + PlannedTailAtWindow + PlannedTailAtPanel;

    /// <summary>
    /// Cable that it takes off a box: legs with the crew's allowance, and both tails, planned where none was measured; no more than may be used of its
    /// cable, where that is enough without the allowance; null while a part is not known.
    /// </summary>
    public Length? Needed => WithAllowance is not { } needed ? null
        : Longest is { } longest && Planned <= longest ? Length.Min(needed, longest) : needed;

    /// <summary>
    /// The unchecked values of sheets that <see cref="Needed"/> rests on: none where its cable may be that long, for then they only permit the length and no
    /// figure of them is in it.
    /// </summary>
    public IReadOnlyList<Fact> UncheckedInNeeded =>
        (Needed == WithAllowance ? UncheckedValues.Read(Unit, u => u.Run!.WithAllowance) : UncheckedValues.Read(Unit, u => u.Run!.Needed)).Unchecked;

    /// <summary>Legs with the whole allowance, and both tails, however long its cable may be.</summary>
    private Length? WithAllowance =>
        LegsLength is { } legs && PlannedTailAtWindow is { } window && PlannedTailAtPanel is { } panel &&
        House.Job.Get(HouseFacts.CableAllowance) is { } allowance ? NeededCable.Of(legs, window, panel, allowance) : null;

    /// <summary>
    /// What comes off the box as it is read, in the house's units: rounded up, and down where it would be longer than it may be; null while not known.
    /// </summary>
    public string? ShownNeeded => Needed is not { } needed ? null
        : Longest is { } longest && needed >= longest - Length.FromMetres(0.1m) && needed <= longest
        ? needed.ShowAtMost(House.DisplayUnits, LengthScale.Run) : needed.ShowAtLeast(House.DisplayUnits, LengthScale.Run);

    /// <summary>
    /// What would come off the box with the whole allowance, in the house's units, where less does because its cable may be no longer; null where
    /// nothing is taken off the allowance.
    /// </summary>
    public string? ShownBeforeLimit => WithAllowance is { } whole && whole > Needed
        && whole.ShowAtLeast(House.DisplayUnits, LengthScale.Run) is var shown && shown != ShownNeeded ? shown : null;

    /// <summary>
    /// The longest that it may be, by the kit's table and by voltage as far as they are known; null while neither is, and for one on a shared cable.
    /// </summary>
    public Length? Longest => BranchesOff is not null ? null : Limits?.Governing ?? Cable?.LongestRun;

    /// <summary>
    /// Whether it is longer than it may be, as measured, as planned, or by what is known of it so far: such a one is not to be cut, and in no cut plan.
    /// </summary>
    public bool IsTooLong => Longest is { } longest && (OneWay ?? Planned ?? AtLeast) > longest;

    /// <summary>Voltage at its output: of the panel it lands on; until it is landed the one that all panels, or all panels of the kit, agree on.</summary>
    public Voltage? Supply => Panel is { } panel ? panel.Type?.Supply : House.UsualSupply;

    /// <summary>
    /// Resistance of one of its conductors at the warmest that the cable gets, in ohms per metre; null while cable or temperature is not known.
    /// </summary>
    public decimal? OhmsPerMetre =>
        Cable is { Conductor: { } size, Stranding: { } made } && House.Job.Get(HouseFacts.ConductorTemperature) is { } at &&
        Conductors.OhmsPerMetre(size, made, at) is { Ok: true } ohms ? ohms.Value : null;

    /// <summary>What limits its length; null while a part is not known.</summary>
    public RunLimits? Limits => field ??=
        Supply is { } supply && OhmsPerMetre is { } ohms && Unit.Kind is { LeastVolts: { } least, RunningCurrent: { } running, StartingCurrent: { } starting }
            ? new RunLimits(supply, least, running, starting, ohms, Cable?.LongestRun)
            : null;

    /// <summary>Legs and both tails: the cable that current goes through, one way; null while a part is not known.</summary>
    public Length? OneWay => LegsLength + TailAtWindow + TailAtPanel;

    /// <summary>Volts at its unit while it lifts, with the cable at the warmest that it gets; null while a part is not known.</summary>
    public Voltage? VoltsWhileRunning => Arrives(Unit.Kind?.RunningCurrent);

    /// <summary>Volts at its unit in the first moment, likewise.</summary>
    public Voltage? VoltsWhileStarting => Arrives(Unit.Kind?.StartingCurrent);

    /// <summary>No least voltage and no longest run goes into it: what the sheet does not say of these withholds nothing here.</summary>
    private Voltage? Arrives(Current? drawn) => Supply is { } supply && OneWay is { } way && OhmsPerMetre is { } ohms && drawn is { } current
        ? TwoWire.Arrives(supply, way, ohms, current) : null;

    /// <summary>A tail that is shorter than half of the width is not what a cable is cut for: the next one would be as short.</summary>
    private Length? PlannedTailAtWindow => TailAtWindow is { } left && !(left < Unit.ToFarEnd / 2) ? left : Unit.ToFarEnd ?? TailAtWindow;

    private Length? PlannedTailAtPanel => TailAtPanel ?? House.Job.Get(HouseFacts.PanelTail);

    private LoopTest? Test(Fact<Resistance> fact) => Item.Get(fact) is { } read
        ? new LoopTest(read,
            Beside(Companion.Leads(fact.Name)) is { } leads ? new Resistance(leads) : null,
            Beside(Companion.CableAt(fact.Name)) is { } degrees ? new Temperature(degrees) : null,
            Beside(Companion.MeterStep(fact.Name)) is { } step ? new Resistance(step) : null)
        : null;

    private decimal? Beside(string companion) =>
        Item.Latest(companion)?.Stored is { } stored && NumberText.Read(stored, "", -1000, 1000, ("", 1)) is { Ok: true } number ? number.Value : null;
}

/// <summary>One stretch of a home run.</summary>
public sealed class Leg(House house, Item item) : Subject(house, item)
{
    /// <summary>Which way it goes.</summary>
    public LegDirection? Direction => Item.Get(LegFacts.Direction);

    /// <summary>How long it is.</summary>
    public Length? Length => Item.Get(LegFacts.Length);

    /// <summary>The tube that it lies in; null while nobody said.</summary>
    public Conduit? Conduit => Item.Get(LegFacts.Conduit);

    /// <summary>Whether it goes through a wall or floor that must hold back fire; null while nobody said.</summary>
    public bool? ThroughFireBarrier => Item.Get(LegFacts.FireBarrier) is { } barrier ? barrier == YesNo.Yes : null;

    /// <summary>What is around it: a space that moves air where somebody said that air moves there, whatever it was taken for.</summary>
    public CablePlace? Place => AirMoves == true ? CablePlace.AirHandlingSpace : Item.Get(LegFacts.Place);

    /// <summary>Whether air of the building moves around it; null while nobody said.</summary>
    public bool? AirMoves => Item.Get(LegFacts.AirMoves) is { } air ? air == YesNo.Yes : null;

    /// <summary>Whether it has to be asked if air moves around it: it goes across, and nobody takes it for a space that moves air.</summary>
    public bool AsksAboutAir => Direction == LegDirection.Across && Item.Get(LegFacts.Place) != CablePlace.AirHandlingSpace;
}
