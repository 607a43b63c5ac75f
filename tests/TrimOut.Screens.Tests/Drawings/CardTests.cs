using System.Text.RegularExpressions;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Drawings;

/// <summary>The cards of wide screens, held to the house that they are drawn from.</summary>
public class CardTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static ShellState Ridge(params string[] keys)
    {
        var shell = new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock), Look.Dark);
        foreach (var key in keys)
            shell.Press(key);
        return shell;
    }

    private static string Card(Action<Area> draw, int width = 56, int height = 36)
    {
        var frame = new Frame(width, height);
        draw(frame.All);
        return frame.ToText();
    }

    [Fact]
    public void ARemoteShowsItsUnitsByRoomWithTheirPositions()
    {
        var context = Ridge().Context;
        foreach (var remote in context.House.Remotes)
        {
            var text = Card(a => RemoteCard.Draw(a, remote, context));
            Assert.All(remote.Units, u => Assert.Contains($" {u.Tag} ", text, StringComparison.Ordinal));
            Assert.All(remote.Units.Select(u => u.Window.Room!.FullName), r => Assert.Contains(r, text, StringComparison.Ordinal));
            foreach (var preset in remote.Presets)
            {
                foreach (var (unit, open) in preset.Positions.Where(p => remote.Units.Any(u => u.Id == p.Unit.Id)))
                    Assert.Matches($"{unit.Tag} .*{open} %", text);
            }
        }
    }

    [Fact]
    public void ARemoteThatMovesTooManyLooksLikeIt()
    {
        var context = Ridge().Context;
        var full = context.House.Remotes.First(r => r.Units.Count() > r.Type?.Units);
        var frame = new Frame(56, 30);
        RemoteCard.Draw(frame.All, full, context);
        Assert.Contains(Enumerable.Range(0, 30).SelectMany(y => frame.Row(y).ToArray()), c => c.Tone == Tone.Stop);
    }

    [Fact]
    public void APartShowsWhatIsBlankAndEveryCheckThatWaitsForIt()
    {
        var context = Ridge().Context;
        foreach (var part in Kit.KitScreen.Parts(context).Where(p => !SheetValues.IsNoCover(context.House, p)))
        {
            var text = Card(a => PartCard.Draw(a, part, context), 64, 400).Replace("\n", " ", StringComparison.Ordinal);
            Assert.All(SheetValues.BlankIn(part), f => Assert.Contains(f.Label, text, StringComparison.Ordinal));
            Assert.All(context.Report.MissingOf(part).Select(m => m.Check.Title).Distinct(), t => Assert.Contains(t, text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void AChangeShowsWhatItReplacedAndTheWindowAsItStood()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughHeight, "60").Say("W01", WindowFacts.RoughWidth, "36")
            .Say("W01", WindowFacts.RoughWidth, "48");
        var shell = new ShellState(new TestDesk(Clock), job.Scribe);
        var count = job.Scribe.Log.Changes.Count;
        var last = Card(a => ChangeCard.Draw(a, count, shell.Context));
        Assert.Contains("W01: Rough width: 36\" ► 48\"", last, StringComparison.Ordinal);
        var before = Card(a => ChangeCard.Draw(a, count - 1, shell.Context));
        Assert.Contains("W01: Rough width: blank ► 36\"", before, StringComparison.Ordinal);
        Assert.Contains("W01 as it stood", before, StringComparison.Ordinal);
        Assert.DoesNotContain("48\"", before, StringComparison.Ordinal);
        Assert.Contains("1 window and 1 unit in 1 room", before, StringComparison.Ordinal);
    }

    [Fact]
    public void TheHouseShowsEveryPhaseAsFarAsItIs()
    {
        var shell = Ridge();
        var text = Card(a => HouseCard.Draw(a, shell.Context), 56, 20);
        Assert.All(PhaseNames.All, p =>
        {
            var sum = shell.Context.SumOf(p);
            Assert.Matches($"{p.Full()} .*{sum.Done}/{sum.Total}", text);
        });
    }

    public static TheoryData<string> EveryWay() => [.. ScreenSnapshotTests.EveryWay.Select(way => string.Join(' ', way))];

    public static TheoryData<string> EveryScreen() => [.. KeyTableTests.EveryScreen().Select(s => s.GetType().Name).Distinct()];

    /// <summary>On a wide screen something stands in the right half of every screen, however it is reached.</summary>
    [Theory]
    [MemberData(nameof(EveryWay))]
    public void TheFreeHalfOfAWideScreenShowsSomething(string way) =>
        ShowsSomething(Ridge(way.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Draw(140, 40));

    /// <summary>Also on those that no snapshot has, in a house of one window.</summary>
    [Theory]
    [MemberData(nameof(EveryScreen))]
    public void NoScreenLeavesTheFreeHalfEmpty(string screen)
    {
        var frame = new Frame(140, 40);
        var body = frame.All.Rows(1, 37);
        KeyTableTests.EveryScreen().First(s => s.GetType().Name == screen).Draw(body, KeyTableTests.Context, null);
        FreeHalf.Draw(body, KeyTableTests.Context);
        ShowsSomething(frame);
    }

    private static void ShowsSomething(Frame frame) => Assert.True(
        frame.ToText().Split('\n')[1..38].Count(l => l.Length > 80 && l[80..].Trim(' ', '│').Length > 0) >= 4, frame.ToText());

    [Fact]
    public void AHouseWithoutAWindowShowsABeginnerWhatToPressInTheFreeHalf()
    {
        var shell = new ShellState(new TestDesk(Clock), new TestJob().Scribe, Look.Dark);
        foreach (var key in (string[])["1", "3", "4", "5", "6", "7", "P"])
        {
            shell.Press(key);
            Assert.Contains("leaves. There is nothing to save", shell.Draw(140, 40).ToText(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void BesideAPaperStandItsHeadingsAndTheOneThatIsRead()
    {
        PreviewBlock Heading(string text) => new(PreviewKind.Heading, 1, "", [new(text)], []);
        PreviewBlock Text(string text) => new(PreviewKind.Paragraph, 0, "", [new(text)], []);
        var blocks = Enumerable.Range(1, 30).SelectMany(n => (PreviewBlock[])[Heading($"Part {n:00}"), Text($"Words {n:00}.")]).ToList();
        var context = Ridge().Context;
        var screen = TrimOut.Screens.Papers.PreviewScreen.Of(new PaperChoice("binder", "Owner's binder", "the owner"), blocks);
        for (var part = 1; part <= 3; part++)
        {
            var frame = new Frame(140, 36);
            screen.Draw(frame.All, context, null);
            var text = frame.ToText().Split('\n');
            Assert.Contains("for the owner: not written", text[0], StringComparison.Ordinal);
            Assert.Contains(text, l => l.Length > 80 && l[80..].Contains("Part 20", StringComparison.Ordinal));
            Assert.Equal($"Part {part:00}", string.Concat(Enumerable.Range(0, 36).SelectMany(y => frame.Row(y).ToArray()).Where(c => c.Tone == Tone.Selected)
                .Select(c => c.Text)).Trim());
            screen = screen with { Top = screen.Pages.HeadingAfter(screen.Top) };
        }
    }

    [Fact]
    public void BesideTheCutPlanEachRunStandsWithItsMarksAndItsBox()
    {
        var shell = new ShellState(new TestDesk(Clock), SampleHouse.OpenWithACut(Clock), Look.Dark);
        foreach (var key in (string[])["4", "p"])
            shell.Press(key);
        var screen = (TrimOut.Screens.Cables.CutPlanScreen)shell.Screen;
        for (var cable = 0; screen.Boxes == 0 && cable < screen.Plans.Length; cable++)
        {
            shell.Press("right");
            screen = (TrimOut.Screens.Cables.CutPlanScreen)shell.Screen;
        }
        var text = shell.Draw(140, 40).ToText();
        foreach (var box in screen.Plans[screen.Selected].Plan!.Value.Value.Boxes)
        {
            foreach (var cut in box.Cuts)
            {
                var to = cut.To.ShowRounded(shell.Context.House.DisplayUnits, LengthScale.Run);
                Assert.Contains(text.Split('\n'), l => l.Length > 80 && Regex.IsMatch(l[78..], $"{cut.Piece.Id} .* {to} .*{Regex.Escape(box.Box.Id)}"));
            }
        }
    }

    [Fact]
    public void PapersSayWhenTheyWereWrittenAndSinceWhenTheyMayBeOutOfDate()
    {
        var job = new TestJob().Window("W01");
        var extent = job.Scribe.Log.Extent;
        var desk = new TestDesk(Clock)
        {
            Papers =
            [
                new("binder", "Owner's binder", "the owner") { Written = new PaperWriting(new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero), extent) },
                new("labels", "Cable labels", "the crew"),
            ],
        };
        var shell = new ShellState(desk, job.Scribe);
        shell.Press("7");
        Assert.Contains("written 2026-03-02 09:00. Nothing was changed since.", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        job.Say("W01", WindowFacts.RoughWidth, "36");
        shell.Tick();
        var text = shell.Draw(140, 40).ToText();
        var words = string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Matches("Owner's binder +the owner +2026-03-02 09:00, may be out of date since 2026-03-02", text);
        Assert.Matches("Cable labels +the crew +not written here yet", text);
        Assert.Contains("1 change came after it, the first by Test crew: W01: Rough width: 36\"", words, StringComparison.Ordinal);
    }
}
