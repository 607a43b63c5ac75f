using TrimOut.Papers.Tables;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers;

/// <summary>A paper that TrimOut can write.</summary>
public sealed class Paper
{
    internal const string Contents = "contents";
    internal const string CoverPlace = "cover";

    private readonly Section[] _sections;
    private readonly Action<MarkdownWriter, PaperData> _cover;

    internal Paper(string id, string title, string reader, string about, Action<MarkdownWriter, PaperData> cover, params Section[] sections)
    {
        Id = id;
        Title = title;
        Reader = reader;
        About = about;
        _cover = cover;
        _sections = sections;
    }

    /// <summary>Its stable name, kebab-case, also of its file.</summary>
    public string Id { get; }

    /// <summary>What it is called.</summary>
    public string Title { get; }

    /// <summary>Who it is for.</summary>
    public string Reader { get; }

    /// <summary>One sentence on what stands in it.</summary>
    public string About { get; }

    /// <summary>Writes the same as a table for other programs, as CSV; null where there is no such form.</summary>
    public Func<PaperData, string>? Csv => Table is { } table ? data => table(data).ToCsv() : null;

    /// <summary>Writes the same table as a spreadsheet file (.xlsx); null where there is no such form.</summary>
    public Func<PaperData, byte[]>? Xlsx => Table is { } table ? data => Spreadsheet.Of(table(data)) : null;

    /// <summary>What it says as a table; null where there is no such form.</summary>
    internal Func<PaperData, SheetTable>? Table { get; init; }

    internal bool HasContents { get; init; }

    /// <summary>Whether its tables are so wide that its sheets lie on their side.</summary>
    internal bool Landscape { get; init; }

    /// <summary>What it says at its head of what is still wrong; null for nothing.</summary>
    internal Action<MarkdownWriter, PaperData>? Warns { get; init; }

    internal IReadOnlyList<Section> Sections => _sections;

    /// <summary>The paper.</summary>
    /// <param name="data">What it is written from.</param>
    /// <param name="template">The template to write it by; null for TrimOut's own wording and order.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public WrittenPaper Write(PaperData data, PaperTemplate? template = null)
    {
        var drawings = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var words = template?.Words ?? Words.English;
        var (body, marks) = PrintedMarks.In(() => template?.Fill(this, data, drawings) ?? Body(data, drawings));
        var title = template is null ? $"{Title}: {data.House.Name}" : $"{words.Of(Title)}: {data.House.NameOf(data.House.Job, words.Of)}";
        return Written(title, body, data with { Printed = marks }, words, drawings);
    }

    /// <summary>What stands in it by TrimOut's own wording and order.</summary>
    private string Body(PaperData data, SortedDictionary<string, string> drawings)
    {
        var to = NewWriter(data, Words.English, drawings).Heading(1, $"{Inline.Ours(Title)}: {data.House.Name}");
        _cover(to, data);
        var sections = _sections.Where(s => !(s.NotForOwner && data.OwnerOnly)).ToList();
        if (HasContents)
            to.Say(ContentsIntro).List(sections.SelectMany(s => s.Part is { } part ? [part, s.Title] : new[] { s.Title }).Select(Inline.LinkTo));
        foreach (var section in sections)
        {
            data.Stop.ThrowIfCancellationRequested();
            if (section.Part is { } part)
                to.Heading(2, part);
            to.Heading(2, section.Title);
            section.Write(to, data);
        }
        return to.ToString();
    }

    private WrittenPaper Written(string title, string markdown, PaperData data, Words words, SortedDictionary<string, string> drawings)
    {
        var whole = WithHead(markdown, data, words);
        return new(Id, title, words.Language, whole, drawings)
        {
            Day = data.Date,
            Foot = SheetMarks.AreIn(whole) ? words.Of(SheetMarks.AtFoot) : null,
            HasContents = HasContents,
            Landscape = Landscape,
        };
    }

    /// <summary>Whether what a mark means is said at its foot, because what stands first has to be first.</summary>
    internal bool MarksAtFoot { get; init; }

    /// <summary>The paper with what its reader has to know first below its title, whatever template it is written by.</summary>
    internal string WithHead(string markdown, PaperData data, Words words)
    {
        var head = new MarkdownWriter(words, "", []);
        Doubt.Say(head, data);
        Warns?.Invoke(head, data);
        var marked = SheetMarks.AreIn(markdown) || SheetMarks.AreIn(head.ToString());
        if (marked && !MarksAtFoot)
            SheetMarks.Explain(head);
        if (DisputeMarks.AreIn(markdown))
            DisputeMarks.Explain(head);
        var said = head.ToString();
        if (marked && MarksAtFoot)
        {
            var foot = new MarkdownWriter(words, "", []);
            SheetMarks.Explain(foot);
            markdown = $"{markdown}\n{foot}";
        }
        var title = markdown.StartsWith("# ", StringComparison.Ordinal) ? markdown.IndexOf('\n', StringComparison.Ordinal) + 1 : 0;
        return said.Length == 0 ? markdown : title > 0 ? $"{markdown[..title]}\n{said}{markdown[title..]}" : $"{said}\n{markdown}";
    }

    internal const string ContentsIntro = "What stands in this paper:";

    /// <summary>What stands in each place of a template, as Markdown.</summary>
    internal IEnumerable<KeyValuePair<string, string>> Places(PaperData data, Words words, SortedDictionary<string, string> drawings)
    {
        foreach (var (place, write) in _sections.Select(s => (s.Place, s.Write)).Prepend((CoverPlace, _cover)))
        {
            data.Stop.ThrowIfCancellationRequested();
            var to = NewWriter(data, words, drawings);
            write(to, data);
            yield return new(place, to.ToString());
        }
    }

    // A drawing's path is a link in the Markdown: whatever the house's file is called, it is one word there.
    private MarkdownWriter NewWriter(PaperData data, Words words, SortedDictionary<string, string> drawings) =>
        new(words, $"{(data.FilesOf.Length == 0 ? "" : Uri.EscapeDataString(data.FilesOf) + "-")}drawings/{Id}", drawings);
}
