using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.Papers;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Papers;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Tests.Papers;

/// <summary>Papers of a sample job as the program shows them, from Markdig's reading to character cells.</summary>
public class PreviewTests
{
    private static readonly PaperHouse House = Ridge();

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void TheBinderLooksAsApproved(int width, int height)
    {
        var pages = Pages("binder");
        var lines = pages.Lines(width - 3, Glyphs.Drawn).Select(l => string.Concat(l.Select(p => p.Text)).TrimEnd()).ToList();
        var panel = lines.FindIndex(l => l == "Panel map");
        Approved.Match(string.Join('\n', lines.Take(height - 3).Append("...").Concat(lines.Skip(panel).Take(height - 3))), $"binder-{width}");
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryPaperFitsEveryScreenAndNamesEveryUnitThatItsMarkdownNames(string id)
    {
        var markdown = PaperList.Find(id)!.Write(new PaperData(House.Log, House.Date, House.Report())).Markdown;
        foreach (var width in new[] { 77, 137 })
        {
            var lines = Pages(id).Lines(width, Glyphs.Drawn);
            Assert.All(lines, l => Assert.InRange(l.Sum(p => TextWidth.Of(p.Text)), 0, width));
            var shown = string.Concat(lines.SelectMany(l => l).SelectMany(p => p.Text).Where(char.IsLetterOrDigit));
            Assert.All(House.Log.House.Units.Where(u => markdown.Contains(u.Tag, StringComparison.Ordinal)),
                u => Assert.Contains(u.Tag, shown, StringComparison.Ordinal));
        }
    }

    private static PreviewPages Pages(string paper) => new(new PaperDesk().Preview(paper, House, CancellationToken.None).Value);

    private static PaperHouse Ridge()
    {
        var log = SampleHouse.Open("ridge-house", new FakeTimeProvider()).Log;
        var report = CheckReport.Of(log.House);
        return new PaperHouse(log, () => report, "ridge-house.trimout", new DateOnly(2026, 9, 30));
    }
}
