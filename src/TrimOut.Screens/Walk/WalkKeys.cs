using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Walk;

/// <summary>Keys of the guided walk.</summary>
internal static class WalkKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<WalkScreen>("space", "Done, next step", "Marks the step done and goes to the next one; missing evidence is asked for first.",
            (s, sight) => MarkStepOf(s, sight, (screen, after) => GoOn((WalkScreen)screen, after))) { Disabled = NoStep },
        new KeyAction<WalkScreen>("x", "Done, next unit", "Marks the step done and goes to the same step of the next unit.",
            (s, sight) => MarkStepOf(s, sight, (screen, after) => SameStep((WalkScreen)screen, after))) { Disabled = NoStep },
        new KeyAction<WalkScreen>("enter", "Evidence", "Types the step's evidence, or mends it.", (s, sight) => Evidence(s, sight, 0)) { Disabled = NoEvidence },
        new KeyAction<WalkScreen>("-", "Not needed", "Says that the step is not needed here, and why.", (s, sight) => Turn.Type(s, NotNeeded(s))) { Disabled = NoStep },
        new KeyAction<WalkScreen>("t", "Hold timer", "Counts the seconds to hold the button, by the kit.", (s, sight) => new Turn(s with { HoldSince = s.HoldSince is null ? sight.Now : null }))
            { Disabled = (s, sight) => s.Subject(sight) is Unit unit && HoldTimer.HoldOf(unit, s.Phase) is not null ? null : "Only pairing and presets hold a button." },
        .. Moves.Through<WalkScreen>("unit", Moved),
        new KeyAction<WalkScreen>("right", "Next step", "The next step of this one.", (s, sight) => new Turn(Stepped(s, sight, 1))),
        new KeyAction<WalkScreen>("left", "Step before", "The step before.", (s, sight) => new Turn(Stepped(s, sight, -1))) { OnBar = false },
        new KeyAction<WalkScreen>("]", "Next phase", "Walks the next phase.", (s, sight) => new Turn(WalkScreen.At(sight, (Phase)Math.Min((int)s.Phase + 1, PhaseNames.All.Count - 1), s.SubjectId))),
        new KeyAction<WalkScreen>("[", "Phase before", "Walks the phase before.", (s, sight) => new Turn(WalkScreen.At(sight, (Phase)Math.Max((int)s.Phase - 1, 0), s.SubjectId))) { OnBar = false },
        new KeyAction<WalkScreen>("delete", "Unmark", "Takes the mark of the step away.", (s, sight) => Turn.Save(s, MarkStep.Clear(s.Subject(sight)!, s.Step(sight)!))) { Disabled = NoStep, Also = ["backspace"], OnBar = false },
        new KeyAction<WalkScreen>("i", "Punch item", "Writes a punch item about this one.", (s, sight) => Turn.Type(s, new Entry("To mend", "", "what is wrong, in a sentence",
            (text, now) => PunchList.Write(now.House, s.Subject(now)!.Item, text, s.Phase).Then<Turn>(d => Turn.Save(s, d))))) { Disabled = NoStep, OnBar = false },
        new KeyAction<WalkScreen>("s", "All facts", "All facts of this one.", (s, sight) => Turn.Open(s, SheetScreen.At(SheetOf.Holding(sight.House, s.Subject(sight)!.Item), sight.House))) { Disabled = NoStep, OnBar = false },
        new KeyAction<WalkScreen>("f", "Findings", "Goes to the field that mends the worst finding.", (s, sight) =>
            s.Subject(sight) is Unit unit && sight.Report.About(unit).FirstOrDefault(x => x.Open) is { } finding
                ? Turn.Open(s, SheetScreen.Mending(sight.House, finding.Found.Mends))
                : Turn.Say(s, "Nothing wrong is known here.")) { OnBar = false },
    ];

    private static string? NoStep(WalkScreen s, Sight sight) => s.Step(sight) is null ? "There is no step here." : null;

    private static string? NoEvidence(WalkScreen s, Sight sight) =>
        s.Step(sight) is not { } step ? "There is no step here." : step.Evidence.IsEmpty ? "This step asks for no evidence. Space marks it done." : null;

    private static Turn MarkStepOf(WalkScreen s, Sight sight, Func<IScreen, Sight, Turn> then)
    {
        var (subject, step) = (s.Subject(sight)!, s.Step(sight)!);
        return subject.MarkOf(step) is not null ? then(s, sight) : Marking.Mark(s with { HoldSince = null }, subject, step, then);
    }

    private static Turn GoOn(WalkScreen s, Sight sight)
    {
        var (subject, step) = WalkOrder.After(sight.House, s.Phase, s.SubjectId);
        return step is null
            ? Turn.Say(s, $"{s.Phase.Full()} is done for every one. ] goes on to the next phase.")
            : new Turn(s with { SubjectId = subject, StepId = step, HoldSince = null });
    }

    private static Turn SameStep(WalkScreen s, Sight sight)
    {
        var (subject, step) = WalkOrder.SameStep(sight.House, s.Phase, s.SubjectId, s.Step(sight)!.Id);
        return subject == s.SubjectId ? Turn.Say(s, "That step is done for every one.") : new Turn(s with { SubjectId = subject, StepId = step, HoldSince = null });
    }

    private static WalkScreen Moved(WalkScreen s, Sight sight, int by)
    {
        var subjects = WalkOrder.Subjects(sight.House, s.Phase);
        var at = subjects.ToList().FindIndex(x => x.Id == s.SubjectId);
        if (subjects.Count == 0)
            return s;
        var to = subjects[Paging.Move(at, by, subjects.Count)];
        return s with { SubjectId = to.Id, StepId = StepList.Of(s.Phase, to).FirstOrDefault(x => x.Id == s.StepId && to.MarkOf(x) is null)?.Id ?? WalkOrder.FirstOpen(to, s.Phase)?.Id, HoldSince = null };
    }

    private static WalkScreen Stepped(WalkScreen s, Sight sight, int by)
    {
        if (s.Subject(sight) is not { } subject)
            return s;
        var steps = StepList.Of(s.Phase, subject).ToList();
        var at = steps.FindIndex(x => x.Id == s.Step(sight)?.Id);
        return steps.Count == 0 ? s : s with { StepId = steps[Paging.Move(at, by, steps.Count)].Id, HoldSince = null };
    }

    private static Entry NotNeeded(WalkScreen s) => new("Not needed because", "", "the reason, for whoever reads the binder",
        (text, sight) => MarkStep.NotNeeded(s.Subject(sight)!, s.Step(sight)!, text).Then<Turn>(draft =>
            new Turn(s, new Ask.Save(draft, (screen, after) => GoOn((WalkScreen)screen, after)))));

    /// <summary>Asks for the step's facts one after the other, those that are there too.</summary>
    private static Turn Evidence(WalkScreen s, Sight sight, int from)
    {
        var (subject, step) = (s.Subject(sight)!, s.Step(sight)!);
        if (from >= step.Evidence.Length)
            return Turn.Say(s, "That is all the evidence of this step. Space marks it done.");
        var fact = step.Evidence[from];
        if (Progress.Holder(subject, fact) is not { } holder)
            return Turn.Say(s, $"{subject.Name} has no home run to note {fact.Label} for.");
        var entry = FactEntry.For(s, sight.House, holder, fact, then: (screen, after) => Evidence((WalkScreen)screen, after, from + 1));
        return Turn.Type(s, entry with
        {
            InPlace = $"{holder.Id}/{fact.Name}",
            Initial = entry.Initial.Length > 0 ? entry.Initial : Offers.For(subject, fact) ?? "",
        });
    }
}
