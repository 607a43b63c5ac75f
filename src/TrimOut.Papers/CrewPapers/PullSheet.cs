using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Units;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>For rough-in: which cable goes where, how much of it, and how to cut it.</summary>
internal static class PullSheet
{
    public static Paper Paper
    { get; } = new("pull-sheet", "Pull sheet", "the crew", "Which cable goes where, how long, what is written on it, and how boxes are cut.",
        ShortCover.Write,
        new Section("before", "Before you start", Before), new Section("runs", "Home runs", Runs), new Section("ends", "Ends and first test", Ends),
        new Section("riser", "Riser", Risers), new Section("cable", "Cable needed", Cable), CutList.Section,
        new Section("left_out", "Left out", LeftOut))
    {
        Warns = OpenStops.OfAnd([Phase.WalkThrough, Phase.RoughIn], RunFacts.Output),
    };

    private static void Before(MarkdownWriter to, PaperData data) => to.List([
        Ours("Look before you drill: pipes, mains, and what holds the house up. How large a hole may be is for the builder to say."),
        Ours($"Eyes and dust: {new JobItself(data.House).EntryOrBlank(HouseFacts.DrillGuard)}."),
        .. OldPaint.WhereItMayHoldLead(data),
        Ours("A hole through a fire barrier is sealed by whoever the local code lets do it, and seen, before the wall closes."),
        Ours("Keep apart from mains wiring by what the local code asks. Nail plates where a hole is near an edge."),
        Ours("One unbroken cable per unit. No joint in the wall. The same label at both ends before the cable is cut."),
        Ours("Leave at least half of the window's width as tail, better the whole; coil it where a drywall saw does not reach."),
    ]);

    private static void Runs(MarkdownWriter to, PaperData data)
    {
        to.Table(
            ["Unit", "Room", "Panel", "Output", "Cable", "Legs, from the panel", "Cut to", "May be", "Pulled"],
            data.House.Runs.Select(r => Row(
                r.Name, (r.Unit.Window.Room?.FullName).OrDash(), r.EntryOrBlank(RunFacts.Panel), r.EntryOrBlank(RunFacts.Output),
                r.EntryOrBlank(RunFacts.Cable),
                LegText.WayOf(r, Blank), CutTo(r),
                r.BySheet(MayBe), Ticks.Of(r.Unit, "cable-pulled"))),
            "No home runs yet.");
        if (data.House.Runs.IsEmpty)
            return;
        var job = new JobItself(data.House);
        to.Say(Ours($"\"Cut to\" is the legs, an allowance on them of {job.BegunEntry(HouseFacts.CableAllowance, "%")} for bends and slack, and both tails.")
            + Ours($"Where no tail was measured, or one under half of the width, it takes the way to the far end of the unit; "
                + $"where none was measured at the panel, {job.BegunEntry(HouseFacts.PanelTail)}."));
        if (data.House.Runs.Where(r => r.ShownBeforeLimit is not null).ToList() is { Count: > 0 } limited)
        {
            to.Say(Ours(
                $"Less of the allowance is cut where the cable may be no longer: {limited.Select(r => (Inline?)r.BySheet(Limited)).JoinOrDash("; ")}."));
        }
    }

    /// <summary>No cable goes there, and whoever pulls is not to think that one was forgotten.</summary>
    private static void LeftOut(MarkdownWriter to, PaperData data) =>
        to.Table(["Window", "Room", "Nothing is pulled, because"], data.House.Windows.Where(w => w.LeftOut).Select(w => Row(
            w.Tag, (w.Room?.FullName).OrDash(), w.Units.Any(CableInWall.IsThere)
                ? Join("; ", [Ours("its cable lies in the wall"), w.Shown(WindowFacts.NotCoveredBecause) ?? Ours("no reason noted")])
                : w.EntryOrBlank(WindowFacts.NotCoveredBecause)))
            .Concat(data.House.Units.Where(u => !u.OnPanel).Select(u => Row(
                u.Tag, (u.Window.Room?.FullName).OrDash(), Ours($"power: {u.Entry(UnitFacts.Power)}")))), "No window is left out.");

    /// <summary>The tail as it was left; where the second look found another one, that too, for all else goes by it.</summary>
    private static Inline TailLeft(HomeRun run) =>
        run.Item.Get(RunFacts.TailFound) is { } found && run.Item.Get(RunFacts.TailAtWindow) is { } left && found != left
            ? Ours($"{run.Entry(RunFacts.TailAtWindow)}; found {run.Entry(RunFacts.TailFound)}") : run.EntryOrBlank(RunFacts.TailAtWindow);

    private static void Ends(MarkdownWriter to, PaperData data)
    {
        var doubted = OpenStops.FieldsInDoubt(data);
        to.Table(
            ["Unit", "Label at window", "Label at panel", "Tail at window, at least", "Tail as left", "Tail at panel", "Spare cables"],
            data.House.Runs.Select(r => Row(
                r.Name, Read(r, RunFacts.LabelAtWindow), Read(r, RunFacts.LabelAtPanel),
                r.BySheet(x => (x.Unit.LeastTail?.RoundUp(TapeMark.Of(data.House.DisplayUnits)).Show(data.House.DisplayUnits)).FigureOrDash()),
                TailLeft(r), r.EntryOrBlank(RunFacts.TailAtPanel), Spares(r))),
            "No home runs yet.");
        if (data.House.Runs.IsEmpty)
            return;
        to.Table(["Unit", "Loop expected", "Loop read", "Apart, far end open", "To frame", "Open wall photographed"],
            data.House.Runs.Select(r => Row(
                r.Name, r.BySheet(x => Expected.Loop(x)?.ToString().FigureOrDash() ?? Dash),
                Read(r, RunFacts.FirstLoop), Read(r, RunFacts.FirstApart), Read(r, RunFacts.FirstToFrame),
                Ticks.Of(r.Unit, "wall-photographed"))));
        to.Say("Pictures stand with their paths in the test record.");

        Inline Read(HomeRun run, Fact fact) => run.EntryOrBlank(fact).InDoubt(run, fact, doubted);
    }

    private static Inline Spares(HomeRun run) => run.Shown(RunFacts.SpareCables) is not { } count ? Blank
        : run.Shown(RunFacts.SpareEnds) is { } ends ? Ours($"{count}: {ends}") : count;

    private static void Risers(MarkdownWriter to, PaperData data)
    {
        foreach (var sheet in Riser.Sheets(data.House))
            to.Draw("riser", Riser.Describe(sheet), words => Riser.Of(data.House, sheet, words));
        if (data.House.Runs.IsEmpty)
            to.Say("No home runs yet.");
    }

    private static void Cable(MarkdownWriter to, PaperData data)
    {
        to.Table(
            ["Cable", "Conductors", "Plus", "Runs", "Runs with a known length", "Needed for these", "Of that still to pull", "On hand"],
            data.House.Runs.Where(r => r.Cable is not null).GroupBy(r => r.Cable!.Id).Select(g => Row(
                g.First().Cable!.Name, g.First().Cable!.EntryOrBlank(CableTypeFacts.Colours), g.First().Cable!.EntryOrBlank(CableTypeFacts.Plus),
                // Sheets say which of them may be cut, and are in a length only where they took something off it.
                Number(g.Count()), Number(MayBeCut(g).Count()).Marked(g.Any(r => r.Needed is not null
                    && UncheckedValues.Read(r.Unit, u => MayBeCut([u.Run!]).Any()).Unchecked.Count > 0)),
                (Together(g) is { } together ? Figure(together.ShowAtLeast(data.House.DisplayUnits, LengthScale.Run)) : Dash)
                    .Marked(MayBeCut(g).Any(r => r.UncheckedInNeeded.Count > 0)),
                (Together(g.Where(r => !HouseCuts.IsPulled(r))) is { } left ? Figure(left.ShowAtLeast(data.House.DisplayUnits, LengthScale.Run)) : Dash)
                    .Marked(MayBeCut(g).Any(r => !HouseCuts.IsPulled(r) && r.UncheckedInNeeded.Count > 0)),
                Long(g.First().Cable!.OnHand, data.House)
                    ?? Blank)),
            "No cable is chosen yet.");
        foreach (var held in data.House.Runs.Where(r => r.Cable is not null && !HouseCuts.IsPulled(r)).GroupBy(HouseCuts.WhyHeld).Where(g => g.Key is not null)
            .OrderBy(g => g.Key))
        {
            var names = held.Select(r => (Inline)r.Name).JoinOrDash();
            to.Say(held.Key == HeldBack.TooLong ? Ours($"Longer than its cable may be, and not among these: {names}.")
                : Ours($"Not listed for where it goes, and not among these: {names}."));
        }
    }

    /// <summary>The runs whose length is known and that may have it; what was pulled already was cut.</summary>
    private static IEnumerable<HomeRun> MayBeCut(IEnumerable<HomeRun> runs) =>
        runs.Where(r => r.Needed is not null && (HouseCuts.WhyHeld(r) is null || HouseCuts.IsPulled(r)));

    private static Length? Together(IEnumerable<HomeRun> runs) =>
        MayBeCut(runs).Select(r => r.Needed).OfType<Length>().ToList() is { Count: > 0 } known ? known.Aggregate((sum, l) => sum + l) : null;

    /// <summary>What is cut for a run; nothing for one that is not to be cut.</summary>
    private static Inline CutTo(HomeRun run) => HouseCuts.WhyHeld(run) is not null
        ? run.BySheet(r => HouseCuts.WhyHeld(r) switch
        {
            HeldBack.TooLong => Ours("Longer than its cable may be: do not cut."),
            HeldBack.NotListed => Ours("Not listed for where it goes: do not cut."),
            _ => Blank,
        })
        : run.ShownNeeded is { } needed ? Figure(needed).MarkedBy(run.UncheckedInNeeded, run.Unit) : Blank;

    private static Inline Limited(HomeRun run) =>
        Ours($"{run.Name} {run.ShownNeeded.FigureOrDash()}, not {run.ShownBeforeLimit.FigureOrDash()}");

    private static Inline MayBe(HomeRun run) =>
        run.Longest is { } most ? Figure(most.ShowAtMost(run.House.DisplayUnits, LengthScale.Run)) : Blank;

    private static Inline? Long(Length? length, House house) => length is { } known ? Figure(known.ShowRounded(house.DisplayUnits, LengthScale.Run)) : null;
}
