using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;
using TrimOut.Papers.Photos;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>Every test of every run: what should be read, what was, with what and by whom; blanks for what is still to be read.</summary>
internal static class TestRecord
{
    public static Paper Paper
    { get; } = new("test-record", "Test record", "the crew and the electrician", "What every run should read, what it did read, with what and by whom.",
        ShortCover.Write,
        new Section("before", "Before you start", Before), new Section("loops", "Loop tests", Loops), new Section("apart", "Far end open", Apart),
        new Section("volts", "Power tests", Volts),
        new Section("pictures", "Pictures of the open wall", Pictures),
        new Section("signed", "Signed", Signed))
    {
        Warns = OpenStops.OfAnd([Phase.RoughIn, Phase.CloseIn, Phase.Power], CoveringKindFacts.MotorVolts, RunFacts.Panel, PanelFacts.Type),
    };

    private static void Before(MarkdownWriter to, PaperData data) => to.List(
        Ours("Loop tests only with the panel off and the run taken off its output: a meter on ohms across a live supply is destroyed, and may hurt you."),
        Ours("Short the window end, read at the panel, take the short off again. It should read the figure at 20 C; warmer copper reads more.")
            + (new JobItself(data.House).Shown(HouseFacts.MeterLeads) is { } leads ? Ours($"The meter's leads, {leads}, are in it.")
                : Ours("What the meter's leads add, their tips held together, is not in it.")),
        Ours("Far end open: hold both ends apart at the window. From one conductor to the other, and from both to the frame, the meter reads open."),
        Ours("Power tests on the low-voltage side only. The mains side of the panel is for a licensed electrician."));

    private static void Loops(MarkdownWriter to, PaperData data)
    {
        var (read, wrong) = (Reading(data), OpenStops.WithWrongLabels(data));
        to.Table(["Unit", "Label", "One way", "Should read", "First loop", "With, who, when", "Second loop", "With, who, when"],
            data.House.Runs.Select(r => Row(
                r.Name, wrong.Contains(r.Id) && r.LabelAtPanel is not null ? Join(", ", [r.Entry(RunFacts.LabelAtPanel), Ours("in doubt")])
                    : read(r, RunFacts.LabelAtPanel),
                r is { BranchesOff: null, OneWay: { } oneWay } ? Figure(oneWay.ShowRounded(data.House.DisplayUnits, LengthScale.Run)) : Dash,
                r.BySheet(x => Expected.Loop(x)?.ToString().FigureOrDash() ?? Dash),
                read(r, RunFacts.FirstLoop), TakenOrBlank(r, RunFacts.FirstLoop),
                read(r, RunFacts.SecondLoop), TakenOrBlank(r, RunFacts.SecondLoop))),
            "No home runs yet.");
        if (data.House.Runs.Where(r => r.BranchesOff is not null).ToList() is { Count: > 0 } branches)
            to.Say($"Branches, whose loop is read with that of the run that they go on from: {branches.Select(r => r.Name).JoinOrDash()}.");
    }

    private static void Apart(MarkdownWriter to, PaperData data)
    {
        var read = Reading(data);
        to.Table(["Unit", "First, apart", "First, to frame", "With, who, when", "Second, apart", "Second, to frame", "With, who, when"],
            data.House.Runs.Select(r => Row(
                r.Name, read(r, RunFacts.FirstApart), read(r, RunFacts.FirstToFrame), TakenOrBlank(r, RunFacts.FirstApart, RunFacts.FirstToFrame),
                read(r, RunFacts.SecondApart), read(r, RunFacts.SecondToFrame), TakenOrBlank(r, RunFacts.SecondApart, RunFacts.SecondToFrame))),
            "No home runs yet.");
    }

    private static void Volts(MarkdownWriter to, PaperData data)
    {
        var read = Reading(data);
        to.Table(["Unit", "Panel", "Output", "Supply", "Open", "Expected while it lifts", "Loaded", "Polarity", "With, who, when"],
            data.House.Runs.Select(r => Row(
                r.Name, r.EntryOrBlank(RunFacts.Panel), read(r, RunFacts.Output), r.BySheet(x => x.Supply?.ToString().FigureOrDash() ?? Dash),
                read(r, RunFacts.OpenVolts), r.BySheet(x => Expected.WhileRunning(x)?.ToString().FigureOrDash() ?? Dash),
                read(r, RunFacts.LoadedVolts), read(r, RunFacts.Polarity),
                TakenOrBlank(r, RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity))),
            "No home runs yet.");
    }

    /// <summary>What was read of a run, and that it is in doubt where a stop or a caution is open about it; a blank while it was not.</summary>
    private static Func<HomeRun, Fact, Inline> Reading(PaperData data)
    {
        var doubted = OpenStops.FieldsInDoubt(data);
        return (run, fact) => run.EntryOrBlank(fact).InDoubt(run, fact, doubted);
    }

    private static void Pictures(MarkdownWriter to, PaperData data)
    {
        var pictures = HousePhotos.Of(data.House).Where(p => p.Fact == RunFacts.Photo).Select(p => (p.Of, (Inline)p.Of, p.Path)).ToList();
        if (pictures.Count == 0)
            to.Say("None was noted.");
        PhotoPages.Write(to, data, pictures);
    }

    private static void Signed(MarkdownWriter to, PaperData data) => to.Table(["For", "Name", "Instrument, calibrated until", "Date", "Signature"],
        [Row(Ours("Crew"), Blank, Blank, Blank, Blank)]);

    /// <summary>Who took any of the readings, when and with what; a blank while none was taken.</summary>
    private static Inline TakenOrBlank(HomeRun run, params Fact[] readings) =>
        Array.TrueForAll(readings, f => run.Item.Latest(f.Name)?.Stored is null) ? Blank : run.Taken(readings);
}
