using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Cables;

namespace TrimOut.Screens.Shell;

/// <summary>Marks a step done: what evidence is still missing is asked for first, fact by fact.</summary>
internal static class Marking
{
    /// <summary>Marks a step of a subject, then goes on.</summary>
    public static Transition Mark(IScreen screen, ScreenContext context, Subject subject, Step step, Func<IScreen, ScreenContext, Transition> then)
    {
        var steps = context.Steps;
        foreach (var fact in Asked(subject, steps.EvidenceOf(step, subject)))
        {
            if (Progress.Holder(subject, fact) is not { } holder)
                return Transition.Say(screen, $"{subject.Name} has no home run to note {fact.Label} for. Its power is not a panel.");
            if (holder.Latest(fact.Name)?.Stored is null)
                return Transition.Type(screen, AskFor(screen, subject, step, holder, fact, then));
        }
        if (steps.AlsoMissing(step, subject) is { } more)
            return AskOfLegs(screen, subject, step, then)
                ?? Transition.Say(screen, $"{subject.Name}, {step.Label}: still missing {more.In(subject.House)}. {Hint(step)}");
        return StepGuard.Against(subject, step, context.Report, steps) is { IsEmpty: false } against
            ? Transition.Type(screen, WhyAllTheSame($"{subject.Name}, {step.Label}", string.Join(" ", against), OfferedFor(step, subject.House),
                (reason, now) => Again(subject, now.House) is { } again
                ? MarkStep.InOrder(again, step, now.Report, now.Steps, reason).Then<Transition>(d => new Transition(screen, new Ask.Save(d, then)))
                : new Refusal($"{subject.Name} is no longer in the house.")))
            : new Transition(screen, new Ask.Save(MarkStep.InOrder(subject, step, context.Report, steps), then));
    }

    /// <summary>What is asked for, in turn: the size of an order before it is said that it went out.</summary>
    private static IEnumerable<Fact> Asked(Subject subject, IEnumerable<Fact> evidence) => evidence.SelectMany(fact =>
        subject is Unit unit && OrderGoesOut.IsSaidBy(fact) && unit.Item.Latest(fact)?.Stored is null ? [.. unit.BlankOfOrderSize, fact] : new[] { fact });

    /// <summary>Asks why something is marked against which something speaks; without a reason nothing is marked.</summary>
    public static Entry WhyAllTheSame(string what, string against, string offered, Func<string, ScreenContext, Result<Transition>> mark) =>
        new(offered.Length == 0 ? "Why all the same" : "Why all the same (Up: as before)", "", "the reason, which is kept with the mark; Esc marks nothing",
            (text, now) => text.Trim().Length == 0 ? new Refusal("Say why, or leave with Esc: then nothing is marked.")
                : Reasons.Take(text, why => mark(why, now)))
        {
            Warning = $"{what}: {against}",
            Options = offered.Length == 0 ? [] : [new Option(offered, offered)],
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
        return entry with { Initial = Offers.For(subject, fact) ?? "", InPlace = $"{holder.Id}/{fact.Name}", AcceptAndNext = entry.Accept };
    }

    /// <summary>Asks for what a step wants of the legs of a run, leg by leg; for the legs themselves where there is none. Null for any other step.</summary>
    private static Transition? AskOfLegs(IScreen screen, Subject subject, Step step, Func<IScreen, ScreenContext, Transition> then)
    {
        if (step.Phase != Phase.RoughIn || subject is not Unit { Run: { } run })
            return null;
        Transition GoOn(IScreen s, ScreenContext after) => Again(subject, after.House) is { } again ? Mark(s, after, again, step, then) : new Transition(s);
        if (run.Legs.IsEmpty)
            return Transition.Type(screen, LegsEntry.For(screen, run, GoOn, GoOn));
        return LegFact(run, step) is var (leg, fact)
            ? Transition.Type(screen, FactEntry.For(screen, subject.House, leg.Item, fact, then: GoOn) with { InPlace = $"{leg.Id}/{fact.Name}" })
            : null;
    }

    /// <summary>The first detail of a leg that a step waits for.</summary>
    private static (Leg Leg, Fact Fact)? LegFact(HomeRun run, Step step)
    {
        (Func<Leg, bool> Lacks, Fact Fact)[] wanted = step.Id switch
        {
            "route-chosen" => [(l => l.Length is null, LegFacts.Length), (l => l.Place is null, LegFacts.Place)],
            "air-asked" => [(l => l.AsksAboutAir && l.AirMoves is null, LegFacts.AirMoves)],
            "fire-stops-seen" =>
            [
                (l => l.ThroughFireBarrier is null, LegFacts.FireBarrier), (l => Open(l, LegFacts.SealedBy), LegFacts.SealedBy),
                (l => Open(l, LegFacts.SealSeenOn), LegFacts.SealSeenOn),
            ],
            _ => [],
        };
        foreach (var (lacks, fact) in wanted)
        {
            if (run.Legs.FirstOrDefault(lacks) is { } leg)
                return (leg, fact);
        }
        return null;

        static bool Open(Leg leg, Fact fact) => leg.ThroughFireBarrier == true && leg.Item.Latest(fact.Name)?.Stored is null;
    }

    private static string Hint(Step step) => step.Phase switch
    {
        Phase.Pair => "Say on the Controls screen (5) which remote moves it.",
        Phase.Limits => "Say on the Controls screen (5) which preset moves it.",
        _ => "Enter on the cables (4) opens all details of the run.",
    };
}
