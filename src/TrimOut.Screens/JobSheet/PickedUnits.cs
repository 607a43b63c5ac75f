using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>Marks the next step of many units at once.</summary>
internal static class PickedUnits
{
    /// <summary>
    /// Marks, in one change, every picked unit whose evidence is there. What can be the same for all, such as the cable, is asked for once; a reading never is.
    /// </summary>
    public static Transition MarkNext(JobSheetScreen s, ScreenContext context)
    {
        var waiting = JobSheetRows.Units(s, context).Where(u => s.Picked.Contains(u.Id))
            .Select(u => (Unit: u, Step: NextStep(s, u, context.Steps)))
            .Where(x => x.Step is not null).Select(x => (x.Unit, Step: x.Step!)).ToList();
        if (waiting.Count == 0)
            return Transition.Say(s, "Nothing is left to mark for the picked units.");
        if (Shared(waiting, context) is { } shared)
            return Transition.Type(s, AskOnce(s, shared.Fact, shared.Units, context.House));

        var ready = waiting.Where(x => Progress.IsComplete(x.Unit, x.Step, context.Steps)).ToList();
        var left = waiting.Except(ready).ToList();
        var reader = new Reader(context.House);
        var lacking = string.Join("; ", left.GroupBy(x => Arg.All(Progress.Missing(x.Unit, x.Step, context.Steps)).For(reader))
            .Select(g => $"{g.Key} of {Tags(g.Select(x => x.Unit))}"));
        if (ready.Count == 0)
            return Transition.Say(s, $"Nothing is marked. Still missing: {lacking}.");
        var what = string.Join("; ", ready.GroupBy(x => x.Step.Label).Select(g => $"{g.Key}: {Tags(g.Select(x => x.Unit))}"));
        var draft = ready.Select(x => MarkStep.Done(x.Unit, x.Step).Value).Aggregate((a, b) => a.And(b)) with { What = what };
        return new Transition(s with { Picked = [.. left.Select(x => x.Unit.Id)] }, new Ask.Save(draft, (screen, _) =>
            left.Count == 0 ? new Transition(screen) : Transition.Say(screen, $"Marked {ready.Count}. Still picked, as this is missing: {lacking}.")));
    }

    private static Step? NextStep(JobSheetScreen s, Unit unit, StepList steps) =>
        s.PhaseShown is { } phase ? steps.Asked(phase, unit).FirstOrDefault(x => unit.MarkOf(x) is null) : Progress.Next(unit, steps);

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

    private static Entry AskOnce(JobSheetScreen s, Fact fact, List<Unit> units, House house)
    {
        var name = $"{fact.Label} of {Tags(units)}";
        return new Entry(name, Offers.For(units[0], fact) ?? "", $"the same for all {units.Count}: {fact.Help} ({fact.HintFor(units[0].House)})", (text, now) =>
        {
            if (text.Trim().Length == 0)
                return new Refusal("Type what it is, or leave with Esc.");
            return units.Select(u => SetFact.Typed(now.House, Progress.Holder(now.House.FindUnit(u.Id)!, fact)!, fact, text)).All().Then<Transition>(drafts =>
            {
                var together = drafts.Aggregate((a, b) => a.And(b)) with { What = $"{name}: {text.Trim()}" };
                return new Transition(s, new Ask.Save(together, (screen, after) => MarkNext((JobSheetScreen)screen, after)));
            });
        })
        {
            Options = fact.Options(house),
            Echo = (text, now) => fact.ReadTyped(text, now.House).Then<string>(_ => $"the same for all {units.Count}"),
        };
    }
}
