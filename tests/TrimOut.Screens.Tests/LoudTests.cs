using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;
using TrimOut.Testing;
using TextStyle = Terminal.Gui.Drawing.TextStyle;

namespace TrimOut.Screens.Tests;

/// <summary>What is wrong looks like it on every screen and in every look, and nothing looks well while checks wait.</summary>
public class LoudTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    /// <summary>High enough for every row of the sample.</summary>
    private const int High = 160;

    /// <summary>The cells that a list has at the least.</summary>
    private const int MostList = 76;

    /// <summary>Screens with a row for each unit.</summary>
    private static readonly Dictionary<string, string[]> OfUnits = new()
    {
        ["job sheet"] = [],
        ["rooms"] = ["r"],
        ["walk"] = ["2"],
        ["panels"] = ["3"],
        ["cables"] = ["4"],
        ["controls"] = ["5"],
        ["punch list"] = ["6"],
    };

    private static readonly Lazy<ShellState> Ridge = new(() => new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock), Look.Dark));

    private static readonly Lazy<Dictionary<string, Frame>> Frames = new(() => OfUnits.ToDictionary(way => way.Key, way =>
    {
        var shell = new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock), Look.Dark);
        foreach (var key in way.Value)
            shell.Press(key);
        return shell.Draw(140, High);
    }));

    public static TheoryData<string> Looks() => [.. Look.All.Select(l => l.Name)];

    public static TheoryData<string> StopsOfUnits() =>
        [.. Ridge.Value.Context.Report.OpenStops.Where(f => UnitsOf(f).Any()).Select(f => f.Check.Id).Distinct()];

    public static TheoryData<string, int, int> Screens() => ScreenSnapshotTests.Screens();

    /// <summary>Bold on a ground of its own, or all three of reversed, bold and underlined where there is no colour: like no other tone.</summary>
    [Theory]
    [MemberData(nameof(Looks))]
    public void AStopHasAWeightThatNothingElseHas(string look)
    {
        var stop = Palette.Of(Look.Named(look), Tone.Stop);
        Assert.True(stop.Style.HasFlag(TextStyle.Bold));
        Assert.All(Enum.GetValues<Tone>().Where(t => t != Tone.Stop).Select(t => Palette.Of(Look.Named(look), t)), other =>
        {
            Assert.True(stop.Back != other.Back || stop.Style.HasFlag(TextStyle.Reverse | TextStyle.Bold | TextStyle.Underline));
            Assert.False(other.Style.HasFlag(TextStyle.Reverse | TextStyle.Bold | TextStyle.Underline));
            Assert.True(stop.Sixteen is null || stop.Sixteen.Value.Back != other.Sixteen!.Value.Back);
        });
    }

    /// <summary>Green is where green is the strongest of the three: only what is well has it.</summary>
    [Theory]
    [MemberData(nameof(Looks))]
    public void OnlyWhatIsWellIsGreen(string look) => Assert.All(Enum.GetValues<Tone>().Where(t => t != Tone.Good), tone =>
    {
        var paint = Palette.Of(Look.Named(look), tone);
        Assert.All(new[] { paint.Front, paint.Back }.OfType<byte>(), index =>
            Assert.False(Paint.Rgb(index) is var (r, g, b) && g > r && g > b, $"{tone} has {index}"));
        Assert.DoesNotContain(paint.Sixteen?.Front ?? 0, (int[])[32, 92]);
        Assert.DoesNotContain(paint.Sixteen?.Back ?? 0, (int[])[42, 102]);
    });

    [Theory]
    [MemberData(nameof(StopsOfUnits))]
    public void EachSortOfStopStandsOutInEveryRowOfItsUnit(string check)
    {
        foreach (var finding in Ridge.Value.Context.Report.OpenStops.Where(f => f.Check.Id == check))
        {
            foreach (var unit in UnitsOf(finding))
            {
                foreach (var (screen, frame) in Frames.Value)
                {
                    if ((screen is "cables" && unit.Run is null) || (screen is "panels" && unit.Run is null or { BranchesOff: not null }))
                        continue;
                    Assert.True(RowsOf(frame, screen == "rooms" ? unit.Window.Tag : unit.Tag).Any(HasStop), $"{check} of {unit.Tag} is silent on the {screen}");
                }
            }
        }
    }

    /// <summary>A stop of a part is told of the part; who looks at the panel, the cable or the controls sees it in the row of each unit too, counted.</summary>
    [Theory]
    [InlineData("panels")]
    [InlineData("cables")]
    [InlineData("controls")]
    public void AStopOfAPartIsCountedInTheRowsOfTheUnitsThatHaveIt(string screen)
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.CoveringKind, "Second").Say("W02", Core.Facts.UnitFacts.Kind, "Second")
            .Add(ItemKind.Panel, "A").SayOf("A", Core.Facts.PanelFacts.Type, "Invented supply").Add(ItemKind.Remote, "R");
        job.Do(Core.Decisions.Landing.Land(job.Run("W01"), job.House.Panels[0], 1)).Do(j => Core.Decisions.Landing.Land(j.Run("W02"), j.House.Panels[0], 2));
        Assert.Empty(job.Report.OpenStops);
        job.SayOf("Roller", Core.Facts.CoveringKindFacts.StartingCurrent, "0.4").Say("W01", Core.Facts.UnitFacts.BoxLabel, "W09");
        Assert.Equal(2, job.Report.OpenStops.Count());
        var shell = new ShellState(new TestDesk(Clock), job.Scribe);
        foreach (var key in OfUnits[screen])
            shell.Press(key);
        var frame = shell.Draw(80, High);
        Assert.Equal(["!2"], RowsOf(frame, "W01").Select(Loud).Distinct());
        Assert.DoesNotContain(RowsOf(frame, "W02"), HasStop);
        if (screen == "panels")
            Assert.Equal("!2", Loud(Enumerable.Range(1, 20).Select(y => Row(frame, y)).First(r => Text(r).Contains(" A: ", StringComparison.Ordinal))));
    }

    [Fact]
    public void WithoutAStopNoRowHasItsSign()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W02", Core.Facts.UnitFacts.BoxLabel, "W09")
            .Add(ItemKind.Remote, "R");
        Assert.Equal(["W02"], job.Report.OpenStops.Select(f => job.House.NameOf(f.Subject)).Distinct());
        foreach (var (screen, keys) in OfUnits.Where(w => w.Key != "punch list"))
        {
            var shell = new ShellState(new TestDesk(Clock), job.Scribe);
            foreach (var key in keys)
                shell.Press(key);
            var frame = shell.Draw(140, High);
            Assert.True(RowsOf(frame, "W02").Any(HasStop), screen);
            Assert.False(RowsOf(frame, "W01").Any(HasStop), screen);
        }
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void TheTopOfEveryScreenCountsTheStopsAndWhatWaits(string name, int width, int height)
    {
        if (name == "picker")
            return;
        var top = Row(ScreenSnapshotTests.Draw(name, width, height), 0);
        var stops = ScreenSnapshotTests.Open(name).Context.Report.OpenStops.Count();
        Assert.Contains($"!{stops} stop", Loud(top), StringComparison.Ordinal);
        Assert.Contains("(m)", Text(top), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80)]
    [InlineData(97)]
    [InlineData(140)]
    public void NoNameIsSoLongThatTheStopsHaveNoRoom(int width)
    {
        var job = new TestJob().SayOf("", Core.Facts.HouseFacts.Name, new string('h', 90)).Window("W01", new string('r', 60))
            .Say("W01", Core.Facts.UnitFacts.BoxLabel, "W09");
        var shell = new ShellState(new TestDesk(Clock), job.Scribe);
        foreach (var keys in (string[][])[[], ["enter"], ["2"], ["6"]])
        {
            foreach (var key in keys)
                shell.Press(key);
            var top = Row(shell.Draw(width, 24), 0);
            Assert.Equal("!1 stop", Loud(top));
            Assert.Matches("saved \\d\\d:\\d\\d", Text(top));
        }
    }

    [Fact]
    public void OnlyTheContextSaysWhatIsWell() => Assert.Equal(["Palette.cs", "ScreenContext.cs"],
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "TrimOut.Screens"), "*.cs", SearchOption.AllDirectories)
            .Where(f => File.ReadAllText(f).Contains("Tone.Good", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)!).Order());

    [Theory]
    [MemberData(nameof(Screens))]
    public void NothingIsGreenWhileChecksWait(string name, int width, int height)
    {
        Assert.False(Ridge.Value.Context.Report.Waiting.None);
        var frame = ScreenSnapshotTests.Draw(name, width, height);
        Assert.DoesNotContain(Enumerable.Range(0, height).SelectMany(y => Row(frame, y)), cell => cell.Tone == Tone.Good);
    }

    [Fact]
    public void AHubThatIsTooFullLooksLikeIt()
    {
        var job = new TestJob().Add(ItemKind.HubType, "Small").SayOf("Small", Core.Facts.HubTypeFacts.Devices, "5").Add(ItemKind.Hub, "Wing")
            .SayOf("Wing", Core.Facts.HubFacts.Type, "Small").Add(ItemKind.Remote, "R").SayOf("R", Core.Facts.RemoteFacts.Hub, "Wing");
        for (var n = 1; n <= 5; n++)
            job.Window($"W0{n}").Say($"W0{n}", Core.Facts.UnitFacts.Hub, "Wing");
        var shell = new ShellState(new TestDesk(Clock), job.Scribe);
        shell.Press("5");
        var row = Row(shell.Draw(80, 24), 1);
        Assert.Contains("6 of 5? devices", Loud(row), StringComparison.Ordinal);
        Assert.True(HasStop(row));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void WhatASaveCausedStaysInSightWhileTheNextFieldsAreTypedAndUntilItIsSeen(int width, int height)
    {
        var shell = new ShellState(new TestDesk(Clock), new TestJob().Window("W01").Mark("W01", "sheet-frozen")
            .Say("W01", Core.Facts.UnitFacts.OrderWidth, "36").Say("W01", Core.Facts.UnitFacts.OrderHeight, "60").Scribe);
        foreach (var key in (string[])["2", "]", "]", "]", "]", "]", "space"])
            shell.Press(key);
        void Type(string text)
        {
            shell.TextChanged(text);
            shell.Press("enter");
        }

        Type("W02");
        string Seen() => Loud(Enumerable.Range(1, height - 1).SelectMany(y => Row(shell.Draw(width, height), y)));
        Assert.Contains("! STOP W01: ", Seen(), StringComparison.Ordinal);
        Type("36");
        Assert.Contains("! STOP W01: ", Seen(), StringComparison.Ordinal);
        Type("60");
        Assert.NotNull(shell.Typing);
        shell.Press("esc");
        shell.Press("down");
        Assert.Contains("! STOP (f fixes it, Esc: seen) W01: ", Seen(), StringComparison.Ordinal);
        shell.Press("f");
        var sheet = Assert.IsType<Sheets.SheetScreen>(shell.Screen);
        Assert.Equal(Core.Facts.UnitFacts.BoxLabel, sheet.Current!.Fact);
        Assert.DoesNotContain("f fixes it", shell.Draw(width, height).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void EscSaysThatItWasSeenAndGoesNowhere()
    {
        var shell = new ShellState(new TestDesk(Clock), new TestJob().Window("W01").Mark("W01", "sheet-frozen").Scribe);
        foreach (var key in (string[])["2", "]", "]", "]", "]", "]", "enter"])
            shell.Press(key);
        shell.TextChanged("W02");
        shell.Press("enter");
        shell.Press("esc");
        var screen = shell.Screen;
        Assert.NotNull(shell.Caused.Shown);
        shell.Press("esc");
        Assert.Null(shell.Caused.Shown);
        Assert.Same(screen, shell.Screen);
    }

    /// <summary>A first stop that nobody has seen yet does not hide a second one: the newest is told, with how many older ones stay.</summary>
    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void TheNewestCauseIsToldFirstAndTheOlderOnesAreCounted(int width, int height)
    {
        var job = new TestJob().Window("W01").Mark("W01", "sheet-frozen").Say("W01", Core.Facts.UnitFacts.OrderWidth, "36")
            .Say("W01", Core.Facts.UnitFacts.OrderHeight, "60").Say("W01", Core.Facts.UnitFacts.DeliveredHeight, "60");
        var shell = new ShellState(new TestDesk(Clock), job.Scribe);
        void Put(Core.Facts.Fact fact, string tag, string text)
        {
            foreach (var key in (string[])["1", "g"])
                shell.Press(key);
            shell.TextChanged(tag);
            shell.Press("enter");
            shell.Press("enter");
            while (((Sheets.SheetScreen)shell.Screen).Current!.Fact != fact)
                shell.Press("down");
            shell.Press("enter");
            shell.TextChanged(text);
            shell.Press("enter");
        }

        string Seen() => Loud(Enumerable.Range(1, height - 1).SelectMany(y => Row(shell.Draw(width, height), y)));
        Put(Core.Facts.UnitFacts.BoxLabel, "W01", "W02");
        Assert.Contains("! STOP (f fixes it, Esc: seen) W01: ", Seen(), StringComparison.Ordinal);
        var first = shell.Caused.Shown!.Check.Id;
        Put(Core.Facts.UnitFacts.DeliveredWidth, "W01", "35");
        Assert.NotEqual(first, shell.Caused.Shown!.Check.Id);
        Assert.Contains("! STOP (1 older STOP stays; f fixes it, Esc: all seen) W01: ", Seen(), StringComparison.Ordinal);
        // One Esc says that all of them are seen, so that the next one leaves; the top line still counts them.
        shell.Press("esc");
        Assert.Null(shell.Caused.Shown);
        Assert.IsType<Sheets.SheetScreen>(shell.Screen);
        Assert.Contains(" stops", Loud(Row(shell.Draw(width, height), 0)), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsMendedIsNoLongerShown()
    {
        var shell = new ShellState(new TestDesk(Clock), new TestJob().Window("W01").Scribe);
        foreach (var key in (string[])["2", "]", "]", "]", "]", "]", "enter"])
            shell.Press(key);
        shell.TextChanged("W02");
        shell.Press("enter");
        shell.Press("esc");
        Assert.NotNull(shell.Caused.Shown);
        shell.Press("u");
        shell.Press("u");
        Assert.Null(shell.Caused.Shown);
    }

    private static IEnumerable<Unit> UnitsOf(Finding finding) =>
        Ridge.Value.Context.House.Units.Where(u => Ridge.Value.Context.Report.About(u).Contains(finding));

    /// <summary>The rows of a tag as far as the list goes: a card beside it tells of the house.</summary>
    private static IEnumerable<Cell[]> RowsOf(Frame frame, string tag) => Enumerable.Range(1, frame.Height - 3).Select(y => Row(frame, y)[..MostList])
        .Where(row => Text(row[..40]).Split(' ', StringSplitOptions.RemoveEmptyEntries).Contains(tag));

    private static bool HasStop(Cell[] row) =>
        Loud(row) is var loud && (loud.Contains('!', StringComparison.Ordinal) || loud.Contains("STOP", StringComparison.Ordinal));

    private static Cell[] Row(Frame frame, int y) => frame.Row(y).ToArray();

    private static string Text(IEnumerable<Cell> cells) => string.Concat(cells.Select(c => c.Text));

    private static string Loud(IEnumerable<Cell> cells) => Text(cells.Where(c => c.Tone == Tone.Stop));
}
