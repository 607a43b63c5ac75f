using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Walk;

/// <summary>The guided run through one phase: subject after subject, step after step, with the evidence that each asks for.</summary>
internal sealed record WalkScreen(Phase Phase, string? SubjectId, string? StepId, DateTimeOffset? HoldSince) : IFiltered, IAsked, ITicking
{
    public string Title => $"Walk: {Phase.Full()}";

    public string Search { get; init; } = "";

    /// <summary>Who walks through the phase, as far as the filter shows them: nobody else is walked to.</summary>
    public IReadOnlyList<Subject> Subjects(ScreenContext context) => WalkOrder.Subjects(context, Phase) is var all && Search.Length == 0 ? all
        : [.. all.Where(s => Filtering.Fits(TextOf(s), Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Subjects(context).Count, WalkOrder.Subjects(context, Phase).Count);

    public IScreen Searching(string search, ScreenContext context) => (this with { Search = search }).Fit(context);

    /// <summary>Those who walk are what the words narrow, and Up and Down go through steps.</summary>
    public string InTheList(string stroke) => stroke switch { "up" => "left", "down" => "right", _ => stroke };

    private static string TextOf(Subject subject) => subject is Unit unit
        ? $"{unit.Tag} {unit.Kind?.Name} {unit.Window.Room?.FullName}" : $"{subject.Name} {WordOf(subject)}";

    private static string WordOf(Subject subject) => subject is Panel ? "panel" : "house";

    public Unit? UnitAt(ScreenContext context) => Subject(context) as Unit;

    public AskedFigures? FiguresAt(ScreenContext context) => Subject(context) switch
    {
        Unit unit => new AskedFigures(unit.Tag, UnitFigures.Of(unit), Step(context)?.Evidence.FirstOrDefault()),
        Panel panel => new AskedFigures(panel.Name, PanelFigures.Of(panel), null),
        _ => null,
    };

    public IReadOnlyList<IKeyAction> Keys => WalkKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [Marked, Open, Offered, .. FindingSigns.All, .. DrawingSigns.Window];

    public bool Ticking => HoldSince is not null;

    public DateTimeOffset? EndsAt(ScreenContext context) =>
        HoldSince is { } since && Subject(context) is Unit unit && Step(context) is { } step && StepCue.HoldOf(unit, step) is { } hold ? since + hold : null;

    /// <summary>At the first thing left to do in the earliest phase that has any.</summary>
    public static WalkScreen At(ScreenContext context) =>
        At(context, PhaseNames.All.FirstOrDefault(p => !Progress.Of(context.House, p, context.Steps).Complete, Phase.Handover), null);

    /// <summary>
    /// From the job sheet the phase that was walked last, as long as it is not done; else the one that is shown there; where none is, and from another screen,
    /// the phase that the unit under the cursor is in. It begins with that unit.
    /// </summary>
    public static IScreen From(ScreenContext context, IScreen screen)
    {
        if (screen is WalkScreen walk)
            return walk;
        var unit = (screen as IAsked)?.UnitAt(context);
        var sheet = screen as JobSheet.JobSheetScreen;
        if (sheet?.Walked is { } last && !Done(last))
            return At(context, last, unit?.Id);
        if (sheet?.Walked is not null && (sheet.PhaseShown is not { } shown || Done(shown)))
            return At(context);
        var phase = sheet?.PhaseShown ?? (unit is null ? null : Progress.Current(unit, context.Steps));
        return phase is { } walked ? At(context, walked, unit?.Id) : At(context);

        bool Done(Phase phase) => Progress.Of(context.House, phase, context.Steps).Complete;
    }

    public static WalkScreen At(ScreenContext context, Phase phase, string? subjectId) => new WalkScreen(phase, subjectId, null, null).Begun(context);

    /// <summary>At a step of something; null where it does not walk through that step.</summary>
    public static WalkScreen? OnStep(ScreenContext context, Step step, string subjectId)
    {
        var walk = At(context, step.Phase, subjectId) with { StepId = step.Id };
        return walk.SubjectId == subjectId && walk.Step(context)?.Id == step.Id ? walk : null;
    }

    public string? TypesBy(ScreenContext context) => Step(context) is { Evidence.IsEmpty: false } ? "enter" : null;

    /// <summary>The same walk through another phase, with the filter as long as it shows anybody there.</summary>
    public WalkScreen In(Phase phase, ScreenContext context)
    {
        var there = this with { Phase = phase, HoldSince = null };
        return there.Subjects(context).Count == 0 ? At(context, phase, SubjectId) : there.Begun(context);
    }

    private WalkScreen Begun(ScreenContext context)
    {
        var subjects = Subjects(context);
        var subject = subjects.FirstOrDefault(s => s.Id == SubjectId) ?? subjects.FirstOrDefault(s => !Progress.Of(s, Phase, context.Steps).Complete)
            ?? subjects.FirstOrDefault();
        return this with { SubjectId = subject?.Id, StepId = subject is null ? null : WalkOrder.FirstOpen(context, subject, Phase)?.Id };
    }

    public Subject? Subject(ScreenContext context) => Subjects(context).FirstOrDefault(s => s.Id == SubjectId);

    public Step? Step(ScreenContext context) =>
        Subject(context) is { } subject && context.Steps.Open(Phase, subject).ToList() is var steps
            ? steps.Find(s => s.Id == StepId) ?? steps.FirstOrDefault()
            : null;

    public IScreen Fit(ScreenContext context) => Subject(context) is null ? (this with { SubjectId = null, HoldSince = null }).Begun(context) : this;

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var subjects = Subjects(context);
        if (subjects.Count == 0 && Search.Length > 0)
            return;
        if (subjects.Count == 0)
        {
            area.PutWrapped(2, 1, 3, "Nothing walks through this phase yet. Add windows on the job sheet (1) with n.", Tone.Strong);
            return;
        }
        var left = Math.Min(26, area.Width / 3);
        DrawSubjects(area.Part(0, 0, left, area.Height), subjects, context);
        for (var y = 0; y < area.Height; y++)
            area.Put(left, y, context.Glyphs.Down, Tone.Dim);
        var main = area.Part(left + 2, 0, area.Width - left - 2, area.Height);
        if (Subject(context) is not { } subject)
            return;
        if (area.Width < LeastForPicture)
        {
            DrawSubject(main, subject, context, typing, pictured: false);
            return;
        }
        DrawSubject(main.Part(0, 0, Steps, main.Height), subject, context, typing, pictured: true);
        DrawPicture(main.Part(Steps + 1, 0, main.Width - Steps - 1, main.Height), subject, context);
    }

    /// <summary>From here on there is room for a picture beside the steps.</summary>
    private const int LeastForPicture = 120;

    private const int Steps = 60;

    /// <summary>What helps with the step at hand: the window, the roll or the way of the cable; of a panel its outputs.</summary>
    private void DrawPicture(Area area, Subject subject, ScreenContext context)
    {
        if (subject is Panel panel)
            PanelDrawing.Draw(area, panel, context.Glyphs, null, run => FindingSigns.AnyStop(UnitCard.Around(context, run.Unit)));
        else if (subject is Unit unit)
            Pictures.Draw(area.Rows(0, Math.Min(MostPicture, area.Height)), Pictures.For(Step(context)?.Evidence.FirstOrDefault()), unit, context.Glyphs);
        else
            HouseCard.Draw(area, context);
    }

    private const int MostPicture = 24;

    private static readonly Sign Marked = new(g => g.Done, "this step is done, or said to be not needed");

    private static readonly Sign Open = new(g => g.Nothing, "this step is not done yet");

    private static readonly Sign Offered = new(_ => "+",
        "this step is offered: it came with a later version, when the phase was complete already, and nobody waits for it");

    private static Sign Mark(ScreenContext context, Subject subject, Step step) =>
        subject.MarkOf(step) is not null ? Marked : context.Steps.IsAsked(step, subject) ? Open : Offered;

    private void DrawSubjects(Area area, IReadOnlyList<Subject> subjects, ScreenContext context)
    {
        var sum = subjects.Aggregate(default(Progress), (p, s) => p + Progress.Of(s, Phase, context.Steps));
        area.PutFit(0, 0, area.Width, string.Create(CultureInfo.InvariantCulture, $" {Phase.Full()} {sum.Done}/{sum.Total}"), Tone.Heading);
        var list = area.Rows(1, area.Height - 1);
        var selected = subjects.ToList().FindIndex(s => s.Id == SubjectId);
        foreach (var (y, at) in Paging.Rows(list, subjects.Count, selected, at => WalkKeys.Moved(this, context, at - selected)))
        {
            var subject = subjects[at];
            var tone = at == selected ? Tone.Selected : Tone.Text;
            var marks = string.Concat(context.Steps.Open(Phase, subject).Select(s => Mark(context, subject, s).Drawn(context.Glyphs)));
            list.PutFit(0, y, list.Width, $"  {subject.Name}", tone);
            FindingSigns.Put(list, 0, y, context.Report.About(subject), context.Glyphs, tone);
            list.Put(Math.Max(9, list.Width - TextWidth.Of(marks) - 1), y, marks, tone);
        }
    }

    private void DrawSubject(Area area, Subject subject, ScreenContext context, Typing? typing, bool pictured)
    {
        var what = subject is Unit unit
            ? $"{unit.Kind?.Name ?? "no kind yet"}, {unit.Window.Room?.FullName ?? "no room yet"}{Reach(unit)}"
            : WordOf(subject);
        var x = area.Put(0, 0, subject.Name, Tone.Strong);
        area.PutFit(x, 0, area.Width - x, "  " + what, Tone.Dim);
        DrawCounts(area.Rows(1, 1), subject, context);
        var y = 2;
        foreach (var step in context.Steps.Open(Phase, subject))
        {
            if (y >= area.Height)
                return;
            var current = step.Id == Step(context)?.Id;
            area.PutSpot(0, y, area.Width, current, () => this with { StepId = step.Id, HoldSince = null });
            var mark = subject.MarkOf(step);
            var sign = Mark(context, subject, step);
            var said = mark?.NotNeededBecause is { } why ? $" (not needed: {why})"
                : mark?.Although is { } although ? Although(subject, step, although, context) : sign == Offered ? " (offered, not asked)" : "";
            area.PutFit(0, y, area.Width, $" {sign.Drawn(context.Glyphs)} {step.Label}{said}",
                current ? Tone.Selected : mark is null ? Tone.Text : context.Good);
            y++;
            if (current)
                y = DrawStep(area, y, subject, step, context, typing);
        }
        y++;
        if (HoldSince is { } since && subject is Unit held && Step(context) is { } at && StepCue.HoldOf(held, at) is { } hold)
        {
            HoldTimer.Draw(area.Rows(y, area.Height - y), hold, context.Now - since, context.Glyphs);
            return;
        }
        foreach (var finding in (subject is Unit walked ? UnitCard.Around(context, walked) : context.Report.About(subject).Where(f => f.Open))
            .OrderBy(f => !FindingSigns.IsStop(f)).ThenBy(f => f.Check.Phase != Phase).Take(3))
        {
            if (y < area.Height)
                y = UnitCard.Put(area, y, finding, context);
        }
        if (!pictured && subject is Unit of && area.Height - y > 8)
            WindowDrawing.Draw(area.Rows(y + 1, Math.Min(16, area.Height - y - 1)), of, context.Glyphs);
    }

    /// <summary>Why a step was marked although something spoke against it, and whether anything still does; the reason stays in the history.</summary>
    private static string Although(Subject subject, Step step, string reason, ScreenContext context) =>
        StepGuard.Against(subject, step, context.Report, context.Steps).IsEmpty ? " (nothing speaks against it any more)" : $" (although: {reason})";

    /// <summary>How much is wrong with the unit, or how many checks wait, above its steps: what is said of it below may find no room.</summary>
    private static void DrawCounts(Area line, Subject subject, ScreenContext context)
    {
        var x = 0;
        foreach (var same in context.Report.About(subject).Where(f => f.Open).GroupBy(f => f.Check.Severity).OrderBy(g => g.Key))
        {
            var count = string.Create(CultureInfo.InvariantCulture, $"{same.Count()} {UnitCard.WordOf(same.Key)}");
            x = line.Put(x, 0, count, UnitCard.ToneOf(same.Key)) + 2;
        }
        if (x > 0)
            line.PutFit(x, 0, line.Width - x, "f goes to the worst", Tone.Dim);
        else if (subject is Unit unit && WaitingLine.Fit(context.Report, unit, line.Width) is { Length: > 0 } waiting)
            line.PutFit(0, 0, line.Width, waiting, Tone.Caution);
    }

    private static int DrawStep(Area area, int y, Subject subject, Step step, ScreenContext context, Typing? typing)
    {
        y = area.PutWrapped(4, y, 3, step.Cue, Tone.Dim);
        if (subject is Unit { Run.Cable: { PlusColour: not null } cable } unit && step is { Phase: Phase.Power })
            y = area.PutWrapped(4, y, 2, UncheckedValues.Marked(unit, u => $"{cable.Name}: {CableType.Joined(u.Run?.Cable)}."), Tone.Note);
        if (subject is Unit cued && StepCue.Of(step) is { } cue)
            y = DrawCue(area, y, cued, step, cue, typing);
        var asked = context.Steps.EvidenceOf(step, subject).ToHashSet();
        foreach (var fact in step.Evidence.Where(f => step.Wants(f, subject)))
        {
            var holder = Progress.Holder(subject, fact);
            var shown = holder is null ? "" : fact.ShowOf(holder, context.House);
            area.PutFit(4, y, 22, fact.Label, Tone.Text);
            if (holder is not null && typing?.Entry.InPlace == $"{holder.Id}/{fact.Name}")
            {
                area.PutFit(27, y, area.Width - 27, typing.Text, Tone.Field);
                area.PutSlot(27, y, area.Width - 27);
            }
            else
            {
                var (text, tone) = shown.Length > 0
                    ? (shown, Tone.Strong)
                    : asked.Contains(fact)
                    ? ("missing", Tone.Caution)
                    : ("offered, not asked", Tone.Dim);
                area.PutFit(27, y, area.Width - 27, text, tone);
            }
            y++;
        }
        if (context.Steps.AlsoMissing(step, subject) is { } more)
            area.PutFit(4, y++, area.Width - 4, $"missing: {more.In(subject.House)}", Tone.Caution);
        return y;
    }

    private static int DrawCue(Area area, int y, Unit unit, Step step, StepCue cue, Typing? typing)
    {
        if (unit.Kind is not { } kind)
            return area.PutWrapped(4, y, 2, "No kind is chosen, so there is no sheet to go by.", Tone.Caution);
        var (said, by) = UncheckedValues.Read(unit, u => cue.Said(u.Kind!));
        if (said.Length > 0)
        {
            var marked = UncheckedValues.Marked(said, by.Count > 0);
            y = area.PutWrapped(4, y, 4, typing is null && StepCue.HoldOf(unit, step) is not null ? $"{marked} h counts." : marked, Tone.Note);
        }
        var blank = cue.Blank(kind).ToList();
        return blank.Count == 0 ? y
            : area.PutWrapped(4, y, 3, $"Not in the kit yet, ask the sheet of {kind.Name}: {string.Join(", ", blank.Select(f => f.Label))}.", Tone.Caution);
    }

    private static string Reach(Unit unit) => unit.Window.Reach is { } reach and not Core.Facts.Reach.Floor ? $", from a {KebabCase.Of(reach)}" : "";
}
