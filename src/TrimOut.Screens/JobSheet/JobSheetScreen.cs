using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;

namespace TrimOut.Screens.JobSheet;

/// <summary>Home: the phases with their sums, all units by room with one mark per phase, and the selected unit's card.</summary>
internal sealed record JobSheetScreen(string? UnitId, Phase? PhaseShown, bool OnlyOpen, bool OnlyStops, string Search) : IFiltered, IAsked, ITable
{
    /// <summary>Lines for what would be marked of the picked units.</summary>
    private const int MostPicked = 5;

    /// <summary>A screen of fewer lines has its phases in one line, to leave the others to the units.</summary>
    private const int LeastForNames = 27;

    /// <summary>Whether the phases are shown in the other way: with their names on a low screen, in one line on a high one.</summary>
    public bool OtherHead { get; init; }

    /// <summary>The phase that was walked last, where the walk was left; null once another is shown.</summary>
    public Phase? Walked { get; init; }

    /// <summary>As it stands when one comes back from a walk: on the unit that was walked last, where it is shown.</summary>
    public JobSheetScreen After(WalkScreen walk, ScreenContext context) => this with
    {
        Walked = walk.Phase,
        UnitId = walk.UnitAt(context) is { } unit && JobSheetRows.Ids(this, context).Contains(unit.Id) ? unit.Id : UnitId,
    };

    /// <summary>The order of the rows.</summary>
    public JobSheetOrder Order { get; init; }

    /// <summary>Units picked to be marked together.</summary>
    public ImmutableHashSet<string> Picked { get; init; } = [];

    public string Title => "Job sheet";

    public Unit? UnitAt(ScreenContext context) => Current(context);

    public IReadOnlyList<IKeyAction> Keys => JobSheetKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [.. PhaseMarks.All, .. DrawingSigns.Window];

    /// <summary>Whether something may be hidden.</summary>
    public bool Filters => OnlyOpen || OnlyStops || Search.Length > 0;

    public bool FrameSays => false;

    public (int Shown, int All) Count(ScreenContext context) =>
        (JobSheetRows.Ids(this, context).Count, context.House.Units.Length + context.House.Windows.Count(w => w.LeftOut));

    public IScreen Searching(string search, ScreenContext context) => (this with { Search = search }).Fit(context);

    public IScreen Unfiltered(ScreenContext context) => (this with { Search = "", OnlyOpen = false, OnlyStops = false }).Fit(context);

    public static JobSheetScreen At(ScreenContext context) => new(context.House.Units.FirstOrDefault()?.Id, null, false, false, "");

    public Unit? Current(ScreenContext context) => UnitId is null ? null : context.House.FindUnit(UnitId);

    /// <summary>The window under the cursor that was left out; null when the cursor is on a unit.</summary>
    public Window? LeftOut(ScreenContext context) => UnitId is not null && context.House.FindWindow(UnitId) is { LeftOut: true } window ? window : null;

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) =>
        [["Unit", "Kind", "Room", .. PhaseNames.All.Select(p => p.Full()), "Stops", "Next step"],
            .. JobSheetRows.Of(this, context).Where(r => r.Id is not null).Select(r => r.Unit is { } unit ? Cells(unit, context) : [r.Text.Trim()])];

    private static IReadOnlyList<string> Cells(Unit unit, ScreenContext context) =>
        [unit.Tag, unit.Kind?.Name ?? "", unit.Window.Room?.FullName ?? "", .. PhaseNames.All.Select(p => Progress.Of(unit, p, context.Steps)).Select(p =>
            p.Total == 0 ? "" : $"{NumberText.Plain(p.Done)} of {NumberText.Plain(p.Total)}"),
            NumberText.Plain(context.Report.About(unit).Count(FindingSigns.IsStop)), Progress.Next(unit, context.Steps)?.Label ?? "complete"];

    public IScreen Fit(ScreenContext context)
    {
        var seen = JobSheetRows.Ids(this, context);
        if (UnitId is not null && seen.Contains(UnitId))
            return this;
        // A unit whose window was left out became that window's row, and the other way round.
        var other = UnitId is null ? null : context.House.FindWindow(UnitId)?.Units.FirstOrDefault()?.Id ?? context.House.Find(UnitId)?.Under;
        return this with { UnitId = other is not null && seen.Contains(other) ? other : seen.FirstOrDefault() };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        HeadLine.Draw(area.Rows(0, 1), context);
        var folded = area.Height < LeastForNames != OtherHead;
        var top = 2;
        if (folded)
            Ribbon.DrawFolded(area.Rows(1, 1), context, PhaseShown);
        else
            top = 1 + Ribbon.Draw(area.Rows(1, area.Height - 1), context, PhaseShown);
        if (context.House.Windows.IsEmpty)
        {
            DrawEmpty(area.Rows(top, area.Height - top), context.House);
            return;
        }
        if (PickedUnits.InWords(this, context) is { Length: > 0 } picked)
            top = area.PutWrapped(1, top, MostPicked, picked, Tone.Strong);
        var body = area.Rows(top, area.Height - top);
        var columns = JobSheetColumns.For(context.House, body.Width);
        var left = columns.Width;
        DrawUnits(body.Part(0, 0, left, body.Height), context, columns, folded ? 1 : 2);
        for (var y = 0; y < body.Height; y++)
            body.Put(left, y, context.Glyphs.Down, Tone.Dim);
        var card = body.Part(left + 2, 0, body.Width - left - 2, body.Height);
        if (Current(context) is { } unit)
            UnitCard.Draw(card, unit, context, phase: PhaseShown);
        else if (LeftOut(context) is { } leftOut)
            LeftOutCard.Draw(card, leftOut);
        else
            card.PutWrapped(0, 0, 3, "No unit fits the filter. Esc or * shows all again.", Tone.Strong);
    }

    private void DrawUnits(Area area, ScreenContext context, JobSheetColumns columns, int heading)
    {
        var rows = JobSheetRows.Of(this, context);
        var y = 0;
        if (JobSheetRows.FilterText(this) is { Length: > 0 } filter)
            y = area.PutWrapped(1, y, 3, $"Shown: {filter}{JobSheetRows.HiddenText(this, context)} (* shows all)", Tone.Strong);
        columns.DrawHeading(area.Rows(y, heading), PhaseShown);
        var list = area.Rows(y + heading, area.Height - y - heading);
        var selected = rows.ToList().FindIndex(r => r.Id is { } id && id == UnitId);
        if (rows.Count < list.Height)
            list.PutFit(1, list.Height - 1, list.Width - 1, PhaseMarks.Legend(context.Glyphs), Tone.Dim);
        foreach (var (line, at) in Paging.Rows(list, rows.Count, selected, at => rows[at].Id is { } id ? this with { UnitId = id } : null))
            DrawRow(list.Rows(line, 1), rows[at], context, columns, at == selected, rows[at].Unit is { } u && Picked.Contains(u.Id));
    }

    private void DrawRow(Area line, JobSheetRow row, ScreenContext context, JobSheetColumns columns, bool selected, bool picked)
    {
        if (row.Unit is not { } unit)
        {
            line.PutFit(0, 0, line.Width, row.Text, selected ? Tone.Selected : row.IsRoom ? Tone.Heading : Tone.Dim);
            return;
        }
        var tone = selected ? Tone.Selected : Tone.Text;
        line.PutFit(0, 0, line.Width, "", tone);
        line.Put(0, 0, picked ? context.Glyphs.Arrow : " ", tone);
        line.PutFit(JobSheetColumns.Tag, 0, columns.Kind - JobSheetColumns.Tag - 1, unit.Tag, tone);
        line.PutFit(columns.Kind, 0, columns.Marks - columns.Kind - 1, unit.Kind?.Name ?? "-", tone);
        var findings = context.Report.About(unit).Where(f => f.Open).ToList();
        foreach (var phase in PhaseNames.All)
        {
            var mark = PhaseMarks.Of(unit, phase, findings, context.Steps);
            line.Put(columns.Marks + (int)phase, 0, mark.Drawn(context.Glyphs), mark == PhaseMarks.Stop ? Tone.Stop : tone);
        }
        FindingSigns.PutCounts(line, columns.Counts, 0, findings, context.Glyphs, selected ? tone : null);
        if (columns.Next < line.Width)
        {
            var done = PhaseShown is null ? "complete" : "done in this phase";
            line.PutFit(columns.Next, 0, line.Width - columns.Next, NextMark.Of(this, unit, context.Steps)?.Label ?? done, selected ? tone : Tone.Dim);
        }
    }

    private static void DrawEmpty(Area area, House house)
    {
        area.Put(2, 1, "This house has no window yet.", Tone.Strong);
        area.Put(2, 3, "Press n and type one line for each window as you walk, such as:", Tone.Text);
        area.Put(4, 5, $"W01 roller left {QuickWindow.SizeExample(house)} SW floor inside panel @Kitchen", Tone.Key);
        area.PutWrapped(2, 7, 3,
            "What you leave out carries over from the window before: after the first, a tag and what differs is enough; 2 units where two hang in one "
                + "opening. A new room is made as you name it.",
            Tone.Text);
        area.PutWrapped(2, 11, 3, "Left and right are always as seen from inside the room, facing the window.", Tone.Dim);
        string?[] open =
        [
            SheetValues.Blanks(house) is > 0 and var blanks ? $"{NumberText.Plain(blanks)} blanks" : null,
            SheetValues.NotHeld(house) is > 0 and var unread ? $"{NumberText.Counted(unread, "value")} that nobody checked" : null,
        ];
        if (open.OfType<string>().ToList() is { Count: > 0 } said)
            area.PutWrapped(2, 13, 3,
                $"The kit has {string.Join(" and ", said)}: what no sheet was read for is not checked. 9 goes to the kit.", Tone.Caution);
    }
}
