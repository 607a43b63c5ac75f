using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Panels;

/// <summary>Keys of the panels.</summary>
internal static class PanelsKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PanelsScreen>("space", "Pick up / land",
            "Takes the run under the cursor in hand, and lands it on the output under the cursor; two runs change places.", TakeOrLand),
        new KeyAction<PanelsScreen>("t", "Type the output", "Lands the run under the cursor: panel and output typed.",
            (s, context) => TypeOutput(s, context, s.Current(context)!.Run!.Id))
            { Disabled = (s, context) => s.Current(context)?.Run is null ? "Move to a run first." : null },
        new KeyAction<PanelsScreen>("p", "Spread out", "Lands every waiting run so that the panels are loaded alike; landed runs stay.",
            (s, context) => AskOutputs(s, context, (screen, after) => SpreadOut((PanelsScreen)screen, after)) ?? SpreadOut(s, context)),
        new KeyAction<PanelsScreen>("delete", "Take off", "Takes the run under the cursor off its output.",
            (s, context) => Transition.Save(s, Landing.TakeOff(s.Current(context)!.Run!)))
            { Disabled = (s, context) => s.Current(context)?.Run is null ? "Move to a run first." : null, Also = ["backspace"] },
        new KeyAction<PanelsScreen>("n", "New panel", "Adds a panel.",
            (s, context) => Transition.Type(s, new Entry("Name of the panel", NextName(context.House), "short, as on its door: P1",
                (text, now) => AddItems.Named(now.House, ItemKind.Panel, text).Then<Transition>(d =>
                    new Transition(s, new Ask.Save(d, (screen, after) =>
                        AskOutputs(screen, after, (done, _) => new Transition(done)) ?? new Transition(screen))))))),
        new KeyAction<PanelsScreen>("enter", "Details", "All details of the panel or of the unit.",
            (s, context) => Transition.Open(s, FactsOf(s.Current(context)!, context.House)))
            { Disabled = (s, context) => s.Current(context) is null or { Run: null, Panel: null } ? "Move to a panel or a run first." : null },
        Filtering.Key<PanelsScreen>("outputs and runs", "panel, output, tag, room, label, or free"),
        .. Moves.Through<PanelsScreen>("row", Moved),
    ];

    /// <summary>With the cursor on a run, wherever it is now that its panel has outputs.</summary>
    private static PanelsScreen On(PanelsScreen s, ScreenContext context, string run) =>
        s with { Selected = Math.Max(0, s.Rows(context.House).ToList().FindIndex(r => r.Run?.Id == run)) };

    private static Transition TypeOutput(PanelsScreen s, ScreenContext context, string run)
    {
        var on = On(s, context, run);
        return AskOutputs(on, context, (screen, after) => TypeOutput((PanelsScreen)screen, after, run)) ?? Transition.Type(on, LandEntry(on, context));
    }

    private static Transition SpreadOut(PanelsScreen s, ScreenContext context) =>
        Landing.SpreadOut(context.House) is var spread && spread.Ok
            ? new Transition(s,
                new Ask.Confirm($"{spread.Value.What}?{Against(context.House, spread.Value)} p does it (undo takes it back), any other key leaves it.",
                    "p", Transition.Save(s, spread)))
            : Transition.Save(s, spread);

    /// <summary>
    /// Where panels hang and none is known to have an output, asks for what leads on: their number, or which type they are; null where nothing has to be asked.
    /// </summary>
    private static Transition? AskOutputs(IScreen s, ScreenContext context, Func<IScreen, ScreenContext, Transition> then)
    {
        if (context.House.Panels.IsEmpty || context.House.Panels.Any(p => p.Type?.Outputs is not null))
            return null;
        var panel = context.House.Panels[^1];
        var (item, fact) = panel.Type is { } type ? (type.Item, (Fact)PanelTypeFacts.Outputs) : (panel.Item, PanelFacts.Type);
        var entry = FactEntry.For(s, context.House, item, fact, then: then);
        return Transition.Type(s, entry with
        {
            Label = panel.Type is null ? entry.Label : $"Outputs of {panel.Name}, a {context.House.NameOf(item)}",
            Hint = $"Nothing lands on {panel.Name} before that is known. {entry.Hint}; Esc leaves it open",
        });
    }

    /// <summary>Which motors would land on a panel that does not give their volts, said before they are landed.</summary>
    private static string Against(House house, Draft draft)
    {
        var landed = draft.Edits.OfType<Edit.Put>().Select(p => p.Item).ToHashSet();
        var after = HouseLog.Preview(house, draft);
        var (wrong, by) = UncheckedValues.Read(after, house => new MotorOffSupply().Run(house).Where(r => landed.Contains(r.Subject.Id))
            .Select(r => (r.Subject, Found: r.Outcome as Outcome.Found)).Where(r => r.Found is not null).ToList());
        var more = wrong.Count > 2 ? $" {NumberText.Plain(wrong.Count - 2)} more." : "";
        return string.Concat(wrong.Take(2).Select(w => $" STOP {after.NameOf(w.Subject)}: {UncheckedValues.Marked(w.Found!.Message.In(after), by.Count > 0)}")) + more;
    }

    private static SheetScreen FactsOf(PanelRow row, House house) => SheetScreen.At(SheetOf.Holding(house, row.Run?.Item ?? row.Panel!.Item), house);

    private static PanelsScreen Moved(PanelsScreen s, ScreenContext context, int by) =>
        s with { Selected = PanelRows.Move(s.Rows(context.House), s.Selected, by) };

    private static Transition TakeOrLand(PanelsScreen s, ScreenContext context)
    {
        var row = s.Current(context);
        var carried = context.House.Runs.FirstOrDefault(r => r.Id == s.Carried);
        if (carried is null)
            return row?.Run is { } run ? new Transition(s with { Carried = run.Id }) : Transition.Say(s, "Move to a run and press Space to take it in hand.");
        if (AskOutputs(s, context, (screen, after) => new Transition(On((PanelsScreen)screen, after, carried.Id))) is { } ask)
            return ask;
        if (row?.Run?.Id == carried.Id)
            return Transition.Say(s with { Carried = null }, $"{carried.Name} put back.");
        return row is { Panel: { } panel, Output: { } output }
            ? Land(s with { Carried = null }, carried, panel, output)
            : Transition.Say(s, "Move to an output to land it there.");
    }

    private static Entry LandEntry(PanelsScreen s, ScreenContext context)
    {
        var run = s.Current(context)!.Run!;
        var only = context.House.Panels.Length == 1 ? context.House.Panels[0].Name + " " : "";
        return new Entry($"Land {run.Name} on", only, $"panel and output, such as {Example(context.House)}", (text, now) =>
        {
            var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            // The panel stands in the line already where there is only one; typed again it does no harm.
            if (words.Length == 3 && string.Equals(words[0], words[1], StringComparison.OrdinalIgnoreCase))
                words = words[1..];
            if (words.Length != 2 || !int.TryParse(words[1], NumberStyles.None, CultureInfo.InvariantCulture, out var output))
                return new Refusal($"Type the panel and the output, such as {Example(now.House)}.");
            if (now.House.Panels.FirstOrDefault(p => string.Equals(p.Name, words[0], StringComparison.OrdinalIgnoreCase)) is not { } panel)
                return new Refusal($"There is no panel {words[0]}. There are: {string.Join(", ", now.House.Panels.Select(p => p.Name))}.");
            return Land(s, now.House.Runs.First(r => r.Id == run.Id), panel, output);
        });
    }

    /// <summary>Lands a run; one that is there already is not moved without a question.</summary>
    private static Transition Land(PanelsScreen s, HomeRun run, Panel panel, int output)
    {
        var landed = Landing.Land(run, panel, output);
        if (!landed.Ok || panel.RunAt(output) is not { } there)
            return Transition.Save(s, landed);
        var state = PanelsScreen.DoneSoFar(there) is { Length: > 0 } known ? $", {known}" : "";
        var after = run.Output is null ? $"{run.Name} takes its place and {there.Name} is on no output" : $"{run.Name} and {there.Name} change places";
        var question = $"{there.Name} is on {panel.Name} output {output}{state}. y: {after}. Any other key leaves it.";
        return new Transition(s, new Ask.Confirm(question, Ask.Confirm.AlsoYes, Transition.Save(s, landed)));
    }

    private static string Example(House house) => $"{(house.Panels.FirstOrDefault()?.Name ?? "P1")} 4";

    private static string NextName(House house) => $"P{(house.Panels.Length + 1).ToString(CultureInfo.InvariantCulture)}";
}
