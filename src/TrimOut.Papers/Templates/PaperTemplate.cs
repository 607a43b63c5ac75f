using HandlebarsDotNet;
using TrimOut.Core;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Templates;

/// <summary>Another order, other headings and other wording for a paper: Markdown with named places in double braces, and a list of words.</summary>
/// <remarks>The places are filled with Markdown that is escaped already, so nothing typed into the house can act as markup or as template.</remarks>
public sealed class PaperTemplate
{
    private const string ContentsMark = "\u0002contents\u0002";

    private readonly HandlebarsTemplate<object, object> _body;

    private PaperTemplate(HandlebarsTemplate<object, object> body, WordLines lines)
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
        var places = PlaceNames(paper).ToList();
        if (TemplatePlaces.Unknown(parts.Body, places) is { } unknown)
            return new Refusal($"Line {unknown.Line}: there is no place {{{{{unknown.Name}}}}} in this paper. There are: {string.Join(", ", places)}.");
        if (OutsideMarkup.First(parts.Body) is { } outside)
            return new Refusal($"Line {outside.Line}: {outside.What} can't be part of a paper. A paper holds no script and no HTML, and leads to " +
                $"nothing but its own sections; write an address as plain text.");
        try
        {
            var handlebars = Handlebars.Create(new HandlebarsConfiguration { NoEscape = true, ThrowOnUnresolvedBindingExpression = true });
            return new PaperTemplate(handlebars.Compile(parts.Body), parts.Words);
        }
        catch (HandlebarsException wrong)
        {
            return new Refusal($"The template can't be read: {wrong.Message}");
        }
    });

    /// <summary>TrimOut's own order and wording as a template, to begin from.</summary>
    public static string Default(Paper paper)
    {
        var contents = paper.HasContents ? $"{Paper.ContentsIntro}\n\n{{{{{Paper.Contents}}}}}\n\n" : "";
        var sections = paper.Sections.Select(s => s.NotForOwner
            ? $"{PartOf(s)}{{{{#if {Everything}}}}}\n## {s.Title}\n\n{{{{{s.Place}}}}}\n{{{{/if}}}}\n"
            : $"{PartOf(s)}## {s.Title}\n\n{{{{{s.Place}}}}}\n");
        return $"# {paper.Title}: {{{{{HouseName}}}}}\n\n{{{{{Paper.CoverPlace}}}}}\n\n{contents}{string.Join("\n", sections)}";
    }

    private static string PartOf(Section section) => section.Part is { } part ? $"## {part}\n\n" : "";

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
        var written = Tidy.BlankLines(_body(places));
        return written.Replace(ContentsMark, Tidy.ContentsOf(written), StringComparison.Ordinal);
    }

    private static IEnumerable<string> PlaceNames(Paper paper) =>
        [HouseName, Day, Everything, Paper.Contents, Paper.CoverPlace, .. paper.Sections.Select(s => s.Place)];
}
