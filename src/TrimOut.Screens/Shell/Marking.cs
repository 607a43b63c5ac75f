using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Screens.Shell;

/// <summary>Marks a step done: what evidence is still missing is asked for first, fact by fact.</summary>
internal static class Marking
{
    /// <summary>Marks the next step of a subject.</summary>
    public static Transition Next(IScreen screen, StepList steps, Subject subject, Func<IScreen, ScreenContext, Transition> then) =>
        Progress.Next(subject, steps) is { } step
        ? Mark(screen, steps, subject, step, then)
        : Transition.Say(screen, $"Every step of {subject.Name} is done.");

    /// <summary>Marks a step of a subject, then goes on.</summary>
    public static Transition Mark(IScreen screen, StepList steps, Subject subject, Step step, Func<IScreen, ScreenContext, Transition> then)
    {
        foreach (var fact in steps.EvidenceOf(step, subject))
        {
            if (Progress.Holder(subject, fact) is not { } holder)
                return Transition.Say(screen, $"{subject.Name} has no home run to note {fact.Label} for. Its power is not a panel.");
            if (holder.Latest(fact.Name)?.Stored is null)
                return Transition.Type(screen, AskFor(screen, subject, step, holder, fact, then));
        }
        if (steps.AlsoMissing(step, subject) is { } more)
            return Transition.Say(screen, $"{subject.Name}, {step.Label}: still missing {more.In(subject.House)}. {Hint(step)}");
        return new Transition(screen, new Ask.Save(MarkStep.Done(subject, step), then));
    }

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
            Again(subject, after.House) is { } again ? Mark(s, after.Steps, again, step, then) : new Transition(s));
        return entry with { Initial = Offers.For(subject, fact) ?? "", InPlace = $"{holder.Id}/{fact.Name}" };
    }

    private static string Hint(Step step) => step.Phase switch
    {
        Phase.Pair => "Say on the Controls screen (5) which remote moves it.",
        Phase.Limits => "Say on the Controls screen (5) which preset moves it.",
        _ => "Press l for each leg on the unit's sheet.",
    };
}
