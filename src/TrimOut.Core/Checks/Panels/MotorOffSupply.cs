using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>A motor is made for the volts that its panel gives.</summary>
/// <remarks>
/// <para>Why: on twice its volts a motor burns on the day of the first power; on half of them it only hums.</para>
/// <para>To clear: hold both sheets against what is printed on the parts; then plan a panel of the motor's volts, or another kind.</para>
/// </remarks>
public sealed class MotorOffSupply : SubjectCheck
{
    private static readonly Message OfKind = new("{0} is made for {1}; no panel of the house or its kit gives that, within a tenth.", "kit");
    private static readonly Message OfRun = new("{0} is made for {1}; {2} gives {3}.");
    private static readonly Message OfAllPanels = new("{0} is made for {1}; no panel of the house gives that, within a tenth.", "house");
    private static readonly Message PutRight =
        new("Compare both sheets with what is printed on the parts. If they are right, plan a panel that gives these volts, or another kind.");
    private static readonly Message LandElsewhere =
        new("Panel off before anything moves. Land it on a panel that gives the volts of its motor, and read them there.");

    /// <summary>The part by which the two may differ: common practice, no published source.</summary>
    public const decimal Share = 0.1m;

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("motor-off-supply", "Motor is for a different voltage", Severity.Stop, Phase.WalkThrough,
        new Source(Source.MakersSheet + "; the tenth is common practice, no published source",
            "motor volts within 10 % of the supply: of the panel it lands on; until it is landed, of some panel of the house; before there is one, of some " +
                "panel of the kit"));

    internal override IEnumerable<string> SubjectIds(House house) => Subjects.Kinds.Ids(house).Concat(Subjects.Runs.Ids(house));

    internal override Subject Find(House house, string id) =>
        house.Find(id) is { Kind: ItemKind.CoveringKind } kind ? new CoveringKind(house, kind) : Subjects.Runs.Find(house, id);

    internal override IEnumerable<CheckResult> RunOn(Subject subject)
    {
        var outcome = subject is CoveringKind kind ? OfTheKit(kind) : OfThePanels((HomeRun)subject);
        return outcome is Outcome.DoesNotApply ? [] : [new CheckResult(Info, subject.Item, outcome)];
    }

    private static Outcome OfTheKit(CoveringKind kind)
    {
        // A kind that nobody hangs on a panel says nothing, unless no unit is there to tell.
        var units = kind.House.Units.Where(u => u.Kind is not null).ToList();
        return units.Count > 0 && !units.Any(u => u.Kind!.Id == kind.Id && u.OnPanel) ? new Outcome.DoesNotApply() : Judge(kind);
    }

    /// <summary>Of a kind that no panel of the kit fits, its runs say nothing until they are landed: it is told once.</summary>
    private static Outcome OfThePanels(HomeRun run) =>
        run.Unit.Kind is not { MotorVolts: not null } kind || !run.House.ItemsOf(ItemKind.Panel).Any() || (run.Panel is null && Judge(kind) is not Outcome.Fine)
            ? new Outcome.DoesNotApply()
            : Judge(run);

    private static Outcome Judge(CoveringKind kind)
    {
        var kit = kind.House.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(kind.House, i)).ToList();
        return kit.Count == 0 ? new Outcome.DoesNotApply() : Judge(kind, kit);
    }

    private static Outcome Judge(CoveringKind kind, List<PanelType> kit) =>
        kind.MotorVolts is not { } volts ? NotChecked.Of(kind, CoveringKindFacts.MotorVolts)
        : kit.Any(t => Fits(volts, t)) ? new Outcome.Fine()
        : kit.FirstOrDefault(t => t.Supply is null) is { } silent ? NotChecked.Of(silent, PanelTypeFacts.Supply)
        : new Outcome.Found(OfKind.With(Arg.Name(kind), volts), PutRight, FieldRef.To(kind.Item, CoveringKindFacts.MotorVolts));

    private static Outcome Judge(HomeRun run)
    {
        var (kind, volts) = (run.Unit.Kind!, run.Unit.Kind!.MotorVolts!.Value);
        if (run.Panel is { } landed)
        {
            return landed.Type?.Supply is not { } supply ? NotChecked.Of(landed.Type, PanelTypeFacts.Supply, landed, PanelFacts.Type)
                : Fits(volts, landed.Type) ? new Outcome.Fine()
                : new Outcome.Found(OfRun.With(Arg.Name(kind), volts, Arg.Name(landed), supply), LandElsewhere, FieldRef.To(run.Item, RunFacts.Panel));
        }
        // One after the other, as far as it takes: every run of the house asks for them.
        var panels = run.House.ItemsOf(ItemKind.Panel).Select(i => new Panel(run.House, i));
        return panels.Any(p => Fits(volts, p.Type)) ? new Outcome.Fine()
            : panels.FirstOrDefault(p => p.Type?.Supply is null) is { } silent ? NotChecked.Of(silent.Type, PanelTypeFacts.Supply, silent, PanelFacts.Type)
            : new Outcome.Found(OfAllPanels.With(Arg.Name(kind), volts), PutRight, FieldRef.To(panels.First().Item, PanelFacts.Type));
    }

    private static bool Fits(Units.Voltage motor, PanelType? type) =>
        type?.Supply is { } supply && Math.Abs(motor.Volts - supply.Volts) <= supply.Volts * Share;
}
