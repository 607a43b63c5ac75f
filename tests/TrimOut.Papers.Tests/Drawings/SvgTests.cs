using System.Xml.Linq;
using TrimOut.Papers.Drawings;

namespace TrimOut.Papers.Tests.Drawings;

/// <summary>Held to the XML reader of the class library.</summary>
public class SvgTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Hostile => [.. HostileText.All, "a\u0000b\u0001\uFFFEc", "\uD800 lone"];

    [Theory]
    [MemberData(nameof(Hostile))]
    public void LetteringAndDescriptionStandAsTyped(string typed)
    {
        var root = XDocument.Parse(new Svg(100, 50).Text(1, 2, typed).Render(typed)).Root!;
        var expected = string.Concat(typed.EnumerateRunes().Select(r => r.Value is 0xFFFE ? "\uFFFD" : System.Text.Rune.IsControl(r) ? " " : r.ToString()));
        Assert.Equal([expected, expected], root.Elements().Select(e => e.Value));
        Assert.Equal([Ns + "title", Ns + "text"], root.Elements().Select(e => e.Name));
    }

    [Fact]
    public void LetteringThatIsLongerThanItsRoomEndsWithAnEllipsis()
    {
        var text = XDocument.Parse(new Svg(100, 50).Text(1, 2, "a very long name for a room", room: 60).Render("x")).Root!.Elements().Last().Value;
        Assert.EndsWith("…", text, StringComparison.Ordinal);
        Assert.True(Svg.WidthOf(text) <= 60);
    }

    [Fact]
    public void SizesAreWrittenWithAPointAndTwoDecimals() =>
        Assert.Contains("""<line x1="0.33" y1="1000" x2="2.5" y2="-1"/>""",
            new Svg(1, 1).Line(1.0 / 3, 1000, 2.5, -1, Pen.None).Render("x"), StringComparison.Ordinal);
}
