using System.Text;
using System.Text.RegularExpressions;
using TrimOut.Core;

namespace TrimOut.Papers.Templates;

/// <summary>Takes the text of a template apart.</summary>
/// <remarks>The signs are those of Handlebars (handlebarsjs.com/guide), of which a paper needs places, conditions, comments and the handling of spaces. What
/// they do is held to a library that knows the whole language by <c>TemplateBesideHandlebarsTests</c>.</remarks>
internal static partial class TemplateSigns
{
    private const string CanBe = "A template has places such as {{house}}, {{#if place}}, {{#unless place}}, {{else}}, {{/if}} and {{! comments }}.";

    /// <summary>The pieces in their order, or what is wrong with one and in which line.</summary>
    /// <param name="template">The template, whose lines end with a line feed.</param>
    public static Result<List<TemplateSign>> Split(string template)
    {
        var signs = new List<TemplateSign>();
        var words = new StringBuilder();
        var (at, line) = (0, 1);
        while (at < template.Length)
        {
            var rest = template.AsSpan(at);
            if (rest.StartsWith(@"\\"))
            {
                // Before braces one backslash is left of two, and the braces act.
                words.Append(rest.Length > 2 && rest[2] == '{' ? @"\" : @"\\");
                at += 2;
            }
            else if (rest.StartsWith(@"\{{"))
            {
                words.Append("{{");
                at += 3;
            }
            else if (!rest.StartsWith("{{"))
            {
                line += template[at] == '\n' ? 1 : 0;
                words.Append(template[at++]);
            }
            else
            {
                if (Braced().Match(template, at) is not { Success: true } braced || braced.Index != at)
                    return new Refusal($"Line {line}: {{{{ is not closed by }}}}.");
                if (Read(braced, line) is not { } sign)
                    return new Refusal($"Line {line}: {braced.Value} can't be read. {CanBe}");
                signs.Add(new TemplateSign(TemplateSign.Of.Words, words.ToString(), line));
                signs.Add(sign);
                words.Clear();
                line += braced.ValueSpan.Count('\n');
                at += braced.Length;
            }
        }
        if (words.Length > 0)
            signs.Add(new TemplateSign(TemplateSign.Of.Words, words.ToString(), line));
        return signs;
    }

    private static TemplateSign? Read(Match braced, int line)
    {
        var (before, after) = (braced.Groups["before"].Success, braced.Groups["after"].Success);
        if (braced.Groups["comment"].Success)
            return new TemplateSign(TemplateSign.Of.Comment, "", line, before); // Its last sign is part of what it says.
        var sign = braced.Groups["sign"].Value;
        var words = braced.Groups["words"].Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return (sign, words) switch
        {
            ("#", ["if", var name]) => new TemplateSign(TemplateSign.Of.If, name, line, before, after) { EndedBy = "if" },
            ("^", ["unless", var name]) => new TemplateSign(TemplateSign.Of.If, name, line, before, after) { EndedBy = "unless" },
            ("#", ["unless", var name]) => new TemplateSign(TemplateSign.Of.Unless, name, line, before, after) { EndedBy = "unless" },
            ("^", ["if", var name]) => new TemplateSign(TemplateSign.Of.Unless, name, line, before, after) { EndedBy = "if" },
            ("/", [var name]) => new TemplateSign(TemplateSign.Of.End, name, line, before, after),
            ("", ["else"]) => new TemplateSign(TemplateSign.Of.Else, "", line, before, after),
            ("", ["else", "if", var name]) => new TemplateSign(TemplateSign.Of.ElseIf, name, line, before, after),
            ("", [var name]) => new TemplateSign(TemplateSign.Of.Place, name, line, before, after),
            _ => null,
        };
    }

    [GeneratedRegex("""
        \{\{ (?<three>\{)? (?<before>~)? \s*
        (?: (?<comment>!) (?: --.*?-- | (?!--).*? )
          | (?<sign>[#^/]?) (?<words>[^{}~!]*?) )
        \s* (?<after>~)? (?(three)\}) \}\}
        """, RegexOptions.IgnorePatternWhitespace | RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Braced();
}
