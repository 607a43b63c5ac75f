using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.InService;
using TrimOut.Papers.BinderSections;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>For a call after handover, to be filled by pen: what was complained of, what is read now beside what was read when it was new.</summary>
internal static class ServiceForm
{
    private const int SpareRows = 4;

    public static Paper Paper
    { get; } = new("service-form", "Service form", "the crew",
        "For a call after handover and the yearly visit: what is read now beside what was read then, to be written in by pen.",
        ShortCover.Write,
        new Section("call", "The call", Call), new Section("before", "Before you start", Before), new Section("units", "What is found", Units),
        new Section("lives", UnitLives.Title, UnitLives.Table),
        new Section("again", "To be done again", Again), new Section("yearly", "The yearly visit", Yearly),
        new Section("parts", "What was changed", Parts), new Section("signed", "Signed", Signed))
    {
        Warns = OpenStops.OfPanels,
    };

    private static void Call(MarkdownWriter to, PaperData data) => to.Facts("About", "Entry",
        ("Called by, on", Blank), ("What is wrong, in the owner's words", Blank), ("Which unit, which room", Blank), ("Since when, and how often", Blank),
        ("Who came, on", Blank), ("Instrument, calibrated until", Blank), ("Warranty, until", DueInService.CrewUntil(data.House)?.OnPaper() ?? Blank));

    private static void Before(MarkdownWriter to, PaperData data) => to.List(
        Ours("A smell of burning, smoke, water, heat or a buzzing panel: touch nothing, breaker off where it is safely reached, and the licensed " +
            "electrician first."),
        Ours("The mains side of the panel, its breaker and its feed are for a licensed electrician. You work on the low-voltage side only."),
        Ours("Before you take a unit down or touch a splice: breaker off, kept off, and tested dead at the low-voltage outputs."),
        Ours("Loop tests only with the panel off and the run taken off its output: a meter on ohms across a live supply is destroyed, and may hurt you."),
        Ours("Whether a unit that was taken down and hung again needs its limits set again is on the maker's sheet."),
        Ours("What was read goes into the house file, with instrument and day."));

    private static void Units(MarkdownWriter to, PaperData data)
    {
        var doubtful = OpenStops.RunsAtPanels(data);
        var doubted = OpenStops.FieldsInDoubt(data);
        to.Table(["Unit", "Room", "Power", "Moves", "Level", "Cords safe", "Found"], data.House.Units.Select(u => Row(
            u.Tag, (u.Window.Room?.FullName).OrDash(),
            u.Run is { Panel: { } panel, Output: { } output } run
                ? OpenStops.Stopped(Ours($"{panel.Name}, output {output}"), doubtful.Contains(run.Id))
                : u.Entry(UnitFacts.Power), Box, Box, Box, Blank)),
            "No units yet.");
        to.Table(["Unit", "Loop then", "Loop now", "Volts loaded then", "Volts loaded now",
            "Open: bar above glass; closed: above sill; then", "Now"],
            data.House.Units.Select(u => Row(
                u.Tag, Then(u.Run, doubted, RunFacts.SecondLoop, RunFacts.FirstLoop), u.OnPanel ? Blank : Dash, Then(u.Run, doubted, RunFacts.LoadedVolts),
                u.OnPanel ? Blank : Dash, Join(" / ", [Then(u, doubted, UnitFacts.OpenGap), Then(u, doubted, UnitFacts.CloseGap)]), Blank)), "No units yet.");
    }

    private static readonly string[] OnceAYear =
    [
        "Every unit once fully open and once fully closed, level with its neighbors",
        "Brackets, screws and end plugs tight, nothing that rubs or frays",
        "No cord, chain or cable loop that hangs free within a child's reach",
        "Every escape window opens past its covering, by hand and without power",
        "Every remote and every preset, and the batteries of remotes",
        "Labels and sheet at the panel legible, air around it; mains side only by a licensed electrician",
        "Open items of the binder, and claims that are open",
    ];

    private static void Again(MarkdownWriter to, PaperData data)
    {
        foreach (var failure in DueInService.Failures(data.House))
            to.Say(Said(failure.Say, data.House));
        to.Table(["What", "Step", "Since", "Done"],
            AskedAgain.Waiting(data.House).Select(w => Row(NameOf(data.House, w.Subject.Item), Ours(w.Step.Label), NameOf(data.House, w.Since.Item), Box)),
            "Nothing was replaced that asks for it.");
    }

    private static void Yearly(MarkdownWriter to, PaperData data) => to.Table(["Once a year", "Seen"], OnceAYear.Select(what => Row(Ours(what), Box)));

    /// <summary>The first of these that is known; what a stop or a caution doubts is nothing to hold a reading of today against.</summary>
    private static Inline Then(Subject? of, HashSet<FieldRef> doubted, params Fact[] first) =>
        first.FirstOrDefault(f => of?.Shown(f) is not null) is { } fact ? of!.Entry(fact).InDoubt(of!, fact, doubted) : Dash;

    private static void Parts(MarkdownWriter to, PaperData data) => to.Table(
        ["Unit", "What was done", "Part, serial taken off", "Serial put in", "Limits and preset set again"],
        Enumerable.Range(0, SpareRows).Select(_ => Row(Blank, Blank, Blank, Blank, Box)));

    private static void Signed(MarkdownWriter to, PaperData data) =>
        to.Table(["For", "Name", "Date", "Signature"], [Row(Ours("Crew"), Blank, Blank, Blank), Row(Ours("Owner"), Blank, Blank, Blank)]);
}
