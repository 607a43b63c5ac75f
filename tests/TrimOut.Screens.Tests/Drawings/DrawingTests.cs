using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Drawings;

public class DrawingTests
{
    private static readonly Glyphs[] BothGlyphs = [Glyphs.Drawn, Glyphs.Ascii];

    /// <summary>Width and height as typed: wide, narrow, tall, tiny, usual; in inches and in millimetres.</summary>
    private static readonly (DisplayUnits Units, string Width, string Height)[] Sizes =
    [
        (DisplayUnits.Inches, "240", "12"), (DisplayUnits.Inches, "6", "120"), (DisplayUnits.Inches, "30 1/2", "64 3/16"), (DisplayUnits.Inches, "6", "6"),
        (DisplayUnits.Millimetres, "6000", "300"), (DisplayUnits.Millimetres, "1156", "2183"), (DisplayUnits.Millimetres, "200", "2900"),
    ];

    private static TestJob Window(DisplayUnits units, string width, string height, int unitsOnIt, string side)
    {
        var job = new TestJob(units).Window("W01");
        for (var more = 1; more < unitsOnIt; more++)
            job.Do(Core.Decisions.AddItems.Unit(job.House, job.House.FindTag("W01")!.Id));
        job.Do(Core.Decisions.SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.RoughWidth, width));
        job.Do(Core.Decisions.SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.RoughHeight, height));
        foreach (var unit in job.House.Units.Select(u => u.Tag).ToList())
        {
            job.Say(unit, UnitFacts.LeadSide, side).Say(unit, UnitFacts.Power, "panel").Say(unit, UnitFacts.EntrySide, side)
                .Say(unit, UnitFacts.EntryFromJamb, units == DisplayUnits.Inches ? "2" : "50")
                .Say(unit, RunFacts.TailAtWindow, units == DisplayUnits.Inches ? "36" : "900");
        }
        return job;
    }

    public static TheoryData<int, int, string> Windows()
    {
        var data = new TheoryData<int, int, string>();
        foreach (var size in Enumerable.Range(0, Sizes.Length))
        {
            foreach (var units in (int[])[1, 2, 3])
            {
                data.Add(size, units, "left");
                data.Add(size, units, "right");
            }
        }
        return data;
    }

    [Theory]
    [InlineData("60", 0.55, 0.65)]
    [InlineData("5", 0.0, 0.1)]
    [InlineData("95", 0.9, 1.0)]
    public void TheEntryOfTheRightOneOfTwoUnitsIsDrawnWhereItIs(string fromLeft, double least, double most)
    {
        var job = Window(DisplayUnits.Inches, "100", "60", 2, "left").Say("W01B", UnitFacts.EntryFromJamb, fromLeft)
            .Say("W01A", UnitFacts.EntrySide, "");
        var frame = new Frame(70, 24);
        WindowDrawing.Draw(frame.All, job.House.Units[1], Glyphs.Drawn);
        var lines = frame.ToText().Split('\n');
        var edges = lines.First(l => l.Contains(DrawingSigns.Entry.Drawn(Glyphs.Drawn), StringComparison.Ordinal));
        var top = lines[0].TrimStart();
        var (left, width) = (lines[0].Length - top.Length, top.TrimEnd().Length);
        var at = (edges.IndexOf(DrawingSigns.Entry.Drawn(Glyphs.Drawn), StringComparison.Ordinal) - left) / (double)(width - 1);
        Assert.InRange(at, least, most);
    }

    /// <summary>The room of the head cover was checked, the tube was not: the mark stands behind the roll and not behind the room.</summary>
    [Fact]
    public void TheWordsOfARollMarkWhatNobodyChecked()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughHeight, "60").Add(ItemKind.HeadCover, "Box").Say("W01", UnitFacts.HeadCover, "Box")
            .SayOf("Box", HeadCoverFacts.RoomInside, "6");
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && Core.Kits.SheetValues.NotHeldIn(i).Any()).ToList())
            job.Do(Core.Decisions.KitCheck.All(job.House, part));
        job.SayOf("Roller", CoveringKindFacts.Tube, "1 3/4");
        var frame = new Frame(90, 24);
        RollDrawing.Draw(frame.All, job.House.Units[0], Glyphs.Drawn);
        Assert.Matches("the roll takes [^,]*\"\u00A0\\?, inside is 6\"\\.", frame.ToText());
    }

    [Theory]
    [MemberData(nameof(Windows))]
    public void TextsOfAWindowOverwriteNeitherItsFrameNorEachOther(int size, int unitsOnIt, string side)
    {
        var job = Window(Sizes[size].Units, Sizes[size].Width, Sizes[size].Height, unitsOnIt, side);
        foreach (var (glyphs, width, height) in Everywhere())
            AssertClean(width, height, frame => WindowDrawing.Draw(frame.All, job.House.Units[0], glyphs));
    }

    [Theory]
    [MemberData(nameof(Windows))]
    public void BothSizesOfAWindowAreReadWholeWhereverItIsDrawn(int size, int unitsOnIt, string side)
    {
        var job = Window(Sizes[size].Units, Sizes[size].Width, Sizes[size].Height, unitsOnIt, side);
        var window = job.House.Windows[0];
        foreach (var (glyphs, width, height) in Everywhere().Where(e => e.Width >= 24))
        {
            var frame = new Frame(width, height);
            if (WindowDrawing.Draw(frame.All, job.House.Units[0], glyphs) == 0)
                continue;
            Assert.Contains(window.KnownWidth!.Value.ShowRounded(job.House.DisplayUnits), frame.ToText(), StringComparison.Ordinal);
            Assert.Contains(window.KnownHeight!.Value.ShowRounded(job.House.DisplayUnits), frame.ToText(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ATailBetweenTwoUnitsHangsInItsOwnPartBelowItsHead()
    {
        var job = Window(DisplayUnits.Inches, "90", "60", 2, "left").Say("W01B", UnitFacts.EntryFromJamb, "47");
        var frame = new Frame(60, 20);
        WindowDrawing.Draw(frame.All, job.House.Units[1], Glyphs.Drawn);
        var rows = frame.ToText().Split('\n');
        var second = rows[3].LastIndexOf('~');
        var divider = rows[^7].IndexOf('│', rows[^7].IndexOf('│', StringComparison.Ordinal) + 1);
        Assert.Equal(divider + 1, second);
        Assert.Equal('▌', rows[1][divider - 1]);
    }

    [Fact]
    public void AWindowWithoutSizesSaysWhatIsMissing()
    {
        var frame = new Frame(16, 8);
        Assert.Equal(3, WindowDrawing.Draw(frame.All, new TestJob().Window("W01").House.Units[0], Glyphs.Drawn));
        Assert.Contains("missing", frame.ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("36", "120")]
    [InlineData("36", "20")]
    public void TextsOfARollSectionOverwriteNothing(string width, string height)
    {
        var job = Window(DisplayUnits.Inches, width, height, 1, "left");
        foreach (var cover in job.House.ItemsOf(ItemKind.HeadCover).Select(i => job.House.NameOf(i)))
        {
            job.Say("W01", UnitFacts.HeadCover, cover);
            foreach (var (glyphs, w, h) in Everywhere())
                AssertClean(w, h, frame => RollDrawing.Draw(frame.All, job.House.Units[0], glyphs));
        }
    }

    public static TheoryData<string> Ways() =>
        ["across 20", "up 8, across 46", "up 8, up 9, across 4, down 3, across 120", "across 3, up 8, down 8, up 8, down 8, across 2", "up 9", "down 9, down 9",
            "through floor 10, across 1, down 1, across 1, up 1, across 90"];

    [Theory]
    [MemberData(nameof(Ways))]
    public void EveryLegOfAWayIsReadWholeAndOverwritesNothing(string way)
    {
        var job = Window(DisplayUnits.Inches, "36", "60", 1, "left");
        foreach (var leg in way.Split(", "))
        {
            job.Do(Core.Decisions.AddItems.Leg(job.Run("W01")));
            var item = job.Run("W01").Legs[^1].Item;
            var at = leg.LastIndexOf(' ');
            job.Do(Core.Decisions.SetFact.Typed(job.House, item, LegFacts.Direction, leg[..at]))
                .Do(Core.Decisions.SetFact.Typed(job.House, job.House.Find(item.Id)!, LegFacts.Length, leg[(at + 1)..]));
        }
        foreach (var (glyphs, width, height) in Everywhere())
        {
            var frame = AssertClean(width, height, f => RouteDrawing.Draw(f.All, job.Run("W01"), glyphs), out var lines);
            if (lines == 0)
                continue;
            foreach (var leg in job.Run("W01").Legs)
                Assert.Contains(leg.Length!.Value.Show(DisplayUnits.Inches, LengthScale.Run), frame.ToText(), StringComparison.Ordinal);
            Assert.Contains("W01", frame.ToText(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void APanelAndBoxesOverwriteNothing()
    {
        var house = SampleHouse.Open("ridge-house", new FakeTimeProvider()).House;
        foreach (var (glyphs, width, height) in Everywhere())
            AssertClean(width, height, frame => PanelDrawing.Draw(frame.All, house.Panels[0], glyphs, null));
    }

    private static IEnumerable<(Glyphs Glyphs, int Width, int Height)> Everywhere() =>
        from glyphs in BothGlyphs
        from width in (int[])[16, 20, 24, 31, 38, 56, 80, 110]
        from height in (int[])[6, 8, 12, 18, 30]
        select (glyphs, width, height);

    private static void AssertClean(int width, int height, Func<Frame, int> draw) => AssertClean(width, height, draw, out _);

    private static WatchedFrame AssertClean(int width, int height, Func<Frame, int> draw, out int lines)
    {
        var frame = new WatchedFrame(width, height);
        lines = draw(frame);
        Assert.True(frame.Faults.Count == 0, $"{width}x{height}: {string.Join(", ", frame.Faults.Take(5))}\n{frame.ToText()}");
        return frame;
    }
}
