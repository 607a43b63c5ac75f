using TrimOut.Core.Checks;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests;

/// <summary>Nonsense in is refused by the name of what makes no sense; it never becomes a number. What is typed is refused before it gets here.</summary>
public class NonsenseTests
{
    private static readonly Length Some = Length.FromMillimetres(1000);
    private static readonly Length Less = Length.FromMillimetres(-1);
    private static readonly Voltage Volts = new(12);
    private static readonly Current Amps = new(1);

    public static TheoryData<string, Action> Computed => new()
    {
        { "oneWay", () => TwoWire.Loop(Less, 0.01m) },
        { "ohmsPerMetre", () => TwoWire.Loop(Some, -0.01m) },
        { "oneWay", () => TwoWire.Drop(Less, 0.01m, Amps) },
        { "current", () => TwoWire.Drop(Some, 0.01m, new Current(-1)) },
        { "current", () => TwoWire.Arrives(Volts, Some, 0.01m, new Current(-1)) },
        { "ohmsPerMetre", () => TwoWire.Longest(Volts, new Voltage(10), 0, Amps) },
        { "ohmsPerMetre", () => TwoWire.FromLoop(new Resistance(1), -1) },
        { "legs", () => NeededCable.Of(Less, Some, Some, 10) },
        { "tailAtWindow", () => NeededCable.Of(Some, Less, Some, 10) },
        { "tailAtPanel", () => NeededCable.Of(Some, Some, Less, 10) },
        { "allowancePercent", () => NeededCable.Of(Some, Some, Some, -10) },
        { "gauge", () => Conductors.MillimetresAcross(-1) },
        { "gauge", () => Conductors.MillimetresAcross(37) },
        { "tube", () => Roll.Diameter(Less, Some, Some) },
        { "thickness", () => Roll.Diameter(Some, Less, Some) },
        { "wound", () => Roll.RoomToTurn(Some, Some, Less) },
        { "thickness", () => Roll.Wound(Some, Some, Length.Zero) },
        { "width", () => Squareness.Lean(Length.Zero, Some, Some) },
        { "diagonal2", () => Squareness.Lean(Some, Some, Less) },
        { "height", () => Squareness.Diagonal(Some, Less) },
        { "diagonal1", () => Squareness.MeanDiagonal(Less, Some) },
        { "belowHead", () => TailPath.ToMotor(Some, Some, Less, Some) },
        { "behind", () => TailPath.ToMotor(Some, Some, Some, Less) },
        { "radius", () => new Footprint(Some, Some, Some, Some, Some).Covers(Some, Some, Some, Less) },
        { "middle", () => PlumbWidth.Of(Some, Length.Zero, Some, Some, Some) },
        { "diagonal1", () => Squareness.LeanUnsure(Some, Less, Some, Some) },
        { "smallest", () => OrderSize.InsideWidth(Length.Zero, Some, null, null, Some) },
        { "off", () => OrderSize.InsideWidth(Some, Some, OrderedWidth.Opening, Less, Some) },
        { "off", () => OrderSize.InsideWidth(Some, Some, OrderedWidth.Made, Less, Some) },
        { "largest", () => OrderSize.InsideHeight(Less, Some) },
        { "step", () => OrderSize.InsideWidth(Some, Some, null, null, Length.Zero) },
        { "overlapEachSide", () => OrderSize.OutsideWidth(Some, Less, Some) },
        { "above", () => OrderSize.OutsideHeight(Some, Less, Some) },
        { "drop", () => Stack.Height(Some, 0.1m, Less) },
        { "standsOut", () => Mitre.FromCorner(Less, 135) },
        { "angle", () => Mitre.Short(new(Some, Some), new(Some, Some), 360) },
        { "oneWay", () => SharedCable.Of(Volts, [new Tap(-1, Less, 0.01m, Amps)]) },
    };

    [Theory]
    [MemberData(nameof(Computed))]
    public void AFigureThatMakesNoSenseIsNamed(string named, Action compute) =>
        Assert.Equal(named, Assert.ThrowsAny<ArgumentException>(compute).ParamName?.Split('.')[0]);

    // Whatever is typed into a fact of the kit or the house that computing rests on.
    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e9")]
    [InlineData("999999999999999999999999999999999999")]
    [InlineData("99 AWG")]
    [InlineData("3 mm2")]
    public void NothingOfItGetsIntoTheKit(string typed)
    {
        Fact[] facts =
        [
            CoveringKindFacts.LeastVolts, CoveringKindFacts.RunningCurrent, CoveringKindFacts.StartingCurrent, CoveringKindFacts.Tube,
            CoveringKindFacts.FabricThickness, CoveringKindFacts.RoundTo,
            PanelTypeFacts.Supply, PanelTypeFacts.Outputs, PanelTypeFacts.OutputCurrent, PanelTypeFacts.UnitsPerOutput, WindowFacts.WidthTop,
            WindowFacts.CornerAngle, UnitFacts.OrderWidth,
        ];
        Assert.All(facts, fact => Assert.False(fact.ReadTyped(typed, House.Empty).Ok, $"{fact.Label}: {typed}"));
    }

    // Every value of the kit taken away, one after the other: something is said to be missing, and nothing breaks.
    [Fact]
    public void AKitWithHolesNeverBecomesAPass()
    {
        var job = BigHouse.Of(12);
        // What nobody checked is no pass to begin with.
        foreach (var sheet in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind)).ToList())
        {
            if (TrimOut.Core.Decisions.KitCheck.All(job.House, job.House.Find(sheet.Id)!) is { Ok: true } held)
                job.Do(held);
        }
        var before = job.Report;
        Assert.Empty(before.Unread);
        foreach (var sheet in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind)).OrderBy(i => i.Place).ToList())
        {
            foreach (var fact in FactTable.Of(sheet.Kind).Where(f => f.Name != "name" && sheet.Latest(f.Name)?.Stored is not null))
                job.Do(TrimOut.Core.Decisions.SetFact.Typed(job.House, job.House.Find(sheet.Id)!, fact, ""));
        }
        var after = job.Report;
        Assert.True(after.Passed < before.Passed + before.Unread.Sum(u => u.Passed));
        Assert.Empty(after.Unread);
        Assert.True(after.Missing.Length > before.Missing.Length);
        Assert.All(job.House.Units.SelectMany(u => TrimOut.Core.Figures.UnitFigures.Of(u)), f => Assert.All(f.Working.Inputs, i => Assert.NotEmpty(i.Value)));
        Assert.NotEmpty(TrimOut.Core.Plans.Parts.HouseParts.Of(job.House));
    }
}
