using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.InService;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.InService;

/// <summary>A house in service: what is due, and what was replaced, repaired and looked at.</summary>
/// <param name="RowId">The row under the cursor.</param>
/// <param name="At">Where that was among all rows, for when it is gone.</param>
/// <param name="AboutId">What the screen was opened from, which the next line begins with; null where that was the house.</param>
internal sealed record ServiceScreen(string? RowId, int At, string? AboutId) : IFiltered, IAsked, ITable
{
    private const int LeastCard = 32;
    private const int MostDue = 4;

    public string Title => "In service";

    public IReadOnlyList<IKeyAction> Keys => ServiceKeys.All;

    public static ServiceScreen About(Item? about, ScreenContext context) => (ServiceScreen)new ServiceScreen(
        about is null ? null : Service.Of(context.House, about).LastOrDefault()?.Id, 0, about?.Id).Fit(context);

    public string Search { get; init; } = "";

    public IReadOnlyList<Service> Rows(ScreenContext context) =>
        [.. context.House.Services.Where(s => Search.Length == 0 || Filtering.Fits(ServiceRows.Sought(s), Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Rows(context).Count, context.House.Services.Count());

    public IScreen Searching(string search, ScreenContext context) => (this with { Search = search, At = 0 }).Fit(context);

    public Service? Current(ScreenContext context) => Rows(context).FirstOrDefault(s => s.Id == RowId);

    public Unit? UnitAt(ScreenContext context) => Current(context)?.About is { } about ? context.House.FindUnit(about.Id) : null;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Rows(context).Select(s => (IReadOnlyList<string>)
    [
        s.Show(ServiceFacts.On), s.Name, s.Show(ServiceFacts.By), s.Show(ServiceFacts.Cause), s.Show(ServiceFacts.OldSerial), s.NewSerial ?? "",
        s.Claim ?? "", s.Show(ServiceFacts.Outcome),
    ]);

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
        var at = Rows(context).ToList().FindIndex(s => s.Id == RowId);
        return at < 0 ? Moved(context, 0) : this with { At = at };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = DrawDue(area, context) + 1;
        var rows = Rows(context);
        if (rows.Count == 0)
        {
            area.PutWrapped(1, y, 3, Search.Length > 0 ? "" : "Nothing was done yet; n records what was done.", Tone.Dim);
            return;
        }
        var left = Math.Min(area.Width - LeastCard - 3, 90);
        var list = area.Part(0, y, left, area.Height - y);
        foreach (var (line, at) in Paging.Rows(list, rows.Count, At, at => this with { RowId = rows[at].Id, At = at }))
            list.PutFit(0, line, list.Width, ServiceRows.Text(rows[at]), at == At ? Tone.Selected : rows[at].ClaimIsOpen ? Tone.Caution : Tone.Text);
        for (var line = y; line < area.Height; line++)
            area.Put(left, line, context.Glyphs.Down, Tone.Dim);
        if (Current(context) is { } service)
            DrawAbout(area.Part(left + 2, y, area.Width - left - 2, area.Height - y), service);
    }

    /// <summary>What is due, what presses first; how many more there are where they are many.</summary>
    private static int DrawDue(Area area, ScreenContext context)
    {
        var due = DueInService.Of(context.House, context.Today).OrderByDescending(d => d.Pressing).ToList();
        if (due.Count == 0)
            return area.PutWrapped(1, 0, 2, "Nothing is due that is known.", Tone.Dim);
        var y = 0;
        foreach (var one in due.Take(MostDue))
            y = area.PutWrapped(1, y, 2, one.Say.In(context.House), one.Pressing ? Tone.Caution : Tone.Text);
        return due.Count > MostDue ? area.PutWrapped(1, y, 1, $"{due.Count - MostDue} more: trimout service lists all.", Tone.Dim) : y;
    }

    private static void DrawAbout(Area area, Service service)
    {
        var y = area.PutWrapped(0, 0, 2, service.Name, Tone.Strong);
        foreach (var fact in new Fact[] { ServiceFacts.By, ServiceFacts.Cause, ServiceFacts.OldSerial })
        {
            if (service.Show(fact) is { Length: > 0 } shown)
                y = area.PutWrapped(0, y, 4, $"{fact.Label}: {shown}", Tone.Text);
        }
        if (service is { Kind: ServiceKind.Replaced, About.Kind: ItemKind.Unit })
            y = area.PutWrapped(0, y, 2, $"Serial put in: {service.NewSerial ?? "not read yet"}", service.NewSerial is null ? Tone.Caution : Tone.Text);
        if (service.Claim is { } claim)
        {
            y = area.PutWrapped(0, y, 3, $"{ServiceFacts.Claim.Label}: {claim}, {(service.ClaimIsOpen ? "open" : service.Show(ServiceFacts.Outcome))}",
                service.ClaimIsOpen ? Tone.Caution : Tone.Text);
        }
        var waits = AskedAgain.Waiting(service.House).Where(w => w.Since.Id == service.Id).Select(w => $"{w.Subject.Name}: {w.Step.Label}").ToList();
        if (waits.Count > 0)
            area.PutWrapped(0, y, 8, $"To be done again: {string.Join(", ", waits)}", Tone.Caution);
    }
}
