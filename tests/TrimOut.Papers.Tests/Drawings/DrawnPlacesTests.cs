using System.Globalization;
using System.Xml.Linq;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Drawings;

/// <summary>Reads places back out of the drawings, and works them out from what was typed without the program's own layout.</summary>
public class DrawnPlacesTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    /// <summary>How far a line may be from its place: a quarter of a millimetre on paper.</summary>
    private const double Near = 1;

    public static TheoryData<string> Samples => [.. SampleJobs.Names];

    [Theory]
    [MemberData(nameof(Samples))]
    public void OpeningsUnitsAndEntriesOfASampleAreDrawnWhereTheyAre(string sample) => AllAreWhereTheyAre(SampleJobs.Data(sample).House);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void SoAreThoseOfARandomHouse(int seed) => AllAreWhereTheyAre(RandomHouse(seed));

    [Fact]
    public void AnEntryOfTheSecondUnitIsGivenFromTheLeftOfTheOpening()
    {
        var job = new TestJob().Window("W01").Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id));
        Typed(job, "W01B", (WindowFacts.RoughWidth, "70"), (WindowFacts.RoughHeight, "50"));
        Typed(job, "W01B", (UnitFacts.EntrySide, "right"), (UnitFacts.EntryFromJamb, "2"));
        Assert.Contains("entry 68\" from the left of the opening", WindowElevation.Describe(job.House.FindTag("W01")!).Plain(Words.English),
            StringComparison.Ordinal);
    }

    [Fact]
    public void SizesThatNobodyMeasuredAreSaidToBeRough()
    {
        const string Rough = "Rough sizes, not measured yet.";
        var job = new TestJob().Window("W01");
        string Drawn() => WindowElevation.Of(job.House.FindTag("W01")!, Words.English).Render("x");
        Assert.DoesNotContain(Rough, Drawn(), StringComparison.Ordinal);
        Typed(job, "W01", (WindowFacts.RoughWidth, "70"), (WindowFacts.RoughHeight, "50"));
        Assert.Contains(Rough, Drawn(), StringComparison.Ordinal);
        Assert.Contains(Rough, WindowElevation.Describe(job.House.FindTag("W01")!).Plain(Words.English), StringComparison.Ordinal);
        Typed(job, "W01", (WindowFacts.WidthTop, "70"), (WindowFacts.WidthMiddle, "70"), (WindowFacts.WidthBottom, "70"),
            (WindowFacts.HeightLeft, "50"), (WindowFacts.HeightMiddle, "50"), (WindowFacts.HeightRight, "50"));
        Assert.DoesNotContain(Rough, Drawn(), StringComparison.Ordinal);
    }

    [Fact]
    public void NoTailIsDrawn() =>
        Assert.All(SampleJobs.Names.SelectMany(n => SampleJobs.Data(n).House.Windows), w => Assert.DoesNotContain("stroke-dasharray",
            WindowElevation.Of(w, Words.English).Render("x"), StringComparison.Ordinal));

    [Fact]
    public void NothingThatASampleDrawsOfAWindowIsCut() =>
        Assert.All(SampleJobs.Names.SelectMany(n => SampleJobs.Data(n).House.Windows), w => Assert.DoesNotContain("…",
            WindowElevation.Of(w, Words.English).Render("x"), StringComparison.Ordinal));

    private static void AllAreWhereTheyAre(House house)
    {
        var windows = house.Windows.Where(w => w is { KnownWidth: not null, KnownHeight: not null, Units.Length: > 0 }).ToList();
        Assert.NotEmpty(windows);
        Assert.All(windows, IsWhereItIs);
    }

    private static void IsWhereItIs(Window window)
    {
        var svg = XDocument.Parse(WindowElevation.Of(window, Words.English).Render("x")).Root!;
        var opening = Assert.Single(Parts(svg, "opening"));
        var (left, top, wide, high) = (Of(opening, "x"), Of(opening, "y"), Of(opening, "width"), Of(opening, "height"));
        var (width, height) = (Millimetres(window.KnownWidth), Millimetres(window.KnownHeight));
        var scale = wide / width;
        Assert.Equal(height * scale, high, Near);
        var units = Parts(svg, "unit");
        Assert.Equal(window.Units.Length, units.Count);
        var outside = window.Item.Get(WindowFacts.Mount) == Mount.Outside;
        for (var at = 0; at < units.Count; at++)
        {
            var unit = window.Units[at];
            Assert.Equal(top - scale * (outside ? Millimetres(window.Item.Get(WindowFacts.HeadAbove)) : 0), Of(units[at], "y"), Near);
            if (units.Count > 1)
                continue;
            var past = !outside ? 0 : unit.Item.Get(UnitFacts.OrderWidth) is { } ordered ? (Millimetres(ordered) - width) / 2
                : Millimetres(window.Item.Get(WindowFacts.OverlapEachSide));
            Assert.Equal(left - past * scale, Of(units[at], "x"), Near);
            Assert.Equal((width + 2 * past) * scale, Of(units[at], "width"), Near);
        }
        // Units side by side: in their order, none on another, and inside none past the opening.
        Assert.All(units.Zip(units.Skip(1)), pair => Assert.True(outside || Of(pair.First, "x") + Of(pair.First, "width") <= Of(pair.Second, "x") + Near));

        // A wedge on the unit beside would give that one the lead.
        var leads = svg.Elements(Ns + "polyline").Select(p => ((string)p.Attribute("points")!).Split(' ')
            .Select(x => double.Parse(x.Split(',')[0], CultureInfo.InvariantCulture)).ToList()).ToList();
        Assert.Equal(window.Units.Count(u => u.LeadSide is not null), leads.Count);
        foreach (var ((unit, drawn), lead) in window.Units.Zip(units).Where(u => u.First.LeadSide is not null).Zip(leads))
        {
            var (from, to) = (Of(drawn, "x"), Of(drawn, "x") + Of(drawn, "width"));
            Assert.All(lead, x => Assert.InRange(x, from - Near, to + Near));
            Assert.Equal(unit.LeadSide == Side.Left ? from : to, unit.LeadSide == Side.Left ? lead.Min() : lead.Max(), Near);
            Assert.Single(lead, x => Math.Abs(x - (unit.LeadSide == Side.Left ? from : to)) <= Near);
        }

        var entries = Parts(svg, "entry");
        var expected = window.Units.Where(u => u.Item.Get(UnitFacts.Power) is null or PowerSource.Panel)
            .Where(u => u.Item.Get(UnitFacts.EntrySide) is not null && Jamb(u) is not null).ToList();
        Assert.Equal(expected.Count, entries.Count);
        foreach (var (unit, entry) in expected.Zip(entries))
        {
            var along = unit.Item.Get(UnitFacts.EntrySide) == Side.Left ? Jamb(unit)!.Value : width - Jamb(unit)!.Value;
            Assert.Equal(left + along * scale, Of(entry, "cx"), Near);
            Assert.Equal(top + Millimetres(unit.Item.Get(UnitFacts.EntryBelowHead)) * scale, Of(entry, "cy"), Near);
        }
    }

    private static double? Jamb(Unit unit) =>
        (unit.Item.Get(UnitFacts.EntryAsBuilt) ?? unit.Item.Get(UnitFacts.EntryFromJamb)) is { } jamb ? Millimetres(jamb) : null;

    private static List<XElement> Parts(XElement svg, string part) => [.. svg.Elements().Where(e => (string?)e.Attribute("data-part") == part)];

    private static double Of(XElement shape, string side) => double.Parse(shape.Attribute(side)!.Value, CultureInfo.InvariantCulture);

    private static double Millimetres(Length? length) => (double)(length ?? Length.Zero).Millimetres;

    private static House RandomHouse(int seed)
    {
        var roll = new Random(seed);
        var job = new TestJob(seed % 2 == 0 ? DisplayUnits.Millimetres : DisplayUnits.Inches);
        for (var at = 1; at <= 12; at++)
        {
            var tag = $"W{at:00}";
            job.Window(tag);
            var units = roll.Next(3);
            for (var more = 0; more < units; more++)
                job.Do(j => AddItems.Unit(j.House, j.House.FindTag(tag)!.Id));
            var window = job.House.FindTag(tag)!;
            var (wide, high) = (roll.Next(400, 4000), roll.Next(400, 3000));
            Typed(job, window.Units[0].Tag, (WindowFacts.RoughWidth, $"{wide} mm"), (WindowFacts.RoughHeight, $"{high} mm"));
            if (roll.Next(2) == 0)
            {
                Typed(job, window.Units[0].Tag, (WindowFacts.Mount, "outside"), (WindowFacts.OverlapEachSide, $"{roll.Next(200)} mm"),
                    (WindowFacts.HeadAbove, $"{roll.Next(300)} mm"));
            }
            foreach (var unit in window.Units.Select(u => u.Tag).ToList())
            {
                Typed(job, unit, (UnitFacts.LeadSide, roll.Next(2) == 0 ? "left" : "right"),
                    (UnitFacts.EntrySide, roll.Next(2) == 0 ? "left" : "right"),
                    (UnitFacts.EntryFromJamb, $"{roll.Next(Math.Min(wide, 3000))} mm"),
                    (UnitFacts.EntryBelowHead, $"{roll.Next(100)} mm"));
            }
        }
        return job.House;
    }

    private static void Typed(TestJob job, string tag, params (Fact Fact, string Typed)[] values)
    {
        foreach (var (fact, typed) in values)
        {
            var unit = job.Unit(tag);
            job.Do(SetFact.Typed(job.House, fact.Subject == ItemKind.Window ? unit.Window.Item : unit.Item, fact, typed));
        }
    }
}
