using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Who marked how many steps of each phase, and between which days.</summary>
internal static class WhoDidWhat
{
    public static Section Section { get; } = new("who", "Who did what, and when", Write) { NotForOwner = true };

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Facts("About", "Entry",
            ("Framing walk", job.DayOrNotYet(HouseFacts.FramingOn, data.Date)),
            ("Drywall started", job.DayOrNotYet(HouseFacts.DrywallOn, data.Date)),
            ("Painted", job.DayOrNotYet(HouseFacts.PaintedOn, data.Date)));
        to.Heading(3, "How far each phase is");
        to.Table(["Phase", "Steps done", "Steps in all", "Open stops"], PhaseNames.All.Select(p =>
        {
            var progress = Progress.Of(data.House, p, data.Steps);
            return Row(Ours(p.Full()), Number(progress.Done), Number(progress.Total), Number(data.Report.StopsIn(p)));
        }));
        to.Heading(3, "By phase and person");
        to.Say("From the marks in the house file, which keeps every single entry with its person and time.");
        to.Table(["Phase", "Who", "Steps", "First", "Last"],
            from mark in Marks(data.House, data.Steps)
            group mark.Head by (mark.Phase, mark.Head.By) into work
            orderby work.Key.Phase, work.Min(h => h.At), work.Key.By
            select Row(Ours(work.Key.Phase.Full()), work.Key.By.OrDash(), Number(work.Count()), work.Min(h => h.At).OnPaper(), work.Max(h => h.At).OnPaper()),
            "No step is marked yet.");
    }

    private static IEnumerable<(Phase Phase, Head Head)> Marks(House house, StepList steps) =>
        from subject in Progress.Walkers(house)
        from phase in PhaseNames.All
        from step in steps.Asked(phase, subject)
        where subject.MarkOf(step) is not null
        select (phase, subject.Item.Latest($"{StepMark.FactName}:{step.Id}")!);
}
