using System.Diagnostics;
using System.Xml.Linq;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using TrimOut.Core;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Writing;

/// <summary>
/// Our Markdown means the same to a second reader: cmark, the reference implementation of CommonMark. Where it is not installed these are skipped.
/// </summary>
public class CommonMarkTests
{
    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [TheoryWithCmark]
    [MemberData(nameof(Papers))]
    public void TheReferenceReaderSeesTheSameStructureAsOurs(string id)
    {
        foreach (var data in SampleJobs.Names.Select(SampleJobs.Data).Append(FinishedHouse.Data()))
        {
            var markdown = PaperList.Find(id)!.Write(data).Markdown;
            Assert.Equal(ByCmark(markdown), ByMarkdig(markdown));
        }
    }

    [TheoryWithCmark]
    [InlineData(false)]
    [InlineData(true)]
    public void TheReferenceReaderSeesTypedTextAsTyped(bool inAList)
    {
        foreach (var typed in HostileText.All.Select(ShownText.Kept))
        {
            var to = new MarkdownWriter(Words.English, "paper", new SortedDictionary<string, string>());
            var markdown = (inAList ? to.List(typed) : to.Say((Papers.Writing.Inline)typed)).ToString();
            string[] expected = inAList ? ["document", "list bullet", "item", "paragraph", $"text {typed}"] : ["document", "paragraph", $"text {typed}"];
            Assert.Equal(expected, ByCmark(markdown));
        }
    }

    private static List<string> ByCmark(string markdown)
    {
        using var cmark = Process.Start(new ProcessStartInfo("cmark", "--to xml")
        { RedirectStandardInput = true, RedirectStandardOutput = true, StandardInputEncoding = new System.Text.UTF8Encoding(false) })!;
        var written = cmark.StandardOutput.ReadToEndAsync();
        cmark.StandardInput.Write(markdown);
        cmark.StandardInput.Close();
        var seen = new List<string>();
        // The reader of the class library refuses to look up the document type, which is not needed.
        using var xml = System.Xml.XmlReader.Create(new StringReader(written.Result),
            new System.Xml.XmlReaderSettings { DtdProcessing = System.Xml.DtdProcessing.Ignore });
        Walk(XDocument.Load(xml, LoadOptions.PreserveWhitespace).Root!, seen);
        return seen;
    }

    private static void Walk(XElement node, List<string> seen)
    {
        if (node.Name.LocalName == "text")
        {
            Text(seen, node.Value);
            return;
        }
        var detail = (node.Attribute("level") ?? node.Attribute("type") ?? node.Attribute("destination"))?.Value;
        seen.Add(detail is null ? node.Name.LocalName : $"{node.Name.LocalName} {detail}");
        foreach (var child in node.Elements())
            Walk(child, seen);
    }

    private static List<string> ByMarkdig(string markdown)
    {
        var seen = new List<string>();
        Walk(Markdown.Parse(markdown), seen);
        return seen;
    }

    private static void Walk(MarkdownObject node, List<string> seen)
    {
        if (node is LiteralInline text)
        {
            Text(seen, text.Content.ToString());
            return;
        }
        if (node is not ContainerInline { ParentBlock: not null })
        {
            seen.Add(node switch
            {
                MarkdownDocument => "document",
                HeadingBlock heading => $"heading {heading.Level}",
                ParagraphBlock => "paragraph",
                ListBlock list => list.IsOrdered ? "list ordered" : "list bullet",
                ListItemBlock => "item",
                LineBreakInline => "softbreak",
                EmphasisInline { DelimiterCount: 2 } => "strong",
                LinkInline link => $"{(link.IsImage ? "image" : "link")} {link.Url}",
                _ => node.GetType().Name,
            });
        }
        var children = node switch
        {
            LeafBlock { Inline: { } inline } => inline,
            ContainerBlock blocks => blocks.Cast<MarkdownObject>(),
            ContainerInline inlines => inlines,
            _ => [],
        };
        foreach (var child in children)
            Walk(child, seen);
    }

    /// <summary>Readers cut text into pieces where they please.</summary>
    private static void Text(List<string> seen, string text)
    {
        if (seen[^1].StartsWith("text ", StringComparison.Ordinal))
            seen[^1] += text;
        else
            seen.Add("text " + text);
    }
}

/// <summary>A theory that is skipped where cmark is not installed.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class TheoryWithCmarkAttribute : TheoryAttribute
{
    private static readonly bool Installed =
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(d => File.Exists(Path.Combine(d, "cmark")));

    public TheoryWithCmarkAttribute()
    {
        if (!Installed)
            Skip = "cmark is not installed.";
    }
}
