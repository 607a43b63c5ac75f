using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Units;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Firm;

/// <summary>The houses of a firm as they are known at one moment. What lists say of them is worked out once, however often it is drawn.</summary>
/// <param name="rows">The houses, each once.</param>
/// <param name="left">How many files are still to be read again.</param>
public sealed class FirmHousesNow(IReadOnlyList<FirmRow> rows, int left)
{
    private readonly Lazy<FirmVisits> _visits = new(() => FirmVisits.Of(rows.Select(r => r.Summary).OfType<HouseSummary>()));
    private Listed? _listed;

    /// <summary>The houses.</summary>
    public IReadOnlyList<FirmRow> Rows => rows;

    /// <summary>How many files are still to be read again.</summary>
    public int Left => left;

    /// <summary>The houses that are in a list and have what is looked for, each with what the list says of it.</summary>
    /// <param name="list">The list.</param>
    /// <param name="today">The day on which they are looked at.</param>
    /// <param name="search">Words that are looked for; empty where nothing is.</param>
    internal IReadOnlyList<(FirmRow House, string Said)> In(FirmList list, DateOnly today, string search)
    {
        // Drawn, counted and moved through by the same key: the last answer is the one that is asked for again.
        if (_listed is { } last && last.Is(list, today, search))
            return last.Rows;
        var ordered = list.First is { } first ? rows.OrderBy(r => r.Summary is { } s ? first(s, today) : long.MaxValue) : rows.AsEnumerable();
        var shown = ordered.Select(r => (House: r, Said: Says(list, r, today))).Where(r => r.Said is not null).Select(r => (r.House, Said: r.Said!))
            .Where(r => search.Length == 0 || Filtering.Fits($"{r.House.Name} {r.House.Path} {r.Said}", search)).ToList();
        _listed = new Listed(list, today, search, shown);
        return shown;
    }

    private string? Says(FirmList list, FirmRow row, DateOnly today)
    {
        var all = list == FirmList.Everything;
        if (all && row.Why is { } why)
            return $"can't be opened: {why}";
        if (row.Summary is not { } summary)
            return all ? "not read yet" : null;
        var said = string.Join("; ", list.Of(summary, today, _visits.Value));
        if (!all)
            return said.Length > 0 ? said : null;
        return (row.InDoubt ? "saves in doubt; " : "") + (row.AtOffice is { PutOff: > 0 and var putOff } ? $"{NumberText.Plain(putOff)} put off; " : "") + said
            + (row.AtOffice is { NotThere: > 0 and var more } ? $"; {NumberText.Plain(more)} not at office" : "");
    }

    private sealed record Listed(FirmList List, DateOnly Today, string Search, IReadOnlyList<(FirmRow House, string Said)> Rows)
    {
        public bool Is(FirmList list, DateOnly today, string search) => List == list && Today == today && Search == search;
    }
}
