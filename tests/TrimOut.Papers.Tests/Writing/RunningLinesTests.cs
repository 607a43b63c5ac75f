using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TrimOut.Papers.Templates;
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

    /// <summary>A sheet is taken along alone: what a mark means stands at the foot of each, and on no paper without one.</summary>
    [Theory]
    [InlineData("en", "maker")]
    [InlineData("de", "Datenblatt")]
    [InlineData("es", "hoja del fabricante")]
    public void WhatAMarkMeansStandsAtTheFootOfEachSheet(string language, string word)
    {
        foreach (var paper in PaperList.All)
        {
            var written = paper.Write(SampleJobs.Data("ridge-house"), language == "en" ? null : PaperTemplate.In(paper, language).Value);
            Assert.Equal(written.Markdown.Contains("\u00A0?", StringComparison.Ordinal), RunningLines.Of(written, SheetSize.A4) is var rule
                && rule.Contains("@bottom-left", StringComparison.Ordinal) && rule.Contains(word, StringComparison.Ordinal));
        }
    }

    [GeneratedRegex(@"^@page \{ size: A4; @top-left \{ content: ""(?<text>(?:[A-Za-z0-9 ]|\\[0-9a-f]{1,6} )*)""; \} @top-right")]
    private static partial Regex Title();

    [GeneratedRegex(@"\\(?<code>[0-9a-f]{1,6}) ")]
    private static partial Regex Escape();
}
