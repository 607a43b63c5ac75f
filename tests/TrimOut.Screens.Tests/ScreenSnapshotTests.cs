using System.Text;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>Every screen over the ridge house: the text, and under it one letter for the tone of each cell.</summary>
public class ScreenSnapshotTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    /// <summary>The keys that lead to each screen from the job sheet.</summary>
    private static readonly Dictionary<string, string[]> Ways = new()
    {
        ["job-sheet"] = [],
        ["job-sheet-stops"] = ["!"],
        ["job-sheet-phases"] = ["#"],
        ["rooms"] = ["r", "up"],
        ["people"] = ["P"],
        ["hours"] = ["P", "T"],
        ["unit"] = ["enter"],
        ["unit-editing"] = ["enter", "down", "enter"],
        ["walk"] = ["2"],
        ["walk-rough-in"] = ["2", "["],
        ["panels"] = ["3"],
        ["cables"] = ["4"],
        ["cut-plan"] = ["4", "p"],
        ["missing-facts"] = ["6", "m"],
        ["panels-shared-output"] = ["3", "down", "down", "down"],
        ["controls"] = ["5"],
        ["punch-list"] = ["6"],
        ["papers"] = ["7"],
        ["paper"] = ["7", "enter"],
        ["history"] = ["8"],
        ["copies"] = ["8", "O"],
        ["in-conflict"] = ["8", "D"],
        ["as-it-stood"] = ["8", "down", "enter"],
        ["kit"] = ["9"],
        ["kit-part"] = ["9", "enter"],
        ["house"] = ["0"],
        ["what-if"] = ["="],
        ["what-if-shared"] = ["=", "down", "down", "down", "down", "right", "right"],
        ["figures"] = ["y"],
        ["figures-of-a-fact"] = ["4", "enter", "y"],
        ["figures-of-a-panel"] = ["3", "y"],
        [OfACut] = ["4", "p", "right", "y"],
        ["keys"] = ["?"],
        ["find"] = [":"],
        ["new-window"] = ["n"],
        ["undo"] = ["u"],
        ["leave"] = ["q"],
        ["close-house"] = ["esc"],
        ["picker"] = ["esc", "y"],
    };

    /// <summary>The screen for which a run has to wait that may be cut.</summary>
    private const string OfACut = "figures-of-a-cut-plan";

    /// <summary>The keys to every screen that is approved.</summary>
    internal static IEnumerable<string[]> EveryWay => Ways.Values;

    /// <summary>
    /// Where a large terminal shows something that a small one does not, not only more of the same: a column, a drawing, a figure in another form.
    /// </summary>
    private static readonly string[] OtherWhenLarge =
        ["job-sheet", "rooms", "unit", "walk-rough-in", "panels", "cables", "cut-plan", "controls", "punch-list", "papers", "paper",
        "history", "kit", "house", "what-if", "figures"];

    public static TheoryData<string, int, int> ApprovedScreens()
    {
        var data = new TheoryData<string, int, int>();
        foreach (var name in Ways.Keys)
            data.Add(name, 80, 24);
        foreach (var name in OtherWhenLarge)
            data.Add(name, 140, 40);
        return data;
    }

    public static TheoryData<string, int, int> Screens()
    {
        var data = new TheoryData<string, int, int>();
        foreach (var name in Ways.Keys)
        {
            data.Add(name, 80, 24);
            data.Add(name, 140, 40);
        }
        return data;
    }

    [Theory]
    [MemberData(nameof(ApprovedScreens))]
    public void LooksAsApproved(string name, int width, int height)
    {
        var frame = Draw(name, width, height);
        Approved.Match(frame.ToText() + "\n" + Tones(frame), $"{name}-{width}x{height}");
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void EveryLookShowsTheSameText(string name, int width, int height)
    {
        var frame = Draw(name, width, height);
        var dark = Stripped(frame, Look.Dark);
        Assert.Equal(dark, Stripped(frame, Look.Sunlight));
        Assert.Equal(dark, Stripped(frame, Look.Plain));
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void InAsciiNothingElseIsDrawn(string name, int width, int height)
    {
        var text = Draw(name, width, height, Glyphs.Ascii).ToText();
        Assert.DoesNotContain(text, c => "─│┌┐└┘▒█●◆■◧·►".Contains(c, StringComparison.Ordinal));
    }

    /// <summary>The house that a screen is drawn of.</summary>
    internal static ShellState Open(string name, Glyphs? glyphs = null) => new(new TestDesk(Clock),
        name == OfACut ? SampleHouse.OpenWithACut(Clock) : SampleHouse.Open("ridge-house", Clock), Look.Dark, glyphs);

    internal static Frame Draw(string name, int width, int height, Glyphs? glyphs = null)
    {
        var shell = Open(name, glyphs);
        foreach (var key in Ways[name])
            shell.Press(key);
        return shell.Draw(width, height);
    }

    private static string Tones(Frame frame)
    {
        var text = new StringBuilder();
        for (var y = 0; y < frame.Height; y++)
        {
            var line = new StringBuilder();
            foreach (var cell in frame.Row(y))
                line.Append(cell.Tone == Tone.Text ? ' ' : (char)('a' + (int)cell.Tone));
            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
        return text.ToString();
    }

    private static string Stripped(Frame frame, Look look)
    {
        frame.Slot = null;
        return System.Text.RegularExpressions.Regex.Replace(FrameWriter.Between(null, frame, look, ColourDepth.Many), "\u001b\\[[\\d;]*m", "");
    }
}
