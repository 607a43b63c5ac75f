using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Writing;

public partial class RunningLinesTests
{
    public static TheoryData<string> Hostile => [.. HostileText.All, "a\"; } body { display: none } </style><b>", "\\\"", "12ab\n34"];

    /// <summary>Read back as CSS Syntax 3, section 4.3.5 has it: nothing of a title ends its string, and it reads as typed.</summary>
    [Theory]
    [MemberData(nameof(Hostile))]
    public void ATitleStandsAtTheHeadAsTypedAndCanNotAct(string typed)
    {
        var rule = RunningLines.Of(new WrittenPaper("paper", typed, "en", "", new Dictionary<string, string>()), SheetSize.A4);
        var title = Title().Match(rule);
        Assert.True(title.Success, rule);
        var read = Escape().Replace(title.Groups["text"].Value, m => new Rune(int.Parse(m.Groups["code"].Value, NumberStyles.HexNumber,
            CultureInfo.InvariantCulture)).ToString());
        Assert.Equal(string.Concat(typed.EnumerateRunes().Where(r => !Rune.IsControl(r))), read);
    }

    [Fact]
    public void ALongTitleIsCutAndTheSizeIsThePrintersWhereNoneIsSaid()
    {
        var rule = RunningLines.Of(new WrittenPaper("paper", new string('a', 200), "en", "", new Dictionary<string, string>()), null);
        Assert.Contains(new string('a', 70) + "\\2026 \"", rule, StringComparison.Ordinal);
        Assert.DoesNotContain("size", rule, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^@page \{ size: A4; @top-left \{ content: ""(?<text>(?:[A-Za-z0-9 ]|\\[0-9a-f]{1,6} )*)""; \} @top-right")]
    private static partial Regex Title();

    [GeneratedRegex(@"\\(?<code>[0-9a-f]{1,6}) ")]
    private static partial Regex Escape();
}
