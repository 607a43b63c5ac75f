using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.People;

/// <summary>Contacts with their numbers, visits with who is expected, and boxes that are not here.</summary>
/// <param name="RowId">The row under the cursor.</param>
/// <param name="At">Where that was among all rows, for when it is gone.</param>
internal sealed record PeopleScreen(string? RowId, int At) : IFiltered, IAsked, ITable
{
    private const int LeastCard = 30;

    /// <summary>The heading, a row and how many more there are.</summary>
    private const int LeastReady = 3;

    public string Title => "People and dates";

    public IReadOnlyList<IKeyAction> Keys => PeopleKeys.All;

    public static PeopleScreen On(string? id, ScreenContext context) => (PeopleScreen)new PeopleScreen(id, 0).Fit(context);

    public string Search { get; init; } = "";

    public IReadOnlyList<PeopleRow> Rows(ScreenContext context) => Search.Length == 0 ? PeopleRows.Of(context)
        : [.. PeopleRows.Of(context).Where(r => r.Id.Length == 0 || Filtering.Fits($"{Text(r, context)} {r.Box?.Unit.Window.Room?.FullName}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Rows(context).Count(r => r.Id.Length > 0), PeopleRows.Of(context).Count(r => r.Id.Length > 0));

    public IScreen Searching(string search, ScreenContext context) => (this with { Search = search, At = 0 }).Fit(context);

    public PeopleRow? Current(ScreenContext context) => Rows(context).FirstOrDefault(r => r.Id.Length > 0 && r.Id == RowId);

    public Unit? UnitAt(ScreenContext context) => Current(context)?.Box?.Unit;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Rows(context).Select(r => (IReadOnlyList<string>)(r switch
    {
        { Contact: { } c } => [c.Show(ContactFacts.Telephone), c.Show(ContactFacts.Part), c.Name],
        { Visit: { } v } => [Day(v), v.Name, string.Join(", ", v.Expected.Select(c => c.Name))],
        { Box: { } b } => [b.Unit.Tag, b.Why.In(context.House), r.TooLate is { } late ? TooLate(late) : ""],
        { Due: { } d } => [Day(d.By), d.Open.Phase.Full(), string.Join(", ", d.Open.Who)],
        _ => [r.Heading],
    }));

    /// <summary>So many rows on, past headings.</summary>
    public PeopleScreen Moved(ScreenContext context, int by)
    {
        var rows = Rows(context);
        var stands = Enumerable.Range(0, rows.Count).Where(at => rows[at].Id.Length > 0).ToList();
        if (stands.Count == 0)
            return this with { RowId = null, At = 0 };
        var now = Math.Max(0, stands.FindLastIndex(at => at <= At));
        var to = stands[Paging.Move(now, by, stands.Count)];
        return this with { RowId = rows[to].Id, At = to };
    }

    public IScreen Fit(ScreenContext context)
    {
        var at = Rows(context).ToList().FindIndex(r => r.Id.Length > 0 && r.Id == RowId);
        return at < 0 ? Moved(context, 0) : this with { At = at };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var rows = Rows(context);
        var nobody = context.House.Contacts.Any() && !context.House.Contacts.Any(c => c.AfterHandover);
        if (VisitPlan.Order(context.House) is { } due)
            area.PutFit(1, 1, area.Width - 1, $"{(due.IsTooLate(context.Today) ? "TOO LATE to order" : "To be ordered")} by "
                + $"{Day(due.By)}, to be here on {Day(due.Needed)}: {string.Join(", ", due.Units)}", due.IsTooLate(context.Today) ? Tone.Stop : Tone.Caution);
        else if (VisitPlan.BoxesTooLate(context.House, context.Today).ToList() is [var first, ..] late)
            area.PutFit(1, 1, area.Width - 1, $"NOT HERE IN TIME, on {Day(first.Needed)}: {string.Join(", ", late.Select(b => b.Unit.Tag))}", Tone.Stop);
        area.PutFit(1, 0, area.Width - 1, nobody ? "Nobody is chosen to call after handover yet: Enter on a contact says so."
            : "On the papers of the crew; who is called after handover stands in the binder.", nobody ? Tone.Caution : Tone.Dim);
        if (Search.Length == 0 && rows.All(r => r.Id.Length == 0))
        {
            area.Put(2, 2, "Nobody is noted yet.", Tone.Strong);
            area.PutWrapped(2, 4, 3, "n adds a contact by one line, N a visit:", Tone.Text);
            area.Put(4, 6, "Ash Example, crew, 555 0101", Tone.Key);
            area.Put(4, 7, $"{context.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)} Hang upstairs @Ash", Tone.Key);
            return;
        }
        var left = Math.Min(area.Width - LeastCard - 3, 90);
        DrawList(area.Part(0, 2, left, area.Height - 2), rows, context);
        for (var y = 2; y < area.Height; y++)
            area.Put(left, y, context.Glyphs.Down, Tone.Dim);
        if (Current(context) is { } one)
            DrawAbout(area.Part(left + 2, 2, area.Width - left - 2, area.Height - 2), one, context);
    }

    /// <summary>All rows where they fit; else what is to be ready gets what the rows above it leave, and has pages of its own below them.</summary>
    private void DrawList(Area list, IReadOnlyList<PeopleRow> rows, ScreenContext context)
    {
        var ready = rows.ToList().FindIndex(r => r.Heading == PeopleRows.Ready);
        if (ready < 0 || rows.Count <= list.Height)
        {
            DrawRows(list, rows, 0, rows.Count, At, context);
            return;
        }
        var lines = Math.Clamp(list.Height - ready, Math.Min(At > ready ? LeastReady : 1, list.Height), list.Height);
        // From below, the visits are what the days are held against.
        var above = At < ready ? At : rows.ToList().FindIndex(r => r.Visit is { State: VisitState.Planned }) is >= 0 and var visit ? visit : 0;
        DrawRows(list.Rows(0, list.Height - lines), rows, 0, ready, above, context);
        var below = list.Rows(list.Height - lines, lines);
        below.PutFit(0, 0, below.Width, $"{Text(rows[ready], context)}: {NumberText.Counted(rows.Count - ready - 1, "phase")}", Tone.Heading);
        DrawRows(below.Rows(1, lines - 1), rows, ready + 1, rows.Count - ready - 1, At, context);
    }

    private void DrawRows(Area list, IReadOnlyList<PeopleRow> rows, int from, int count, int seen, ScreenContext context)
    {
        foreach (var (y, line) in Paging.Rows(list, count, seen - from))
        {
            var (at, row) = (from + line, rows[from + line]);
            var current = at == At && row.Id.Length > 0;
            list.PutSpot(0, y, list.Width, current, () => row.Id.Length > 0 ? this with { RowId = row.Id, At = at } : null);
            list.PutFit(0, y, list.Width, Text(row, context), current ? Tone.Selected : ToneOf(row, context));
        }
    }

    private static string Text(PeopleRow row, ScreenContext context) => row switch
    {
        { Contact: { } c } => $"  {TextWidth.Fit(c.Show(ContactFacts.Telephone), 16).PadRight(16)} {Part(c)}{c.Name}",
        { Visit: { } v } => $"  {Day(v),-10}{Time(v)} {When(v, context)}{v.Name}{Who(v)}{(VisitPlan.Lacks(v).Contains(VisitFacts.Phase) ? ", no phase" : "")}",
        { Box: { } b } => $"  {b.Unit.Tag,-6} {(b.Reorder ? "REORDER: " : "")}{(row.TooLate is null ? "" : "TOO LATE: ")}{b.Why.In(context.House)}",
        { Due: { } d } => $"  {Day(d.By)} {d.Open.Phase.Full()}: {string.Join(", ", d.Open.Who)}",
        { Heading: PeopleRows.Contacts } when !context.House.Contacts.Any() => $" {row.Heading}: none yet; n adds one",
        { Heading: PeopleRows.Visits } when !context.House.Visits.Any() => $" {row.Heading}: none planned; N adds one",
        _ => $" {row.Heading}",
    };

    private static string Part(Contact contact) => contact.Show(ContactFacts.Part) is { Length: > 0 } part ? $"{part}: " : "";

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string TooLate(BoxTooLate late) => $"here on {Day(late.Comes)} at the earliest that is known, and needed on {Day(late.Needed)}";

    private static string Day(Visit visit) => visit.Show(VisitFacts.On) is { Length: > 0 } on ? on : "no day yet";

    private static string Time(Visit visit) => visit.Show(VisitFacts.From) is not { Length: > 0 } from ? ""
        : visit.Show(VisitFacts.Lasts) is { Length: > 0 } hours ? $" {from} for {hours} h" : $" {from}";

    private static string When(Visit visit, ScreenContext context) => visit.State switch
    {
        VisitState.Done => "done: ",
        VisitState.CalledOff => "called off: ",
        _ when Doubt(visit, context) is not null => "IS IT DONE? ",
        _ when context.AtOnce.Contains(visit.Id) => "AT ONE TIME: ",
        _ => "",
    };

    private static MayBeDone? Doubt(Visit visit, ScreenContext context) => VisitPlan.IsItDone(visit, context.OpenPhases, context.Today, context.Steps);

    private static string Who(Visit visit) => string.Join(", ", visit.Expected.Select(c => c.Name)) is { Length: > 0 } who ? $" ({who})" : "";

    private static Tone ToneOf(PeopleRow row, ScreenContext context) => row switch
    {
        { Visit: { State: VisitState.Planned } visit } => Doubt(visit, context) is null && !context.AtOnce.Contains(visit.Id) ? Tone.Text : Tone.Caution,
        { Visit: not null } => Tone.Dim,
        { Box: { } box } => box.Reorder || box.Overdue || row.TooLate is not null ? Tone.Caution : Tone.Text,
        { Due: { } due } => due.By < context.Today ? Tone.Caution : Tone.Text,
        { Contact: not null } => Tone.Text,
        _ => Tone.Heading,
    };

    private static void DrawAbout(Area area, PeopleRow row, ScreenContext context)
    {
        if (row.Contact is { } contact)
        {
            var y = area.PutWrapped(0, 0, 3, contact.Name, Tone.Strong);
            y = area.PutWrapped(0, y, 2, $"{ContactFacts.Part.Label}: {OrNone(contact.Show(ContactFacts.Part))}", Tone.Text);
            y = area.PutWrapped(0, y, 2, $"{ContactFacts.Telephone.Label}: {OrNone(contact.Show(ContactFacts.Telephone))}",
                contact.Telephone is null ? Tone.Caution : Tone.Text);
            if (contact.AfterHandover)
                y = area.PutWrapped(0, y, 2, "Called after handover.", Tone.Text);
            area.PutWrapped(0, y, 5, contact.Show(ContactFacts.Note), Tone.Dim);
        }
        else if (row.Visit is { } visit)
        {
            var y = area.PutWrapped(0, 0, 3, visit.Name, Tone.Strong);
            var state = visit.State switch { VisitState.Done => "done", VisitState.CalledOff => "called off", _ => "planned" };
            y = area.PutWrapped(0, y, 2, $"{Day(visit)}{Time(visit)}, {state}{(visit.Phase is null ? "" : $", {visit.Show(VisitFacts.Phase)}")}",
                Doubt(visit, context) is null ? Tone.Text : Tone.Caution);
            if (Doubt(visit, context) is { } doubt)
            {
                var why = doubt == MayBeDone.DayIsPast ? $"Was planned for {Day(visit)}" : $"Every step of {visit.Phase!.Value.Full()} is marked";
                y = area.PutWrapped(0, y, 5, $"{why}: is it done? Space says so, - calls it off, Enter gives it another day.", Tone.Caution);
            }
            var (expected, lacks) = (visit.Expected.ToList(), VisitPlan.Lacks(visit).ToList());
            if (lacks.Contains(VisitFacts.Phase))
                y = area.PutWrapped(0, y, 5, "It has no phase: nothing is asked for before it, and no order and no hours go by it. Enter says which.",
                    Tone.Caution);
            if (expected.Count == 0)
                y = area.PutWrapped(0, y, 2, "Nobody is expected yet: Enter says who.", Tone.Caution);
            foreach (var who in expected.Take(8))
                y = area.PutWrapped(0, y, 2, $"{who.Name} {who.Show(ContactFacts.Telephone)}".Trim(), Tone.Text);
            foreach (var twice in context.AtOnce[visit.Id])
                y = area.PutWrapped(0, y, 4, $"At the same time {twice.Who.Name} is expected at {twice.Other.Name},{Time(twice.Other)}.", Tone.Caution);
            foreach (var doubtful in VisitDoubt.Of(visit))
                y = area.PutWrapped(0, y, 4, doubtful.In(context.House), Tone.Caution);
            foreach (var before in VisitPlan.Before(visit, context.OpenPhases))
                y = area.PutWrapped(0, y, 3, $"Before it, {before.Phase.Full()}: {string.Join(", ", before.Who)}", Tone.Caution);
            if (VisitPlan.FirstVisit(context.House, Phase.Hang)?.Id == visit.Id
                && VisitPlan.BoxesTooLate(context.House, context.Today).ToList() is { Count: > 0 } late)
                y = area.PutWrapped(0, y, 4, $"Not here by then: {string.Join(", ", late.Select(b => $"{b.Unit.Tag} ({Day(b.Comes)})"))}", Tone.Caution);
            area.PutWrapped(0, y, 5, visit.Show(VisitFacts.Note), Tone.Dim);
        }
        else if (row.Due is { } ready)
        {
            var y = area.PutWrapped(0, 0, 2, $"{ready.Open.Phase.Full()}, by {Day(ready.By)}", Tone.Strong);
            y = area.PutWrapped(0, y, 8, string.Join(", ", ready.Open.Who), ready.By < context.Today ? Tone.Caution : Tone.Text);
            area.PutWrapped(0, y + 1, 6, "Back from the visits that come after it, the last day to order and the handover. How long fitting takes before that "
                + "is a detail of the house (0).", Tone.Dim);
        }
        else if (row.Box is { } box)
        {
            var y = area.PutWrapped(0, 0, 2, $"Box of {box.Unit.Tag}, {box.Unit.Window.Room?.FullName ?? "no room"}", Tone.Strong);
            y = area.PutWrapped(0, y, 4, box.Why.In(context.House), box.Reorder || box.Overdue ? Tone.Caution : Tone.Text);
            if (row.TooLate is { } late)
                y = area.PutWrapped(0, y, 4, $"Too late: {TooLate(late)}.", Tone.Stop);
            if (box.Unit.Show(UnitFacts.Acknowledgement) is { Length: > 0 } number)
                y = area.PutWrapped(0, y, 2, $"Maker's number: {number}", Tone.Text);
            foreach (var supplier in context.House.Contacts.Where(c => c.Part == ContactPart.Supplier).Take(3))
                y = area.PutWrapped(0, y, 2, $"{supplier.Name} {supplier.Show(ContactFacts.Telephone)}".Trim(), Tone.Text);
            area.PutWrapped(0, y + 1, 4, "Space: it is here. - : it did not arrive. Enter: the day on which it is expected, and on which it was reordered.",
                Tone.Dim);
        }
    }

    private static string OrNone(string shown) => shown.Length == 0 ? "not noted" : shown;
}
