using System.Globalization;
using HandlebarsDotNet;
using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests.Templates;

/// <summary>
/// What a template makes of its signs, beside a library that knows the whole of their language (Handlebars.Net): the same texts, to the byte, of random
/// templates and of TrimOut's own.
/// </summary>
public class TemplateBesideHandlebarsTests
{
    private static readonly Dictionary<string, object> Places = new(StringComparer.Ordinal)
    {
        ["house"] = "Elm *house* <1> & {{date}}",
        ["date"] = "26 November 2026",
        ["cover"] = "",
        ["stops"] = "  two lines\n\n  and {more}\n",
        ["everything"] = true,
        ["nothing"] = false,
    };

    private static readonly string[] Pieces =
    [
        "\n", "\n", "\n", "\n\n", " ", "  ", "\t", "word", "# Title", "a { b } c", "\\ ", "\\\\.", "\\\\{{house}}", "|", "{{house}}", "{{{house}}}",
        "{{ date }}", "{{~date}}", "{{date~}}", "{{~ stops ~}}", "{{cover}}", "{{stops}}", "{{! a comment }}", "{{!-- with {{house}} in it --}}",
        "{{~! eats ~}}", "{{everything}}", "{{nothing}}",
    ];

    [Fact]
    public void RandomTemplatesGiveTheSameText()
    {
        var random = new Random(26);
        var different = new HashSet<string>(StringComparer.Ordinal);
        for (var round = 0; round < 200; round++)
        {
            var template = Body(random, 0);
            var text = Ours(template);
            Assert.Equal((template, Theirs(template)), (template, text));
            different.Add(text);
        }
        Assert.InRange(different.Count, 100, 200);
    }

    [Theory]
    [InlineData("{{#if everything}}\nyes\n{{else}}\nno\n{{/if}}\n")]
    [InlineData("a\n  {{#if nothing}}  \nyes\n{{else if house}}\nhouse\n  {{else}}no{{/if}}\nb")]
    [InlineData("a {{#if nothing}}yes{{else if cover}}cover{{else}}no{{/if}} b\n")]
    [InlineData("{{#unless cover}}\n\nempty\n\n{{~/unless~}}\n\n b")]
    [InlineData("{{^if nothing}}x{{/if}}{{^unless nothing}}y{{/unless}}")]
    [InlineData("\\{{house}} and \\\\{{house}} and \\n and \\\\n")]
    [InlineData("{{#if house}}{{#if cover}}a{{else}}b{{/if}}{{/if}}")]
    [InlineData("{{!-- c --}}\n{{! d }}\n\nx{{! e }}\n")]
    public void AConditionGivesTheSameText(string template) => Assert.Equal(Theirs(template), Ours(template));

    private static string Body(Random random, int depth)
    {
        var text = "";
        for (var left = random.Next(1, 9); left > 0; left--)
        {
            var piece = random.Next(Pieces.Length + 12);
            text += piece < Pieces.Length || depth > 2 ? Pieces[piece % Pieces.Length] : Condition(random, depth);
        }
        return text;
    }

    private static string Condition(Random random, int depth)
    {
        var word = random.Next(2) == 0 ? "if" : "unless";
        string Open(string inside) => $"{{{{{(random.Next(9) == 0 ? "~" : "")}{inside}{(random.Next(9) == 0 ? "~" : "")}}}}}{Line()}";
        string Line() => random.Next(2) == 0 ? "\n" : "";
        string Name() => Places.Keys.ElementAt(random.Next(Places.Count));
        return string.Create(CultureInfo.InvariantCulture, $"{Line()}{Open($"#{word} {Name()}")}{Body(random, depth + 1)}{Line()}") +
            (random.Next(3) == 0 ? Open($"else if {Name()}") + Body(random, depth + 1) : "") +
            (random.Next(2) == 0 ? Open("else") + Body(random, depth + 1) : "") + Open($"/{word}");
    }

    private static string Ours(string template)
    {
        var read = TemplateBody.Read(template, Places.Keys);
        Assert.True(read.Ok, $"{template}: {read.Reason}");
        return read.Value.Fill(Places);
    }

    private static string Theirs(string template) =>
        Handlebars.Create(new HandlebarsConfiguration { NoEscape = true, ThrowOnUnresolvedBindingExpression = true }).Compile(template)(Places);
}
