using System.Xml.Linq;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Pictures;

/// <summary>
/// The pictures in docs/pictures are made from the frames that the snapshots approve: this test fails when one is stale, and writes it anew when
/// TRIMOUT_WRITE_DOCS is set.
/// </summary>
public class PicturesTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "docs", "pictures");

    public static TheoryData<string, string> Shown() => new()
    {
        { "job-sheet", "The job sheet: the phases with their stops, the units with a mark for each phase, and the chosen unit with its drawing" },
        { "new-window", "The line for a new window, with what it understood" },
        { "rooms", "Rooms and floors in the order of the walk" },
        { "unit", "All details of a unit, beside its drawing" },
        { "walk-rough-in", "The walk through rough-in: the steps of one unit" },
        { "panels", "The mechanical room: panels with their outputs" },
        { "cables", "The cables with their lengths, drop and tests" },
        { "controls", "Hubs and remotes, and what each of them moves" },
        { "punch-list", "The punch list: what is wrong, and what fixes it" },
        { "papers", "The papers, and what is out of date" },
        { "history", "The history: who changed what, and when" },
        { "kit", "The kit: what the makers' sheets say, and what is still blank" },
        { "what-if", "What if: volts at a unit by gauge and length" },
        { "figures", "Where a figure comes from: the formula with its values" },
    };

    [Theory]
    [MemberData(nameof(Shown))]
    public void APictureShowsTheScreenAsItIs(string name, string title)
    {
        var path = Path.Combine(Folder, name + ".svg");
        var picture = FramePicture.Of(ScreenSnapshotTests.Draw(name, 80, 24), title);
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllText(path, picture);
        }
        Assert.Equal(picture, File.ReadAllText(path));
    }

    [Theory]
    [MemberData(nameof(Shown))]
    public void ItsTextIsThatOfTheFrame(string name, string title)
    {
        var frame = ScreenSnapshotTests.Draw(name, 80, 24);
        var svg = XDocument.Parse(FramePicture.Of(frame, title));
        var lines = svg.Root!.Elements().Where(e => e.Name.LocalName == "text")
            .GroupBy(e => (int)e.Attribute("y")!)
            .ToDictionary(g => g.Key, g => string.Concat(g.OrderBy(e => (int)e.Attribute("x")!).Select(e => e.Value)));
        var shown = frame.ToText().Split('\n').Select(l => l.Replace(" ", "", StringComparison.Ordinal)).Where(l => l.Length > 0);
        Assert.Equal(shown, lines.OrderBy(l => l.Key).Select(l => l.Value.Replace(" ", "", StringComparison.Ordinal)));
        Assert.Equal(title, svg.Root.Elements().First().Value);
    }

    [Fact]
    public void NoPictureIsLeftOverAndEachIsShownInSomePage()
    {
        var wanted = Shown().Select(row => (string)row[0] + ".svg").Order(StringComparer.Ordinal);
        Assert.Equal(wanted, Directory.GetFiles(Folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
        var pages = string.Concat(Directory.GetFiles(Path.Combine(Repository.Root, "docs"), "*.md")
            .Append(Path.Combine(Repository.Root, "README.md")).Select(File.ReadAllText));
        Assert.All(Shown(), row => Assert.Contains($"pictures/{row[0]}.svg", pages, StringComparison.Ordinal));
    }
}
