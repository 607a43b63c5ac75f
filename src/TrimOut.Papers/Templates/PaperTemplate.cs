using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Templates;

/// <summary>Another order, other headings and other wording for a paper: Markdown with named places in double braces, and a list of words.</summary>
/// <remarks>The places are filled with Markdown that is escaped already, so nothing typed into the house can act as markup or as template.</remarks>
public sealed partial class PaperTemplate
{
    private const string ContentsMark = "\u0002contents\u0002";

    private readonly TemplateBody _body;

    private PaperTemplate(TemplateBody body, WordLines lines)
    {
        _body = body;
        Words = lines.ToWords();
        Phrases = [.. lines.Instead.Keys];
    }

    /// <summary>Our own phrases that it replaces itself; what comes with TrimOut in its language is not among them.</summary>
    public IReadOnlyCollection<string> Phrases { get; }

    internal Words Words { get; }

    /// <summary>Reads a template of a paper.</summary>
    /// <param name="paper">The paper that it is for.</param>
    /// <param name="text">The template.</param>
    /// <returns>The template, or what is wrong with it and in which line.</returns>
    public static Result<PaperTemplate> Read(Paper paper, string text) => WordsBlock.Read(text).Then<PaperTemplate>(parts =>
    {
        var body = TemplateBody.Read(parts.Body, [.. PlaceNames(paper)]);
        return body.Ok && OutsideMarkup.First(parts.Body) is { } outside
            ? new Refusal($"Line {outside.Line}: {outside.What} can't be part of a paper. A paper holds no script and no HTML, and leads to " +
                $"nothing but its own sections; write an address as plain text.")
            : body.Then<PaperTemplate>(b => new PaperTemplate(b, parts.Words));
    });

    /// <summary>TrimOut's own order and wording as a template, to begin from.</summary>
    public static string Default(Paper paper) => Default(paper, Words.English);

    /// <summary>A paper in a language that comes with TrimOut: in the usual order, with the words of that language.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="language">The language, such as <c>es</c> or <c>de-AT</c>.</param>
    /// <returns>The template, or which papers there are in which languages.</returns>
    public static Result<PaperTemplate> In(Paper paper, string language)
    {
        if (!Tag().IsMatch(language))
            return new Refusal($"\"{language}\" is no language. Write de, es, or another one with two or three letters.");
        if (!IsIn(paper, language))
            return new Refusal($"There is no {paper.Title.ToLowerInvariant()} in \"{language}\". {WhichThereAre()}");
        return Read(paper, $"{Default(paper, (WordLines.None with { Language = language }).ToWords())}\n```words\nlanguage = {language}\n```\n");
    }

    /// <summary>Whether a paper comes with TrimOut in a language.</summary>
    public static bool IsIn(Paper paper, string language) => ShippedWords.OfPapersIn(language).Papers.Contains(paper.Id);

    private static string WhichThereAre() => string.Join(" ", ShippedWords.PaperLanguages.Select(l =>
        $"In {l} there are: {string.Join(", ", PaperList.All.Where(p => IsIn(p, l)).Select(p => p.Id))}."));

    private static string Default(Paper paper, Words words)
    {
        var contents = paper.HasContents ? $"{words.Of(Paper.ContentsIntro)}\n\n{{{{{Paper.Contents}}}}}\n\n" : "";
        var sections = paper.Sections.Select(s => s.NotForOwner
            ? $"{PartOf(s, words)}{{{{#if {Everything}}}}}\n## {words.Of(s.Title)}\n\n{{{{{s.Place}}}}}\n{{{{/if}}}}\n"
            : $"{PartOf(s, words)}## {words.Of(s.Title)}\n\n{{{{{s.Place}}}}}\n");
        return $"# {words.Of(paper.Title)}: {{{{{HouseName}}}}}\n\n{{{{{Paper.CoverPlace}}}}}\n\n{contents}{string.Join("\n", sections)}";
    }

    private static string PartOf(Section section, Words words) => section.Part is { } part ? $"## {words.Of(part)}\n\n" : "";

    private const string HouseName = "house";
    private const string Day = "date";
    private const string Everything = "everything";

    internal string Fill(Paper paper, PaperData data, SortedDictionary<string, string> drawings)
    {
        var places = paper.Places(data, Words, drawings).ToDictionary(p => p.Key, p => (object)p.Value.TrimEnd('\n'));
        places[HouseName] = Inline.NameOf(data.House, data.House.Job).Markdown(Words);
        places[Day] = data.Date.OnPaper();
        places[Everything] = !data.OwnerOnly;
        places[Paper.Contents] = ContentsMark;
        var written = Tidy.BlankLines(_body.Fill(places));
        return written.Replace(ContentsMark, Tidy.ContentsOf(written), StringComparison.Ordinal);
    }

    [GeneratedRegex("^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$", RegexOptions.CultureInvariant)]
    private static partial Regex Tag();

    private static IEnumerable<string> PlaceNames(Paper paper) =>
        [HouseName, Day, Everything, Paper.Contents, Paper.CoverPlace, .. paper.Sections.Select(s => s.Place)];
}
