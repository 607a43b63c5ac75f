using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests.Templates;

public class PaperTemplateTests
{
    private static PaperData Finished { get; } = FinishedHouse.Data();

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void TheDefaultTemplateOfAPaperGivesThatPaper(string id)
    {
        var paper = PaperList.Find(id)!;
        var template = PaperTemplate.Read(paper, PaperTemplate.Default(paper)).Value;
        foreach (var data in new[] { Finished, Finished with { OwnerOnly = true } })
        {
            var (byTemplate, direct) = (paper.Write(data, template), paper.Write(data));
            Assert.Equal(direct.Markdown, byTemplate.Markdown);
            Assert.Equal(direct.ToHtml(), byTemplate.ToHtml());
        }
    }

    [Fact]
    public void ATemplateChangesOrderHeadingsAndWords()
    {
        var template = PaperTemplate.Read(Binder.Paper, """
            # {{house}}, for the file

            {{contents}}

            ## What may bite

            Read this twice.

            {{cautions}}

            ## Outputs

            {{panels}}

            ```words
            language = en-GB
            Output = Terminal
            Panel {0} = The panel called {0}
            free = nothing
            ```
            """).Value;
        var page = Binder.Paper.Write(Finished, template);
        Assert.StartsWith("# Test house, for the file\n\n- [What may bite](#what-may-bite)\n- [Outputs](#outputs)\n\n## What may bite\n\nRead this twice.\n",
            page.Markdown, StringComparison.Ordinal);
        Assert.Contains("### The panel called P1", page.Markdown, StringComparison.Ordinal);
        Assert.Contains("| Terminal |", page.Markdown, StringComparison.Ordinal);
        Assert.Contains("| 4–10     | nothing |", page.Markdown, StringComparison.Ordinal);
        Assert.DoesNotContain("words", page.Markdown, StringComparison.Ordinal);
        Assert.Contains("<html lang=\"en-GB\">", page.ToHtml(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("# Title\n\n{{covr}}\n", "Line 3: there is no place {{covr}} in this paper. There are: house, date, everything, contents, cover, stops,")]
    [InlineData("# Title\n\n{{#if oner}}x{{/if}}\n", "Line 3: there is no place {{oner}}")]
    [InlineData("# Title\n\n{{#if everything}}x\n", "Line 3: what begins with {{#if everything}} is not ended by {{/if}}.")]
    [InlineData("{{#if everything}}x\n{{else if house}}\ny", "Line 1: what begins with {{#if everything}} is not ended by {{/if}}.")]
    [InlineData("x\n{{#unless everything}}x{{/if}}\n", "Line 2: {{/if}} does not end {{#unless everything}} of line 2.")]
    [InlineData("x\n\n{{/if}}\n", "Line 3: {{/if}} belongs to nothing that was begun.")]
    [InlineData("{{else}}\n", "Line 1: {{else}} belongs to nothing that was begun.")]
    [InlineData("{{#if everything}}a{{else}}b{{else}}c{{/if}}", "Line 1: {{else}} does not end {{#if everything}} of line 1.")]
    [InlineData("{{cover\n", "Line 1: {{ is not closed by }}.")]
    [InlineData("{{house}}\n{{{cover}}\n", "Line 2: {{ is not closed by }}.")]
    [InlineData("{{house}}\n\n{{> cover}}\n", "Line 3: {{> cover}} can't be read.")]
    [InlineData("{{#each house}}x{{/each}}", "Line 1: {{#each house}} can't be read. A template has places such as {{house}},")]
    [InlineData("{{house date}}", "Line 1: {{house date}} can't be read.")]
    [InlineData("{{this}}", "Line 1: there is no place {{this}}")]
    [InlineData("# T\n```words\nOutput\n```\n", "Line 3: \"Output\" is no pair of words. Write: English = instead.")]
    [InlineData("# T\n```words\nPanel {0} = Tafel\n```\n", "Line 3: both sides must have the same places: {0}.")]
    [InlineData("# T\n```words\nUnit = A\nUnit = B\n```\n", "Line 4: \"Unit\" is there twice.")]
    [InlineData("# T\n```words\nUnit = A\n```\n\n{{nowhere}}\n", "Line 6: there is no place {{nowhere}}")]
    public void AWrongTemplateIsRefusedAndTheReasonNamesThePlace(string template, string reason)
    {
        var read = PaperTemplate.Read(Binder.Paper, template);
        Assert.False(read.Ok);
        Assert.StartsWith(reason, read.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void TypedTextIsNoTemplateAndIsNotTranslated()
    {
        var job = FinishedHouse.Build();
        job.SayOf("", HouseFacts.Name, "{{cover}} {{contents}}").SayOf("Kitchen", RoomFacts.Name, "Output").SayOf("P1", PanelFacts.Location, "free");
        var template = PaperTemplate.Read(Binder.Paper, "# {{house}}\n\n{{stops}}\n\n{{panels}}\n\n```words\nOutput = Terminal\nfree = nothing\n```\n").Value;
        var written = Binder.Paper.Write(FinishedHouse.Data(job.Scribe.Log), template).Markdown;
        Assert.StartsWith("# {{cover}} {{contents}}\n", written, StringComparison.Ordinal);
        Assert.Contains("| W01     | Output  |", written, StringComparison.Ordinal);
        Assert.Contains("| P1    | free  |", written, StringComparison.Ordinal);
    }

    [Fact]
    public void ThePaperForTheOwnerAloneLeavesOutReadingsAndMarks()
    {
        var (all, owner) = (Binder.Paper.Write(Finished).Markdown, Binder.Paper.Write(Finished with { OwnerOnly = true }).Markdown);
        foreach (var trade in new[] { "## Cable tests", "## Who did what, and when", "### How far each phase is", "## Findings", "#cable-tests" })
        {
            Assert.Contains(trade, all, StringComparison.Ordinal);
            Assert.DoesNotContain(trade, owner, StringComparison.Ordinal);
        }
    }
}
