using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Core.Plans.Firm;
using TrimOut.Papers.Templates;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.FirmPapers;

/// <summary>What a paper over several houses is written from.</summary>
/// <param name="Date">The day that stands on it; of a week its first one.</param>
/// <param name="Summaries">What is known of each house.</param>
/// <param name="Houses">The houses themselves with their history, for a paper that needs them.</param>
/// <param name="Unread">Names of houses that could not be opened, and so are not on it.</param>
/// <param name="Stop">Stops the writing.</param>
public sealed record FirmData(
    DateOnly Date, ImmutableArray<HouseSummary> Summaries, ImmutableArray<HouseLog> Houses, ImmutableArray<string> Unread, CancellationToken Stop = default)
{
    /// <summary>Names of houses that could be opened and were left out of the paper, such as by a list or a filter.</summary>
    public ImmutableArray<string> LeftOut { get; init; } = [];

    /// <summary>What is known of the houses that were left out: who is expected there stands at the rows of these houses all the same.</summary>
    public ImmutableArray<HouseSummary> Elsewhere { get; init; } = [];

    /// <summary>Files of copies of these houses, which are not counted a second time.</summary>
    public ImmutableArray<string> Copies { get; init; } = [];
}

/// <summary>A paper over several houses.</summary>
public sealed class FirmPaper
{
    private readonly Action<MarkdownWriter, FirmData> _write;

    private FirmPaper(string id, string title, string about, bool needsHouses, Action<MarkdownWriter, FirmData> write) =>
        (Id, Title, About, NeedsHouses, _write) = (id, title, about, needsHouses, write);

    /// <summary>Every paper over houses.</summary>
    public static IReadOnlyList<FirmPaper> All { get; } =
    [
        new("week-plan", "Week plan", "Over houses: who is where on which day of a week, person by person, and what is due.", false, WeekPlan.Write),
        new("call-off", "Call-off over houses", "Parts of several houses summed by part and day, and one cut plan for their cable.", true,
            CallOffOfHouses.Write),
    ];

    /// <summary>Its stable name, also of its file.</summary>
    public string Id { get; }

    /// <summary>What it is called.</summary>
    public string Title { get; }

    /// <summary>One sentence on what stands in it.</summary>
    public string About { get; }

    /// <summary>Whether summaries are not enough for it.</summary>
    public bool NeedsHouses { get; }

    /// <summary>The paper.</summary>
    /// <param name="data">What it is written from.</param>
    /// <param name="language">A language that comes with TrimOut; null for English.</param>
    /// <returns>The paper, or which languages there are.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Result<WrittenPaper> Write(FirmData data, string? language)
    {
        if (language is not null && ShippedWords.OfPapersIn(language).Papers.Count == 0)
            return new Refusal($"There is no {Title.ToLowerInvariant()} in \"{language}\". There are: {string.Join(", ", ShippedWords.PaperLanguages)}.");
        return WriteIn(data, language is null ? Words.English : (WordLines.None with { Language = language }).ToWords());
    }

    internal WrittenPaper WriteIn(FirmData data, Words words)
    {
        var to = new MarkdownWriter(words, "", []);
        to.Heading(1, Inline.Ours($"{Inline.Ours(Title)}: {data.Date.OnPaper()}"));
        to.Say($"For these houses: {data.Summaries.Select(s => s.Name).JoinOrDash()}.");
        if (!data.LeftOut.IsEmpty)
            to.Say($"Of {data.Summaries.Length + data.LeftOut.Length + data.Unread.Length} houses, without: {data.LeftOut.JoinOrDash()}.");
        _write(to, data);
        if (!data.Unread.IsEmpty)
            to.Say($"Not on this paper, for they could not be opened: {data.Unread.JoinOrDash()}.");
        if (!data.Copies.IsEmpty)
            to.Say($"Copies of these houses, counted once: {data.Copies.JoinOrDash()}.");
        return new WrittenPaper(Id, $"{words.Of(Title)}: {data.Date.OnPaper()}", words.Language, to.ToString(), new SortedDictionary<string, string>())
        {
            Day = data.Date,
            Landscape = true,
        };
    }
}
