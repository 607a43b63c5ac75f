using System.Globalization;
using System.Text;
using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Decisions;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Plans.InService;
using TrimOut.Core.Sun;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests;

/// <summary>Holds docs/figures.md to the code: every constant and every default that it names.</summary>
public class FiguresPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(RepositoryRoot.Path, "docs", "figures.md"));

    public static TheoryData<string, string> Constants => new()
    {
        { "Diameter of 36 AWG", $"{Invariant(Conductors.Gauge36Millimetres)} mm" },
        { "Diameter of 0000 over that of 36 AWG", Invariant(Conductors.GaugeRatio) },
        { "Steps between them", Invariant(Conductors.GaugeSteps) },
        { "Conductivity of annealed copper at 20 C", $"{Invariant(Conductors.CopperConductivity)} m/(ohm mm2)" },
        { "Rise of copper's resistance per kelvin, from 20 C", Invariant(Conductors.PerKelvinFrom20) },
        { "The same from 75 C", Invariant(Conductors.PerKelvinFrom75) },
        { "Rise per kelvin of metric sizes, from 20 C", Invariant(Conductors.PerKelvinMetric) },
        { "Lay factor of stranded gauges", Invariant(Conductors.StrandedLay) },
        { "The end of a warranty is said at opening", $"{DueInService.WarrantyDays} days before" },
        { "A yearly visit is said at opening", $"{DueInService.VisitDays} days before" },
        { "Distance from open mains wiring", MainsTooNear.Least.Show(DisplayUnits.Millimetres) },
        { "Edge of a hole without a plate", HoleNearEdge.Least.Show(DisplayUnits.Inches) },
        { "CL2X in a small house is thinner than", CableNotListed.Thin.Show(DisplayUnits.Millimetres) },
        { "Two loop readings of an unknown meter may differ by", $"{Invariant(LoopReading.Share * 100)} % + {LoopReading.Contacts}" },
        { "A hand meter may be off by", $"{Invariant(HandMeter.Share * 100)} % + {Invariant(HandMeter.Digits)} steps of its last digit" },
        { "Legs may be off by", $"{Invariant(LoopBand.LegShare * 100)} % + {LoopBand.PerLeg.Show(DisplayUnits.Millimetres)} each" },
        { "Copper may be off by", $"{Invariant(LoopBand.CopperShare * 100)} %" },
        { "Motor volts against the supply", $"{Invariant(MotorOffSupply.Share * 100)} %" },
        { "Tail found over the tail left", TailLongerThanLeft.Slack.Show(DisplayUnits.Millimetres) },
        { "Open-circuit volts against the supply", $"{Invariant(OpenVoltsOffSupply.Share * 100)} %" },
        { "Least share of the loss that a unit has while it lifts", Invariant(LoadedVoltsLow.LeastShare) },
        { "Largest breaker that feeds panels as a rule", $"{Invariant(BreakerOverloaded.MostOfCircuit)} A" },
        { "Shorter than its opening and still at the sill", BarOffSill.Reaches.Show(DisplayUnits.Inches) },
        { "Diagonals against sides", DiagonalsOffSides.Tolerance.Show(DisplayUnits.Inches) },
        { "Plaster and trim take at least", FinishedOffRough.Least.Show(DisplayUnits.Inches) },
        { "Plaster and trim take at most", FinishedOffRough.Most.Show(DisplayUnits.Inches) },
        { "Overlap on each side", OverlapShort.Least.Show(DisplayUnits.Inches) },
        { "Open bar clear of the glass", BarInGlass.Least.Show(DisplayUnits.Inches) },
        { "Open bar above its stack", OpenBarAboveStack.Tolerance.Show(DisplayUnits.Inches) },
        { "Delivered against ordered", ReceivedWidth.Tolerance.Show(DisplayUnits.Inches) },
        { "Narrower than ordered, and perhaps by what the maker takes off", DeliveredSizeOff.MostTakenOff.Show(DisplayUnits.Inches) },
        { "Neighbors' bars", BarsNotLevel.Tolerance.Show(DisplayUnits.Inches) },
        { "Entry against its plan", EntryOffPlan.Tolerance.Show(DisplayUnits.Inches) },
        { "Entry from the motor, along the head", EntryFarFromMotor.MostAlong.Show(DisplayUnits.Inches) },
        { "Entries of one opening, apart", EntryFarFromMotor.OnePlace.Show(DisplayUnits.Inches) },
        { "Entry below the head", EntryFarFromMotor.MostDown.Show(DisplayUnits.Inches) },
        { "Setback against the sheet", SetbackOffSheet.Tolerance.Show(DisplayUnits.Inches) },
        { "Around the middle screw", MiddleScrew.Around.Show(DisplayUnits.Inches) },
        { "Free cord or chain", CordWithinReach.Most.Show(DisplayUnits.Inches) },
        { "One end lower than the other, inches", HungOutOfLevel.Most(DisplayUnits.Inches).Show(DisplayUnits.Inches) },
        { "One end lower than the other, millimeters", HungOutOfLevel.Most(DisplayUnits.Millimetres).Show(DisplayUnits.Millimetres) },
        { "Paint is taken as free of lead from", Invariant((decimal)OldPaintUntested.FreeFrom) },
        { "Bar above the sill", BarOffSill.Tolerance.Show(DisplayUnits.Inches) },
        { "Sun closes a covering within, from straight on", $"{Invariant((decimal)SunRules.ClosesWithin)} deg" },
        { "And for at least", $"{Invariant((decimal)SunRules.ClosesFor)} minutes" },
        { "Glare: the sun is lower than", $"{Invariant((decimal)SunRules.GlaresBelow)} deg" },
        { "Glare: from straight on within", $"{Invariant((decimal)SunRules.GlaresWithin)} deg" },
        { "Heat: beam on the glass from", $"{Invariant((decimal)SunRules.HeatsFrom)} W/m²" },
        { "Day that stands for a month", Invariant((decimal)SunRules.Day) },
        { "Times to program are steps of", $"{Invariant((decimal)SunRules.Step)} minutes" },
        { "A preset opens a unit from", $"{Invariant((decimal)ScheduleOffSun.Opens)} %" },
        { "Low sun that is let be", $"{Invariant((decimal)ScheduleOffSun.GlareLet)} minutes" },
        { "Sun's middle at sunrise and sunset", $"{Invariant(Math.Round((decimal)SolarPosition.OnHorizon, 4))} deg" },
        { "Clocks behind the even time of astronomy", $"{Invariant((decimal)SolarPosition.ClockBehind)} s" },
    };

    [Theory]
    [MemberData(nameof(Constants))]
    public void AConstantOfThePageIsThatOfTheCode(string name, string value) => Assert.Contains($"| {name} | {value} |", Page, StringComparison.Ordinal);

    [Fact]
    public void TheMetricSizesOfThePageAreThoseOfTheCode() => Assert.All(Conductors.MetricSizes, size =>
    {
        var metric = new ConductorSize.Metric(size);
        Assert.Contains($"| {Invariant(size)} | {Invariant(Ohms(metric, Stranding.Solid))} | {Invariant(Ohms(metric, Stranding.Stranded))} |", Page,
            StringComparison.Ordinal);
    });

    [Fact]
    public void TheSubstitutionsOfThePageAreThoseOfTheCode() =>
        Assert.All(Enum.GetValues<CableListing>().Where(l => CableListings.SubstitutesFor(l).Count > 0), asked =>
        {
            var substitutes = string.Join(", ", CableListings.SubstitutesFor(asked).Select(s => s.ToString().ToUpperInvariant()));
            Assert.Contains($"| {asked.ToString().ToUpperInvariant()} | {substitutes} |", Page, StringComparison.Ordinal);
        });

    [Fact]
    public void WhatIsUsualOnASheetStandsOnThePage()
    {
        string Shown(Fact fact, object value) => fact.Show(value, House.Empty);
        Assert.All(UsualValues.All, usual => Assert.Contains(
            $"| {Sort(usual.Fact)} | {usual.Fact.Label} | {Shown(usual.Fact, usual.Least)} | {Shown(usual.Fact, usual.Most)} |", Page,
            StringComparison.Ordinal));

        static string Sort(Fact fact) => KebabCase.Of(fact.Subject).Replace('-', ' ');
    }

    [Fact]
    public void WhatIsUsualInAHouseStandsOnThePage() => Assert.All(UsualLengths.All, usual => Assert.Contains(
        $"| {KebabCase.Of(usual.Fact.Subject).Replace('-', ' ')} | {usual.Fact.Label} | {usual.Fact.Show(usual.Least, House.Empty)} | "
            + $"{usual.Fact.Show(usual.Most, House.Empty)} | {usual.Why.English} |", Page, StringComparison.Ordinal));

    [Fact]
    public void TheDefaultsOfThePageAreThoseOfANewHouse() => Assert.Contains(Defaults(), Page, StringComparison.Ordinal);

    private static string Defaults()
    {
        var scribe = new Scribe(new MemoryStore(), TimeProvider.System, "Test crew");
        Assert.True(NewHouse.Begin("Test house", DisplayUnits.Inches).Then(scribe.Record).Ok);
        var house = scribe.House;
        var table = new StringBuilder("| part | value | default |\n|---|---|---|\n");
        foreach (var item in house.Items.Values.OrderBy(i => i.Kind).ThenBy(i => i.Place))
        {
            foreach (var fact in FactTable.Of(item.Kind).Where(f => f.Name is not ("name" or "units") && item.Latest(f.Name)?.Stored is not null))
                table.Append(CultureInfo.InvariantCulture,
                    $"| {(item.Kind == ItemKind.House ? "House" : house.NameOf(item))} | {fact.Label} | {fact.ShowOf(item, house)} |\n");
        }
        return table.ToString();
    }

    private static decimal Ohms(ConductorSize size, Stranding made) => Conductors.OhmsPerMetre(size, made, new Temperature(20)).Value * 1000;

    private static string Invariant(decimal number) => NumberText.Plain(number);

    private static string Invariant(double number) => NumberText.Plain((decimal)number);
}
