using System.Collections.Immutable;
using System.Globalization;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Writing;

/// <summary>A paper's Markdown as parts, by Markdig's syntax tree: what the page holds, without the page.</summary>
internal static class PaperBlocks
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>The parts in their order.</summary>
    public static IReadOnlyList<PaperBlock> Of(string markdown)
    {
        var blocks = new List<PaperBlock>();
        Add(blocks, Markdown.Parse(markdown, Pipeline), 0);
        return blocks;
    }

    private static void Add(List<PaperBlock> blocks, ContainerBlock parts, int depth)
    {
        foreach (var part in parts)
        {
            switch (part)
            {
                case HeadingBlock heading:
                    blocks.Add(new(PaperBlockKind.Heading, heading.Level, "", Texts(heading.Inline), []));
                    break;
                case Table table:
                    var rows = table.Cast<TableRow>().Select(r => r.Cast<TableCell>().Select(Texts).ToImmutableArray());
                    blocks.Add(new(PaperBlockKind.Table, 0, "", [], [.. rows]));
                    break;
                case ListBlock list:
                    foreach (var item in list.Cast<ListItemBlock>())
                        Item(blocks, item, list.IsOrdered ? string.Create(CultureInfo.InvariantCulture, $"{item.Order}.") : "-", depth);
                    break;
                case LeafBlock { Inline: { } text }:
                    blocks.Add(new(PaperBlockKind.Paragraph, depth, "", Texts(text), []));
                    break;
                case LeafBlock plain:
                    blocks.Add(new(PaperBlockKind.Paragraph, depth, "", [new(plain.Lines.ToString())], []));
                    break;
                case ContainerBlock others:
                    Add(blocks, others, depth);
                    break;
            }
        }
    }

    private static void Item(List<PaperBlock> blocks, ListItemBlock item, string mark, int depth)
    {
        var inside = new List<PaperBlock>();
        Add(inside, item, depth + 1);
        if (inside is [{ Kind: PaperBlockKind.Paragraph } first, ..])
            inside[0] = first with { Kind = PaperBlockKind.Item, Level = depth, Mark = mark };
        blocks.AddRange(inside);
    }

    private static ImmutableArray<PaperText> Texts(TableCell cell) => [.. cell.OfType<LeafBlock>().SelectMany(b => Texts(b.Inline))];

    private static ImmutableArray<PaperText> Texts(ContainerInline? inlines)
    {
        var texts = ImmutableArray.CreateBuilder<PaperText>();
        Gather(texts, inlines, strong: false);
        return texts.ToImmutable();
    }

    private static void Gather(ImmutableArray<PaperText>.Builder texts, ContainerInline? inlines, bool strong)
    {
        foreach (var inline in inlines ?? [])
        {
            switch (inline)
            {
                case LiteralInline literal:
                    texts.Add(new(literal.Content.ToString(), strong));
                    break;
                case CodeInline code:
                    texts.Add(new(code.Content, strong));
                    break;
                case LineBreakInline:
                    texts.Add(new(" ", strong));
                    break;
                case HtmlEntityInline entity:
                    texts.Add(new(entity.Transcoded.ToString(), strong));
                    break;
                case LinkInline { IsImage: true } picture:
                    texts.Add(new(string.Concat(Texts(picture).Select(t => t.Text)), strong, Picture: true));
                    break;
                case EmphasisInline emphasis:
                    Gather(texts, emphasis, strong: true);
                    break;
                case ContainerInline others:
                    Gather(texts, others, strong);
                    break;
            }
        }
    }
}
