using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>Nothing that holds a figure is cut in the chosen row without the whole of it standing on the screen.</summary>
public class WholeFiguresTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static readonly string[][] Ways =
        [[], ["r"], ["P"], ["enter"], ["2"], ["2", "]"], ["3"], ["4"], ["5"], ["6"], ["6", "m"], ["7"], ["8"], ["9"], ["9", "enter"], ["9", "s"], ["0"], ["y"]];

    public static TheoryData<string, string> Screens()
    {
        var data = new TheoryData<string, string>();
        foreach (var sample in (string[])["ridge-house", "canal-house"])
        {
            foreach (var way in Ways)
                data.Add(sample, string.Join(' ', way));
        }
        return data;
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void OfTheChosenRowEveryFigureIsReadWhole(string sample, string way)
    {
        var shell = new ShellState(new TestDesk(Clock), SampleHouse.Open(sample, Clock), Look.Dark);
        foreach (var key in way.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            shell.Press(key);
        string? before = null;
        for (var row = 0; row < 60; row++)
        {
            var frame = new ListeningFrame(80, 24);
            shell.DrawOn(frame);
            var text = frame.ToText();
            foreach (var figure in frame.CutFigures)
                Assert.True(frame.WholeTexts.Any(w => w.Contains(figure, StringComparison.Ordinal)), $"\"{figure}\" is nowhere whole:\n{text}");
            if (text == before)
                return;
            before = text;
            shell.Press("down");
        }
    }

    [Fact]
    public void AFigureThatIsCutIsSeenByThisTest()
    {
        var frame = new ListeningFrame(20, 3);
        frame.All.PutFit(0, 0, 6, "12 3/4 in", Tone.Selected);
        frame.All.PutWrapped(0, 1, 1, "so many words that 12 of them do not fit", Tone.Selected);
        Assert.Equal(["3/4", "12"], frame.CutFigures);
        frame.All.PutFit(0, 2, 12, "12 3/4 in", Tone.Text);
        Assert.Contains("12 3/4 in", frame.WholeTexts);
    }

    /// <summary>Hears what was cut in the chosen row, and what stands whole anywhere.</summary>
    private sealed class ListeningFrame(int width, int height) : Frame(width, height)
    {
        /// <summary>The words with a figure that were cut off, or in the middle.</summary>
        public List<string> CutFigures { get; } = [];

        public List<string> WholeTexts { get; } = [];

        public override void Cut(string whole, string left, Tone tone)
        {
            var seen = left.TrimEnd(TextWidth.Cut, ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var words = whole.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var same = words.Zip(seen).TakeWhile(w => w.First == w.Second).Count();
            if (tone == Tone.Selected)
                CutFigures.AddRange(words.Skip(same).Where(w => w.Any(char.IsAsciiDigit)));
        }

        public override void Shown(string whole) => WholeTexts.Add(whole);
    }
}
