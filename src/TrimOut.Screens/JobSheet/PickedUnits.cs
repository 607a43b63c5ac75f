using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>Marks the next step of many units at once.</summary>
internal static class PickedUnits
{
    /// <summary>So many are told in full; a question that is cut tells nothing.</summary>
    private const int MostTold = 3;

    /// <summary>The picked units with the step that is marked of each; those that have none left are not among them.</summary>
    public static List<(Unit Unit, Step Step)> Marks(JobSheetScreen s, ScreenContext context) =>
        [.. JobSheetRows.Units(s, context).Where(u => s.Picked.Contains(u.Id))
            .Select(u => (Unit: u, Step: NextMark.Of(s, u, context.Steps)))
            .Where(x => x.Step is not null).Select(x => (x.Unit, Step: x.Step!))];

    /// <summary>What Space would do now, said before it is pressed; empty where nothing is picked.</summary>
    public static string InWords(JobSheetScreen s, ScreenContext context) =>
        s.Picked.IsEmpty ? ""
        : Marks(s, context) is { Count: > 0 } marks ? $"{NumberText.Counted(s.Picked.Count, "unit")} picked. Space marks {NextMark.InWords(marks)}."
        : $"{NumberText.Counted(s.Picked.Count, "unit")} picked. Nothing is left to mark.";

    /// <summary>Marks the picked units; asks first where they stand at unlike steps, or one would begin a later phase.</summary>
    public static Transition MarkNext(JobSheetScreen s, ScreenContext context)
    {
        var waiting = Marks(s, context);
        return waiting.Count == 0 ? Transition.Say(s, "Nothing is left to mark for the picked units.")
            : waiting.Select(x => x.Step).Distinct().Count() == 1
                && (s.PhaseShown is not null || !waiting.Exists(x => NextMark.RunsAhead(x.Unit, x.Step) is not null))
            ? MarkAll(s, context, waiting)
            : new Transition(s, new Ask.Confirm($"y marks, any other key leaves them: {NextMark.InWords(waiting)}.", Ask.Confirm.AlsoYes,
                MarkAll(s, context, waiting)));
    }

    /// <summary>
    /// Marks, in one change, every unit whose evidence is there. What can be the same for all, such as the cable, is asked for once; a reading never is.
    /// Where something speaks against a mark, one reason is asked for.
    /// </summary>
    private static Transition MarkAll(JobSheetScreen s, ScreenContext context, List<(Unit Unit, Step Step)> waiting)
    {
        if (Shared(waiting, context) is { } shared)
            return Transition.Type(s, AskOnce(s, shared.Fact, shared.Units, context.House, waiting));

        var ready = waiting.Where(x => Progress.IsComplete(x.Unit, x.Step, context.Steps)).ToList();
        if (ready.Count == 0)
            return Transition.Say(s, $"Nothing is marked. Still missing: {Lacking(waiting, context)}.");
        var against = ready.Select(x => (x.Unit, x.Step, Against: StepGuard.Against(x.Unit, x.Step, context.Report, context.Steps)))
            .Where(x => !x.Against.IsEmpty).ToList();
        return against.Count == 0 ? Save(s, context, waiting, ready, null) : Transition.Type(s, Marking.WhyAllTheSame(
            NumberText.Counted(against.Count, "unit"), InWords([.. against.GroupBy(x => string.Join(" ", x.Against), x => x.Unit)]),
            Marking.OfferedFor(against[0].Step, context.House),
            (reason, now) => Save(s, now, waiting, ready, reason)));
    }

    /// <summary>What speaks against the marks, once for all units that it is the same of; of many, the first, and how many more there are.</summary>
    private static string InWords(List<IGrouping<string, Unit>> against)
    {
        var told = string.Join(" ", against.Take(MostTold).Select(g => $"{Tags(g)}: {g.Key}"));
        var more = against.Skip(MostTold).SelectMany(g => g).ToList();
        return more.Count == 0 ? told : $"Against {NumberText.Counted(more.Count, "more unit")} something else speaks too: {Tags(more)}. {told}";
    }

    private static Transition Save(JobSheetScreen s, ScreenContext context, List<(Unit Unit, Step Step)> waiting, List<(Unit Unit, Step Step)> ready,
        string? although)
    {
        var left = waiting.Except(ready).ToList();
        var marked = ready.Select(x => MarkStep.InOrder(x.Unit, x.Step, context.Report, context.Steps, although)).All();
        if (!marked.Ok)
            return Transition.Say(s, marked.Reason!);
        var what = string.Join("; ", ready.GroupBy(x => x.Step.Label).Select(g => $"{g.Key}: {Tags(g.Select(x => x.Unit))}"));
        var draft = marked.Value.Aggregate((a, b) => a.And(b)) with { What = although is null ? what : $"{what}, all the same. Reason: {although}" };
        var lacking = Lacking(left, context);
        return new Transition(s with { Picked = [.. left.Select(x => x.Unit.Id)] }, new Ask.Save(draft, (screen, _) =>
            left.Count == 0 ? new Transition(screen) : Transition.Say(screen, $"Marked {ready.Count}. Still picked, as this is missing: {lacking}.")));
    }

    private static string Lacking(List<(Unit Unit, Step Step)> units, ScreenContext context)
    {
        var reader = new Reader(context.House);
        return string.Join("; ", units.GroupBy(x => Arg.All(Progress.Missing(x.Unit, x.Step, context.Steps)).For(reader))
            .Select(g => $"{g.Key} of {Tags(g.Select(x => x.Unit))}"));
    }

    /// <summary>The same marks on the units as they are now.</summary>
    private static List<(Unit Unit, Step Step)> Now(List<(Unit Unit, Step Step)> marks, ScreenContext context) =>
        [.. marks.Select(m => (Unit: context.House.FindUnit(m.Unit.Id), m.Step)).Where(m => m.Unit is not null).Select(m => (m.Unit!, m.Step))];

    private static string Tags(IEnumerable<Unit> units) => string.Join(", ", units.Select(u => u.Tag));

    /// <summary>A fact with a list of choices that more than one of them lacks.</summary>
    private static (Fact Fact, List<Unit> Units)? Shared(List<(Unit Unit, Step Step)> waiting, ScreenContext context)
    {
        var asked = waiting.SelectMany(x => context.Steps.EvidenceOf(x.Step, x.Unit).Select(Fact => (Fact, x.Unit))).ToList();
        foreach (var fact in asked.Select(a => a.Fact).Distinct().Where(f => !f.IsReading && f.Options(context.House).Count > 0))
        {
            var lacking = asked.Where(a => a.Fact == fact && Progress.Holder(a.Unit, fact) is { } holder && holder.Latest(fact.Name)?.Stored is null)
                .Select(a => a.Unit).ToList();
            if (lacking.Count > 1)
                return (fact, lacking);
        }
        return null;
    }

    private static Entry AskOnce(JobSheetScreen s, Fact fact, List<Unit> units, House house, List<(Unit Unit, Step Step)> waiting)
    {
        var name = $"{fact.Label} of {Tags(units)}";
        return new Entry(name, Offers.For(units[0], fact) ?? "", $"the same for all {units.Count}: {fact.Help} ({fact.HintFor(units[0].House)})", (text, now) =>
        {
            if (text.Trim().Length == 0)
                return new Refusal("Type what it is, or leave with Esc.");
            var each = units.Select(u => SetFact.Typed(now.House, Progress.Holder(now.House.FindUnit(u.Id)!, fact)!, fact, text, today: now.Today));
            return each.All().Then<Transition>(drafts =>
            {
                var all = drafts.Aggregate((a, b) => a.And(b));
                // A part that each of them would add is added once.
                var together = all with { What = $"{name}: {text.Trim()}", Edits = [.. all.Edits.Distinct()] };
                return new Transition(s, new Ask.Save(together, (screen, after) => MarkAll((JobSheetScreen)screen, after, Now(waiting, after))));
            });
        })
        {
            Options = fact.Options(house),
            Echo = (text, now) => fact.ReadTyped(text, now.House, now.Today).Then<string>(_ => $"the same for all {units.Count}"),
        };
    }
}
