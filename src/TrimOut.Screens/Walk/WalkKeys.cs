using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.InService;
using TrimOut.Screens.People;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Walk;

/// <summary>Keys of the guided walk.</summary>
internal static class WalkKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<WalkScreen>("space", "Done", "Marks the step done and goes to the next one; missing evidence is asked for first.",
            (s, context) => MarkStepOf(s, context, (screen, after) => GoOn((WalkScreen)screen, after))) { Disabled = NoStep },
        new KeyAction<WalkScreen>("x", "Done, next unit", "Marks the step done and goes to the same step of the next unit.",
            (s, context) => MarkStepOf(s, context, (screen, after) => SameStep((WalkScreen)screen, after))) { Disabled = NoStep },
        new KeyAction<WalkScreen>("enter", "Evidence", "Types the step's evidence, or fixes it.", (s, context) => Evidence(s, context, 0))
            { Disabled = NoEvidence },
        new KeyAction<WalkScreen>("up", "Step before", "The step before; from the first one the last step of the one before.",
            (s, context) => new Transition(Stepped(s, context, -1))),
        new KeyAction<WalkScreen>("down", "Next step", "The next step; from the last one the first step of the next one.",
            (s, context) => new Transition(Stepped(s, context, 1))) { OnBar = false },
        new KeyAction<WalkScreen>("-", "Not needed", "Says that the step is not needed here, and why.", (s, context) => Transition.Type(s, NotNeeded(s)))
            { Disabled = NoStep },
        new KeyAction<WalkScreen>("h", "Hold timer", "Counts the seconds to hold the button, by the kit.",
            (s, context) => new Transition(s with { HoldSince = s.HoldSince is null ? context.Now : null }))
            { Disabled = NoHold },
        new KeyAction<WalkScreen>("right", "Next unit", "The same step of the next one.", (s, context) => new Transition(Moved(s, context, 1))),
        new KeyAction<WalkScreen>("left", "Unit before", "The same step of the one before.",
            (s, context) => new Transition(Moved(s, context, -1))) { OnBar = false },
        .. Moves.Farther<WalkScreen>("unit", Moved),
        new KeyAction<WalkScreen>("]", "Next phase", "Walks the next phase.",
            (s, context) => new Transition(s.In((Phase)Math.Min((int)s.Phase + 1, PhaseNames.All.Count - 1), context))),
        new KeyAction<WalkScreen>("[", "Phase before", "Walks the phase before.",
            (s, context) => new Transition(s.In((Phase)Math.Max((int)s.Phase - 1, 0), context))) { OnBar = false },
        UnitPhotosKeys.Opening<WalkScreen>(),
        Filtering.Key<WalkScreen>("those", "tag, kind, room or floor"),
        new KeyAction<WalkScreen>("delete", "Unmark", "Clears the mark of the step.",
            (s, context) => Transition.Save(s, MarkStep.Clear(s.Subject(context)!, s.Step(context)!)))
            { Disabled = NoStep, Also = ["backspace"], OnBar = false },
        new KeyAction<WalkScreen>("i", "Punch item", "Writes a punch item about this one.",
            (s, context) => Transition.Type(s, new Entry("To fix", "", "what is wrong, in a sentence",
            (text, now) => PunchList.Write(now.House, s.Subject(now)!.Item, text, s.Phase).Then<Transition>(d => Transition.Save(s, d)))))
                { Disabled = NoStep, OnBar = false },
        new KeyAction<WalkScreen>("d", "All details", "All details of this one.",
            (s, context) => Transition.Open(s, SheetScreen.At(SheetOf.Holding(context.House, s.Subject(context)!.Item), context.House)))
            { Disabled = NoStep, OnBar = false },
        PeopleKeys.Opening<WalkScreen>(),
        ServiceKeys.Opening<WalkScreen>((s, context) => s.Subject(context) is JobItself ? null : s.Subject(context)?.Item),
        new KeyAction<WalkScreen>("f", "Findings", "Goes to the field that fixes the worst finding.", (s, context) =>
            s.Subject(context) is { } subject && (subject is Unit unit ? UnitCard.Around(context, unit).FirstOrDefault()
                : context.Report.About(subject).FirstOrDefault(x => x.Open)) is { } finding
                ? Transition.Open(s, MendedAt.Of(context, finding.Found.Mends))
                : Transition.Say(s,
                    s.Subject(context) is Unit found ? UnitCard.NothingFound(context, found) : "Nothing wrong is known here.")) { OnBar = false },
    ];

    private static string? NoStep(WalkScreen s, ScreenContext context) => s.Step(context) is null ? "There is no step here." : null;

    private static string? NoHold(WalkScreen s, ScreenContext context) =>
        s.Subject(context) is not Unit unit || s.Step(context) is not { } step || StepCue.Of(step)?.Hold is not { } hold ? "No button is held for this step."
        : unit.Kind is not { } kind ? "No kind is chosen, so there is no sheet to go by."
        : StepCue.HoldOf(unit, step) is null ? $"{hold.Label} of {kind.Name} is not in the kit yet: ask the sheet." : null;

    private static string? NoEvidence(WalkScreen s, ScreenContext context) =>
        s.Step(context) is not { } step ? "There is no step here." : step.Evidence.IsEmpty ? "This step asks for no evidence. Space marks it done." : null;

    private static Transition MarkStepOf(WalkScreen s, ScreenContext context, Func<IScreen, ScreenContext, Transition> then)
    {
        var (subject, step) = (s.Subject(context)!, s.Step(context)!);
        if (subject.MarkOf(step) is not { } mark)
            return Marking.Mark(s with { HoldSince = null }, context, subject, step, then);
        // While this one has a step left nothing runs on, so that no answer typed for that one lands where nobody looked.
        if (context.Steps.Asked(s.Phase, subject).Any(x => subject.MarkOf(x) is null))
        {
            return Transition.Say(s, $"{subject.Name}, {step.Label}: {(mark.NotNeededBecause is null ? "done" : "said to be not needed")} already. "
                + "Up and Down go to its other steps, Right to the next one.");
        }
        var on = then(s, context);
        return on is { Ask: null, Screen: WalkScreen there }
            ? Transition.Say(there, $"{subject.Name} is done here. This is {there.Subject(context)!.Name}.") : on;
    }

    private static Transition GoOn(WalkScreen s, ScreenContext context)
    {
        var (subject, step) = WalkOrder.After(context, s.Phase, s.Subjects(context), s.SubjectId);
        return step is null
            ? Transition.Say(s, $"{s.Phase.Full()} is done for every one{Shown(s)}. "
                + (s.Phase == PhaseNames.All[^1] ? "It is the last phase." : "] goes on to the next phase."))
            : new Transition(s with { SubjectId = subject, StepId = step, HoldSince = null });
    }

    private static Transition SameStep(WalkScreen s, ScreenContext context)
    {
        var (subject, step) = WalkOrder.SameStep(context, s.Phase, s.Subjects(context), s.SubjectId, s.Step(context)!.Id);
        return subject == s.SubjectId
            ? Transition.Say(s, $"That step is done for every one{Shown(s)}.")
            : new Transition(s with { SubjectId = subject, StepId = step, HoldSince = null });
    }

    private static string Shown(WalkScreen s) => s.Search.Length > 0 ? " that is shown" : "";

    internal static WalkScreen Moved(WalkScreen s, ScreenContext context, int by)
    {
        var subjects = s.Subjects(context);
        var at = subjects.ToList().FindIndex(x => x.Id == s.SubjectId);
        if (subjects.Count == 0)
            return s;
        var to = subjects[Paging.Move(at, by, subjects.Count)];
        // The step stays, so that a key that follows is about the same one; as it does with x.
        var same = context.Steps.Open(s.Phase, to).FirstOrDefault(x => x.Id == s.Step(context)?.Id);
        return s with { SubjectId = to.Id, StepId = (same ?? WalkOrder.FirstOpen(context, to, s.Phase))?.Id, HoldSince = null };
    }

    private static WalkScreen Stepped(WalkScreen s, ScreenContext context, int by)
    {
        if (s.Subject(context) is not { } subject)
            return s;
        var steps = context.Steps.Open(s.Phase, subject).ToList();
        var to = steps.FindIndex(x => x.Id == s.Step(context)?.Id) + by;
        if (to >= 0 && to < steps.Count)
            return s with { StepId = steps[to].Id, HoldSince = null };
        var there = Moved(s, context, by);
        if (there.SubjectId == s.SubjectId)
            return s;
        var others = context.Steps.Open(s.Phase, there.Subject(context)!);
        return there with { StepId = (by < 0 ? others.Last() : others.First()).Id };
    }

    private static Entry NotNeeded(WalkScreen s) => new("Not needed because", "", "the reason, for whoever reads the binder",
        (text, context) => Reasons.Take(text, why => MarkStep.NotNeeded(s.Subject(context)!, s.Step(context)!, why).Then<Transition>(draft =>
            new Transition(s, new Ask.Save(draft, (screen, after) => GoOn((WalkScreen)screen, after))))));

    /// <summary>Asks for the step's facts one after the other, those that are there too.</summary>
    private static Transition Evidence(WalkScreen s, ScreenContext context, int from)
    {
        var (subject, step) = (s.Subject(context)!, s.Step(context)!);
        if (from >= step.Evidence.Length)
            return Transition.Say(s, subject.MarkOf(step) is { } mark
                ? $"That is all the evidence of this step, which was marked {(mark.NotNeededBecause is null ? "done" : "as not needed")} before. "
                    + "What is changed counts."
                : "That is all the evidence of this step. Space marks it done.");
        var fact = step.Evidence[from];
        if (!step.Wants(fact, subject))
            return Evidence(s, context, from + 1);
        if (Progress.Holder(subject, fact) is not { } holder)
            return Transition.Say(s, $"{subject.Name} has no home run to note {fact.Label} for.");
        var entry = FactEntry.For(s, context.House, holder, fact, then: (screen, after) => Evidence((WalkScreen)screen, after, from + 1));
        return Transition.Type(s, entry with
        {
            InPlace = $"{holder.Id}/{fact.Name}",
            AcceptAndNext = entry.Accept,
            Initial = entry.Initial.Length > 0 ? entry.Initial : Offers.For(subject, fact) ?? "",
        });
    }
}
