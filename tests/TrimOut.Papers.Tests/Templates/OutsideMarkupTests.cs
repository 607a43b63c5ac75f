using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests.Templates;

public class OutsideMarkupTests
{
    [Theory]
    [InlineData("<script>alert(1)</script>", "HTML")]
    [InlineData("Text <img src=x onerror=alert(1)> text", "HTML")]
    [InlineData("<!-- a comment -->", "HTML")]
    [InlineData("<{{house}}>", "HTML")]
    [InlineData("<scr{{#if everything}}{{/if}}ipt>", "HTML")]
    [InlineData("<scr{{!-- x --}}ipt src=y>", "HTML")]
    [InlineData("[here](javascript:alert(1))", "leads outside")]
    [InlineData("[here](https://example.org/)", "leads outside")]
    [InlineData("[here](other.md)", "leads outside")]
    [InlineData("[here]({{house}})", "leads outside")]
    [InlineData("[here][there]\n\n[there]: https://example.org", "leads outside")]
    [InlineData("<https://example.org>", "leads outside")]
    [InlineData("![logo](logo.png)", "a picture from outside")]
    [InlineData("- item\n  > <b>x</b>", "HTML")]
    [InlineData("| a | b |\n|---|---|\n| <i>x</i> | y |", "HTML")]
    public void ScriptsAndOutsideReferencesAreRefusedWithTheirLine(string markup, string what)
    {
        var read = PaperTemplate.Read(Binder.Paper, $"# {{{{house}}}}\n\nWords.\n\n{markup}\n");
        Assert.StartsWith("Line ", read.Reason, StringComparison.Ordinal);
        Assert.Contains(what, read.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("See [Cautions](#cautions-first), or example.org, or https://example.org as plain text.")]
    [InlineData("5 < 6 and 7 > 3, a & b, `<script>` as it is written")]
    [InlineData("**strong** {{cautions}}")]
    public void PlainWordsAndItsOwnSectionsAreNot(string markup) => Assert.True(PaperTemplate.Read(Binder.Paper, $"# {{{{house}}}}\n\n{markup}\n").Ok);

    [Fact]
    public void TrimOutsOwnTemplatesHaveNone()
    {
        Assert.All(PaperList.All, p => Assert.Null(OutsideMarkup.First(PaperTemplate.Default(p))));
        Assert.All(ShippedWords.PaperLanguages, l => Assert.All(ShippedWords.OfPapersIn(l).Papers,
            p => Assert.True(PaperTemplate.In(PaperList.Find(p)!, l).Ok)));
    }
}
