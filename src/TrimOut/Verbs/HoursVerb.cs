using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Units;

namespace TrimOut.Verbs;

/// <summary><c>trimout hours</c>: what phases took in houses, and what they are likely to take in the next one.</summary>
internal static class HoursVerb
{
    public static Command Build()
    {
        var paths = new Argument<string[]>("HOUSE") { Description = "House files, or folders with a history as text.", Arity = ArgumentArity.OneOrMore };
        var next = new Option<string?>("--for")
        {
            Description = "A house to estimate by the others: how many units go through each phase there.",
            HelpName = "house",
        };
        var units = new Option<bool>("--units")
        {
            Description = "Also what the marks show for each unit.",
        };
        var verb = new Command("hours",
            "List what each phase took in houses, in hours of all people together, a line each with tabs between: house, its name, phase, hours that count, "
                + "what they are from (typed, visits, some-visits or marks: at least), typed, of visits, by marks, units that are through, units, "
                + "hours a unit; unit, house, tag, phase, hours by marks. Then what a unit took over all houses that are through a phase: rate, phase, median, "
                + "least, most, of how many houses, how many say no more than their marks, at-least where no house says more and these count. With --for "
                + "what a house is likely to take: estimate, phase, units, hours, least, most, of how many houses, at-least; "
                + "not-known, phase, units, why, of a phase that no house is through.")
        { paths, next, units, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var houses = new Dictionary<ChangeId, HouseLog>();
            foreach (var path in parsed.GetRequiredValue(paths))
            {
                var log = look.At(path);
                if (log.Changes is [var first, ..] && !houses.TryAdd(first.Id, log))
                    Common.Say($"{path} is a copy of a house that stands before it, and is not counted again.");
            }
            var hours = houses.Values.Select(log => (Log: log, Phases: PhaseHours.Of(log))).ToList();
            foreach (var (log, phases) in hours)
            {
                foreach (var phase in phases.Where(p => p.Counted is not null))
                {
                    Common.Row("house", log.House.Name, KebabCase.Of(phase.Phase), Shown(phase.Counted),
                        phase.IsOfSomeVisits ? "some-visits" : KebabCase.Of(phase.From), Shown(phase.Typed), Shown(phase.OfVisits), Shown(phase.Marked),
                        NumberText.Plain(phase.Through), NumberText.Plain(phase.Units), Shown(phase.PerUnit));
                }
                if (parsed.GetValue(units))
                    SayUnits(log);
            }
            var target = parsed.GetValue(next) is { } at ? look.At(at) : null;
            if (target is not null)
                hours.RemoveAll(h => h.Log.Changes[0].Id == target.Changes.FirstOrDefault()?.Id);
            var rates = HourRate.Of(hours.Select(h => h.Phases));
            foreach (var rate in rates)
            {
                Common.Row("rate", KebabCase.Of(rate.Phase), Shown(rate.Median), Shown(rate.Least), Shown(rate.Most), NumberText.Plain(rate.Houses),
                    NumberText.Plain(rate.ByMarks), AtLeast(rate));
            }
            Remark(hours.Count, rates.Length);
            var phasesOfNext = target is null ? [] : PhaseHours.Of(target);
            foreach (var likely in HourEstimate.Of(phasesOfNext, rates))
            {
                Common.Row("estimate", KebabCase.Of(likely.Rate.Phase), NumberText.Plain(likely.Units), Shown(likely.Hours), Shown(likely.Least),
                    Shown(likely.Most), NumberText.Plain(likely.Rate.Houses), AtLeast(likely.Rate));
            }
            foreach (var phase in phasesOfNext.Where(p => p.Units > 0 && rates.All(r => r.Phase != p.Phase)))
                Common.Row("not-known", KebabCase.Of(phase.Phase), NumberText.Plain(phase.Units), "not known: no house is through it");
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    private static void SayUnits(HouseLog log)
    {
        var marked = MarkedHours.Of(log);
        foreach (var unit in log.House.Units)
        {
            foreach (var (phase, time) in PhaseHours.ByMarks(marked, unit))
                Common.Row("unit", log.House.Name, unit.Tag, KebabCase.Of(phase), Shown(time));
        }
    }

    private static string AtLeast(HourRate rate) => rate.IsAtLeast ? "at-least" : "";

    private static void Remark(int houses, int rates)
    {
        if (rates == 0)
            Common.Say("No house is through a phase that has hours: nothing can be said of the next one.");
        else if (houses == 1)
            Common.Say("All of this is from one house alone.");
    }

    private static string Shown(decimal? hours) => hours is { } known ? NumberText.Plain(Math.Round(known, 2)) : "";
}
