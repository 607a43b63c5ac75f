using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.InService;

/// <summary>A house in service: what is due, and what was replaced, repaired and looked at.</summary>
/// <param name="RowId">The row under the cursor: what was done by its id, what is due by its words.</param>
/// <param name="At">Where that was among all rows, for when it is gone.</param>
/// <param name="AboutId">What the screen was opened from, which the next line begins with; null where that was the house.</param>
internal sealed record ServiceScreen(string? RowId, int At, string? AboutId) : IFiltered, IAsked, ITable
{
    private const int LeastCard = 32;

    public string Title => "In service";

    public IReadOnlyList<IKeyAction> Keys => ServiceKeys.All;

    public static ServiceScreen About(Item? about, ScreenContext context) => (ServiceScreen)new ServiceScreen(
        about is null ? null : Service.Of(context.House, about).LastOrDefault()?.Id, 0, about?.Id).Fit(context);

    public string Search { get; init; } = "";

    /// <summary>What is due, what presses first; then what was done.</summary>
    public IReadOnlyList<ServiceRow> Rows(ScreenContext context) => Found(ServiceRows.Of(context));

    public (int Shown, int All) Count(ScreenContext context) => ServiceRows.Of(context) is var all ? (Found(all).Count, all.Count) : default;

    private IReadOnlyList<ServiceRow> Found(IReadOnlyList<ServiceRow> all) =>
        Search.Length == 0 ? all : [.. all.Where(r => Filtering.Fits(r.Sought, Search))];

    public IScreen Searching(string search, ScreenContext context) => (this with { Search = search, At = 0 }).Fit(context);

    /// <summary>What was done, under the cursor; null on what is due.</summary>
    public Service? Current(ScreenContext context) => Rows(context).FirstOrDefault(r => r.Id == RowId)?.Done;

    public Unit? UnitAt(ScreenContext context) => Current(context)?.About is { } about ? context.House.FindUnit(about.Id) : null;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Rows(context).Select(r => (IReadOnlyList<string>)(r.Done is not { } s ? [r.Text]
        :
        [
            s.Show(ServiceFacts.On), s.Name, s.Show(ServiceFacts.By), s.Show(ServiceFacts.Cause), s.TakenOff ?? "", s.NewSerial ?? "",
            s.Claim ?? "", s.SettledBy?.Show(ServiceFacts.Outcome) ?? "",
        ]));

    public ServiceScreen Moved(ScreenContext context, int by)
    {
        var rows = Rows(context);
        if (rows.Count == 0)
            return this with { RowId = null, At = 0 };
        var to = Paging.Move(Math.Min(At, rows.Count - 1), by, rows.Count);
        return this with { RowId = rows[to].Id, At = to };
    }

    public IScreen Fit(ScreenContext context)
    {
        var rows = Rows(context).ToList();
        var at = rows.FindIndex(r => r.Id == RowId);
        // What was done is worked on; what is due is only read.
        return at >= 0 ? this with { At = at } : (this with { At = Math.Max(At, rows.FindIndex(r => r.Done is not null)) }).Moved(context, 0);
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var rows = Rows(context);
        var y = area.PutWrapped(1, 0, 2, ServiceRows.InWords(context), Tone.Dim) + 1;
        if (rows.Count == 0)
            return;
        var left = Math.Min(area.Width - LeastCard - 3, 90);
        var list = area.Part(0, y, left, area.Height - y);
        foreach (var (line, at) in Paging.Rows(list, rows.Count, At, at => this with { RowId = rows[at].Id, At = at }))
            list.PutFit(0, line, list.Width, rows[at].Text, at == At ? Tone.Selected : rows[at].Presses ? Tone.Caution : Tone.Text);
        for (var line = y; line < area.Height; line++)
            area.Put(left, line, context.Glyphs.Down, Tone.Dim);
        var beside = area.Part(left + 2, y, area.Width - left - 2, area.Height - y);
        if (rows[Math.Min(At, rows.Count - 1)] is { Done: { } service })
            DrawAbout(beside, service);
        else
            beside.PutWrapped(0, 0, beside.Height, rows[Math.Min(At, rows.Count - 1)].Text.Trim(), Tone.Strong);
    }

    private static void DrawAbout(Area area, Service service)
    {
        var y = area.PutWrapped(0, 0, 2, service.Name, Tone.Strong);
        foreach (var fact in new Fact[] { ServiceFacts.By, ServiceFacts.Cause })
        {
            if (service.Show(fact) is { Length: > 0 } shown)
                y = area.PutWrapped(0, y, 4, $"{fact.Label}: {shown}", Tone.Text);
        }
        if (service.TakenOff is { } taken)
            y = area.PutWrapped(0, y, 4, $"{ServiceFacts.OldSerial.Label}: {taken}", Tone.Text);
        if (service.ReplacesUnit)
            y = area.PutWrapped(0, y, 2, $"Serial put in: {service.NewSerial ?? "not read yet"}", service.NewSerial is null ? Tone.Caution : Tone.Text);
        if (service.Claim is { } claim)
        {
            y = area.PutWrapped(0, y, 3,
                $"{ServiceFacts.Claim.Label}: {claim}, {(service.ClaimIsOpen ? "open" : service.SettledBy?.Show(ServiceFacts.Outcome))}",
                service.ClaimIsOpen ? Tone.Caution : Tone.Text);
        }
        var waits = AskedAgain.Waiting(service.House).Where(w => w.Since.Id == service.Id).Select(w => $"{w.Subject.Name}: {w.Step.Label}").ToList();
        if (waits.Count > 0)
            area.PutWrapped(0, y, 8, $"To be done again: {string.Join(", ", waits)}", Tone.Caution);
    }
}
