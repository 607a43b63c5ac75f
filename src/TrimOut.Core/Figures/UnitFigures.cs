using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Core.Figures;

/// <summary>Every figure that is worked out for a unit: sizes, cable, volts, readings to expect, roll and stack; then what the checks worked out.</summary>
public static class UnitFigures
{
    private static readonly Source Order = new OrderOffMeasures().Info.Source;
    private static readonly Source Volts = new VoltsShortAtUnit().Info.Source;
    private static readonly Source Loop = new LoopOffLength().Info.Source;

    private static readonly Func<Unit, Figure?>[] Worked =
        [Width, Height, CableOffBox, OneWay, LongestRun, VoltsAtUnit, LoopToExpect, LoadedVolts, LoadOnOutput, TailToMotor, RaisedHeight, RolledUp];

    /// <summary>The figures of a unit, its window and its home run.</summary>
    public static ImmutableArray<Figure> Of(Unit unit) =>
        [.. Worked.Select(w => WithUnchecked(unit, w)).OfType<Figure>(), .. CheckFigures.Of(unit)];

    private static Figure? WithUnchecked(Unit unit, Func<Unit, Figure?> work)
    {
        var (figure, by) = UncheckedValues.Read(unit, u =>
        {
            var worked = work(u);
            _ = worked?.Working.Inputs;
            return worked;
        });
        // A sheet that only permits the length has no figure in it.
        if (figure?.Name == OffBox && unit.Run is { } run)
            by = run.UncheckedInNeeded;
        return figure is null || by.Count == 0 ? figure
            : figure with { Value = UncheckedValues.Marked(figure.Value, figure.Value != Missing), Unchecked = [.. by] };
    }

    private static Figure Width(Unit unit)
    {
        var window = unit.Window;
        return new Figure("Order width, worked out", unit.WorkedOutWidth?.In(unit) ?? Missing, Working.Of(Order.Formula, () =>
        [
            ("mount", Said(window, WindowFacts.Mount)),
            ("top, middle, bottom", $"{Said(window, WindowFacts.WidthTop)}, {Said(window, WindowFacts.WidthMiddle)}, {Said(window, WindowFacts.WidthBottom)}"),
            ("hangs plumb", window.PlumbWidth?.About(unit) ?? Missing),
            ("ordered width is", BySheet(unit, u => u.OrderedWidth is { } by ? KebabCase.Of(by) : null)),
            ("comes off", BySheet(unit, u => u.Deduction?.In(u))),
            ("part of the opening", window.Units.Length > 1 ? Said(unit, UnitFacts.PartWidth) : "the whole"),
            ("overlap each side", window.Mount == Mount.Outside ? Said(window, WindowFacts.OverlapEachSide) : "none"), Step(unit),
        ]), Order,
            [UnitFacts.OrderWidth, UnitFacts.PartWidth, WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom, WindowFacts.OverlapEachSide]);
    }

    private static Figure Height(Unit unit)
    {
        var window = unit.Window;
        return new Figure("Order height, worked out", unit.WorkedOutHeight?.In(unit) ?? Missing, Working.Of(Order.Formula, () =>
        [
            ("mount", Said(window, WindowFacts.Mount)),
            ("left, middle, right",
                $"{Said(window, WindowFacts.HeightLeft)}, {Said(window, WindowFacts.HeightMiddle)}, {Said(window, WindowFacts.HeightRight)}"),
            ("head above", window.Mount == Mount.Outside ? Said(window, WindowFacts.HeadAbove) : "none"), Step(unit),
        ]), Order, [UnitFacts.OrderHeight, WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight, WindowFacts.HeadAbove]);
    }

    private static (string, string) Step(Unit unit) => ("step", Said(unit.Kind, CoveringKindFacts.RoundTo));

    private static Figure? CableOffBox(Unit unit)
    {
        if (unit.Run is not { } run)
            return null;
        var job = new JobItself(unit.House);
        return new Figure(OffBox, run.ShownNeeded ?? Missing,
            Working.Of("legs x (1 + allowance / 100) + tail at window + tail at panel; planned where none was measured", () =>
        [
            ("legs", run.LegsLength?.RunIn(unit) ?? Missing),
            ("allowance", Said(job, HouseFacts.CableAllowance) + " %" + Begun(job, HouseFacts.CableAllowance)),
            ("tail at window", (run.TailAtWindow ?? unit.PartWidth)?.In(unit) ?? Missing),
            ("tail at panel", run.TailAtPanel?.In(unit)
                ?? (job.Item.Get(HouseFacts.PanelTail) is { } tail ? tail.In(unit) + Begun(job, HouseFacts.PanelTail) : Missing)),
            .. run.ShownBeforeLimit is { } whole ? [("no more than its cable may be",
                UncheckedValues.Marked($"{run.ShownNeeded}, not {whole}", run.UncheckedInNeeded.Count > 0))] : Array.Empty<(string, string)>(),
        ]), new CableShortOnHand().Info.Source, [RunFacts.Cable, LegFacts.Length, RunFacts.TailAtPanel]);
    }

    private static Figure? OneWay(Unit unit)
    {
        if (unit.Run is not { } run)
            return null;
        return new Figure("Length, one way", run.OneWay?.RunIn(unit) ?? Missing, Working.Of("legs + tail at window + tail at panel, as measured", () =>
        [
            ("legs", run.LegsLength?.RunIn(unit) ?? Missing), ("tail at window", run.TailAtWindow?.In(unit) ?? Missing),
            ("tail at panel", run.TailAtPanel?.In(unit) ?? Missing),
        ]), new RunPastKitTable().Info.Source, [LegFacts.Length, RunFacts.TailAtWindow, RunFacts.TailFound, RunFacts.TailAtPanel]);
    }

    private static Figure? LongestRun(Unit unit)
    {
        if (unit.Run is not { } run)
            return null;
        var budget = run.Cable is { } drawn ? LoopBudget.LongestOf(drawn)?.LimitIn(unit) : null;
        // As on the list of cables: the table alone where nobody can say what the voltage allows, and one's own budget where there is no table either.
        var longest = run.Longest is { } most ? most.LimitIn(unit) + (run.Limits is null ? ", by the kit's table alone" : "")
            : budget is null ? Missing : $"~{budget}, by your own loop budget alone";
        return new Figure("Longest run", longest,
            Working.Of("tighter of the table and (supply - minimum volts) / (2 x larger current x ohms per meter)", () =>
        [
            ("by the kit's table", BySheet(unit, u => u.Run!.Cable?.LongestRun?.LimitIn(u), "not given")),
            ("by voltage drop", BySheet(unit, u => u.Run!.Limits?.ByVolts.LimitIn(u))),
            ("by your own loop budget", BySheet(unit, u => u.Run!.Cable is { } c ? LoopBudget.LongestOf(c)?.LimitIn(u) : null, "not stated")),
            ("minimum volts", Said(unit.Kind, CoveringKindFacts.LeastVolts)), .. Circuit(run),
        ]), Volts, [RunFacts.Cable, LegFacts.Length, RunFacts.Panel]);
    }

    private static Figure? VoltsAtUnit(Unit unit)
    {
        if (unit.Run is not { } run)
            return null;
        var volts = (run.VoltsWhileRunning, run.VoltsWhileStarting) is var (running, starting) && (running ?? starting) is not null
            ? $"{running?.ToString() ?? Missing} running, {starting?.ToString() ?? Missing} starting" : Missing;
        return new Figure("Volts at the unit", volts,
            Working.Of("supply - current x 2 x length x ohms per meter", () => [("length, one way", run.OneWay?.RunIn(unit) ?? Missing), .. Circuit(run)]),
            Volts, [RunFacts.Cable, LegFacts.Length, RunFacts.Panel, UnitFacts.Kind]);
    }

    private static Figure? LoopToExpect(Unit unit)
    {
        if (unit.Run is not { } run)
            return null;
        return new Figure("Loop to expect", ExpectedLoop(run) is { } loop ? loop.ToString() : Missing, Working.Of(Loop.Formula, () =>
        [
            ("length, one way", run.OneWay?.RunIn(unit) ?? Missing),
            ("conductor", run.Cable is { } cable ? $"{Said(cable, CableTypeFacts.Conductor)}, {Said(cable, CableTypeFacts.Stranding)}" : Missing),
            ("worked out with", (run.FirstTest ?? default).Circumstances.In(unit.House)),
        ]), Loop, [RunFacts.FirstLoop, RunFacts.SecondLoop]);
    }

    private static Figure? LoadedVolts(Unit unit)
    {
        if (unit.Run is not { } run)
            return null;
        var open = run.Item.Get(RunFacts.OpenVolts);
        return new Figure("Loaded volts to expect",
            run is { Supply: { } supply, VoltsWhileRunning: { } arrives } ? $"{new Voltage(Math.Abs((open ?? supply).Volts)) - (supply - arrives)}" : Missing,
            Working.Of("open-circuit volts, or the supply's, - running current x loop", () =>
            [
                ("open-circuit", open?.ToString() ?? $"not read; the supply's {SupplyOf(run)}"),
                ("length, one way", run.OneWay?.RunIn(unit) ?? Missing), .. Circuit(run),
            ]),
            new LoadedVoltsLow().Info.Source, [RunFacts.LoadedVolts, RunFacts.OpenVolts]);
    }

    private static Figure? LoadOnOutput(Unit unit)
    {
        if (unit.Run is null)
            return null;
        return new Figure("Load on its output", Load.Of(unit) is { } draws ? draws.ToString() : Missing,
            Working.Of("larger of running and starting current", () =>
            [
                ("running", Said(unit.Kind, CoveringKindFacts.RunningCurrent)), ("starting", Said(unit.Kind, CoveringKindFacts.StartingCurrent)),
            ]),
            new OutputOverloaded().Info.Source, [UnitFacts.Kind, UnitFacts.Group, RunFacts.Output]);
    }

    private static Figure? TailToMotor(Unit unit)
    {
        if (unit.Run is null)
            return null;
        if (unit is { EntryFromJamb: { } jamb, EntryAlong: { } entry, EntryBelowHead: { } below, Kind: { } kind }
            && kind[CoveringKindFacts.LeadBehind] is { } behind && unit.EntrySide is { } side && unit.MotorSide is { } end
            && unit.MotorAlong(end) is { } motor && unit.WayToMotor is { } path)
        {
            return new Figure("Tail that reaches the motor", path.In(unit),
                Working.Of(new TailShortOfMotor().Info.Source.Formula, () =>
                [
                    ("entry from jamb", jamb.In(unit)), ("entry from the left", entry.In(unit)),
                    ("motor from the left", BySheet(unit, u => u.MotorAlong(end)?.In(u))),
                    ("below head", below.In(unit)),
                    ("entry on the side of the motor", side == end ? "yes" : "no"), ("behind", Marked(behind, kind, CoveringKindFacts.LeadBehind)),
                ]),
                new TailShortOfMotor().Info.Source,
                [RunFacts.TailAtWindow, RunFacts.TailFound, UnitFacts.EntrySide, UnitFacts.EntryFromJamb, UnitFacts.EntryBelowHead]);
        }
        return null;
    }

    private static Figure? RaisedHeight(Unit unit)
    {
        if (RaisedStack.Of(unit).Figures is { } stack)
        {
            var source = new StackOverGlass().Info.Source;
            return new Figure("Raised stack", stack.Height.About(unit), stack.Working(unit, "fixed part + share x drop"), source,
                [UnitFacts.OrderHeight, WindowFacts.GlassBelowHead, UnitFacts.Kind]);
        }
        return null;
    }

    private static Figure? RolledUp(Unit unit)
    {
        var kind = unit.Kind;
        if (kind?.RaisedForm == RaisedForm.Roll && kind[CoveringKindFacts.Tube] is { } tube && kind[CoveringKindFacts.FabricThickness] is { } fabric
            && kind[CoveringKindFacts.ExtraFabric] is { } extra
            && unit.Drop is { } drop)
        {
            var source = new RollPastHeadCover().Info.Source;
            return new Figure("Roll, raised",
                $"{Roll.Diameter(tube, fabric, drop + extra).About(unit)}, {Roll.RoomToTurn(tube, fabric, drop + extra).About(unit)} to turn",
                Working.Of(source.Title, () =>
                [
                    ("tube", Marked(tube, kind, CoveringKindFacts.Tube)), ("fabric", Marked(fabric, kind, CoveringKindFacts.FabricThickness)),
                    ("drop", drop.In(unit)), ("extra fabric", Marked(extra, kind, CoveringKindFacts.ExtraFabric)),
                ]),
                source, [UnitFacts.HeadCover, UnitFacts.OrderHeight, UnitFacts.Kind]);
        }
        return null;
    }

    private const string Missing = "not known";

    private const string OffBox = "Cable off a box";

    private static Resistance? ExpectedLoop(HomeRun run) =>
        run.OneWay is { } way && run.Cable is { Conductor: { } size, Stranding: { } made } && (run.FirstTest ?? default) is var test
            && Conductors.OhmsPerMetre(size, made, test.At) is { Ok: true } ohms
            ? test.Expected(way, ohms.Value) : null;

    private static IEnumerable<(string, string)> Circuit(HomeRun run) =>
    [
        ("supply", SupplyOf(run)),
        ("running", Said(run.Unit.Kind, CoveringKindFacts.RunningCurrent)), ("starting", Said(run.Unit.Kind, CoveringKindFacts.StartingCurrent)),
        ("ohms per meter, one conductor", BySheet(run.Unit, u => u.Run!.OhmsPerMetre is { } ohms ? NumberText.Plain(Math.Round(ohms, 6)) : null)),
        ("cable at max temp", Said(new JobItself(run.House), HouseFacts.ConductorTemperature)
            + Begun(new JobItself(run.House), HouseFacts.ConductorTemperature)),
    ];

    private static string Begun(JobItself job, Fact fact) => BegunWith.Is(job.Item, fact) ? " (what the program began with)" : "";

    private static string SupplyOf(HomeRun run) => BySheet(run.Unit, u => u.Run!.Supply?.ToString());

    private static string Said(Subject? subject, Fact fact) => subject?.Show(fact) is { Length: > 0 } shown
        ? UncheckedValues.Marked(shown, subject is KitSheet part && !part.IsChecked(fact)) : Missing;

    private static string Marked(Length length, KitSheet part, Fact fact) => UncheckedValues.Marked(length.In(part), !part.IsChecked(fact));

    /// <summary>An input that sheets decide, with the mark where nobody checked what of them is in it.</summary>
    private static string BySheet(Unit unit, Func<Unit, string?> work, string otherwise = Missing) =>
        UncheckedValues.Read(unit, work) is ({ } shown, var by) ? UncheckedValues.Marked(shown, by.Count > 0) : otherwise;
}
