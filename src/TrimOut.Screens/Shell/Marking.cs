using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Shell;

/// <summary>Marks a step done: what evidence is still missing is asked for first, fact by fact.</summary>
internal static class Marking
{
    /// <summary>Marks a step of a subject, then goes on.</summary>
    public static Transition Mark(IScreen screen, ScreenContext context, Subject subject, Step step, Func<IScreen, ScreenContext, Transition> then)
    {
        var steps = context.Steps;
        foreach (var fact in steps.EvidenceOf(step, subject))
        {
            if (Progress.Holder(subject, fact) is not { } holder)
                return Transition.Say(screen, $"{subject.Name} has no home run to note {fact.Label} for. Its power is not a panel.");
            if (holder.Latest(fact.Name)?.Stored is null)
                return Transition.Type(screen, AskFor(screen, subject, step, holder, fact, then));
        }
        if (steps.AlsoMissing(step, subject) is { } more)
            return Transition.Say(screen, $"{subject.Name}, {step.Label}: still missing {more.In(subject.House)}. {Hint(step)}");
        return StepGuard.Against(subject, step, context.Report, steps) is { IsEmpty: false } against
            ? Transition.Type(screen, WhyAllTheSame($"{subject.Name}, {step.Label}", string.Join(" ", against), OfferedFor(step, subject.House),
                (reason, now) => Again(subject, now.House) is { } again
                ? MarkStep.InOrder(again, step, now.Report, now.Steps, reason).Then<Transition>(d => new Transition(screen, new Ask.Save(d, then)))
                : new Refusal($"{subject.Name} is no longer in the house.")))
            : new Transition(screen, new Ask.Save(MarkStep.InOrder(subject, step, context.Report, steps), then));
    }

    /// <summary>Asks why something is marked against which something speaks; without a reason nothing is marked.</summary>
    public static Entry WhyAllTheSame(string what, string against, string offered, Func<string, ScreenContext, Result<Transition>> mark) =>
        new($"{what}: why all the same", offered, "the reason, which is kept with the mark; Esc marks nothing",
            (text, now) => text.Trim().Length == 0 ? new Refusal("Say why, or leave with Esc: then nothing is marked.") : mark(text.Trim(), now))
        {
            Warning = against,
        };

    /// <summary>The reason that was given for the same step elsewhere; forty units are often late for one reason.</summary>
    public static string OfferedFor(Step step, House house) =>
        Progress.Walkers(house).Select(s => s.MarkOf(step)?.Although).LastOrDefault(a => a is not null) ?? "";

    /// <summary>The same subject in the house as it is now.</summary>
    public static Subject? Again(Subject subject, House house) => subject switch
    {
        Unit => house.FindUnit(subject.Id),
        Panel => house.FindPanel(subject.Id),
        _ => new JobItself(house),
    };

    private static Entry AskFor(IScreen screen, Subject subject, Step step, Item holder, Fact fact, Func<IScreen, ScreenContext, Transition> then)
    {
        var entry = FactEntry.For(screen, subject.House, holder, fact, then: (s, after) =>
            Again(subject, after.House) is { } again ? Mark(s, after, again, step, then) : new Transition(s));
        return entry with { Initial = Offers.For(subject, fact) ?? "", InPlace = $"{holder.Id}/{fact.Name}" };
    }

    private static string Hint(Step step) => step.Phase switch
    {
        Phase.Pair => "Say on the Controls screen (5) which remote moves it.",
        Phase.Limits => "Say on the Controls screen (5) which preset moves it.",
        _ => "Press l for each leg on the unit's sheet.",
    };
}
