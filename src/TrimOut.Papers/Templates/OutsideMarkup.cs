using System.Text.RegularExpressions;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace TrimOut.Papers.Templates;

/// <summary>
/// Finds what a template must not bring into a paper: HTML, with its scripts, and whatever leads outside. The page would leave it out; the Markdown
/// would hand it on to whoever renders it.
/// </summary>
internal static partial class OutsideMarkup
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Build();

    /// <summary>The first such thing, with its line; null when there is none.</summary>
    public static (string What, int Line)? First(string template)
    {
        // A place becomes a letter, so that what stands around it is read as it will be; blocks and comments leave nothing.
        var text = Place().Replace(template, place => new string('\n', place.ValueSpan.Count('\n')) + (place.Groups["acts"].Success ? "" : "x"));
        foreach (var part in Markdown.Parse(text, Pipeline).Descendants())
        {
            var what = part switch
            {
                HtmlBlock html => $"HTML ({Beginning(text, html)})",
                HtmlInline html => $"HTML ({html.Tag})",
                LinkReferenceDefinition { Url: { } url } when !url.StartsWith('#') => $"a reference that leads outside ({url})",
                LinkInline { IsImage: true } link => $"a picture from outside ({link.Url})",
                LinkInline { Url: { } url } when !url.StartsWith('#') => $"a reference that leads outside ({url})",
                AutolinkInline link => $"a reference that leads outside ({link.Url})",
                _ => null,
            };
            if (what is not null)
                return (what, part.Line + 1);
        }
        return null;
    }

    private static string Beginning(string text, HtmlBlock html) => text[html.Span.Start..].Split('\n')[0].Trim();

    [GeneratedRegex(@"\{\{\{?(?<acts>[~\s]*[#/^!>])?.*?\}\}\}?", RegexOptions.Singleline)]
    private static partial Regex Place();
}
