using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Plans.Outputs;
using TrimOut.Core.Plans.Parts;
using TrimOut.Papers;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Controls;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Panels;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Tests.Facts;

/// <summary>Something that reads facts of a house for what they say: a check, a plan, a paper, a screen, a decision.</summary>
/// <param name="Sort">What sort of reader it is.</param>
/// <param name="Name">Which one.</param>
/// <param name="Reads">What it reads of a house.</param>
internal sealed record FactReader(string Sort, string Name, Func<Scribe, IReadOnlySet<FactRead>> Reads)
{
    private static readonly DateOnly Day = new(2026, 3, 14);

    /// <summary>Checks that ask of any fact whether something is there, or is not too odd: to be asked by them is no use.</summary>
    private static readonly Type[] AskAnyFact =
        [typeof(StepWithoutEvidence), typeof(KitUnchecked), typeof(SheetValueUnusual), typeof(ValuesDisagree), typeof(RemovedWhileWorkedOn)];

    /// <summary>All of them. Sheets, the kit's screen, the history and imports show any fact there is, and are none.</summary>
    public static IReadOnlyList<FactReader> All { get; } =
    [
        .. AllChecks.All.Where(c => !AskAnyFact.Contains(c.GetType())).Select(c => new FactReader("check", c.Info.Id, s => NotedReads.Of(c, s.House))),
        .. StepList.All.Select(t => new FactReader("step", t.Label, _ => t.Evidence.Select(f => new FactRead(f, Beside.Value)).ToHashSet())),
        Of("plan", "cutting", h => _ = CutPlans.Of(h)),
        Of("plan", "outputs", h => _ = (HouseOutputs.Order(h), HouseOutputs.Order(h, mayMove: true))),
        new("plan", "parts", PartsReads),
        Of("waivers", "whether a finding is waived", h => _ = CheckReport.Of(h)),
        Of("figures", "where figures come from", h => _ = (h.Units.Select(UnitFigures.Of).ToList(), h.Panels.Select(PanelFigures.Of).ToList())),
        .. PaperList.All.Select(OfPaper),
        OfScreen("a unit at a glance", (area, context, unit) =>
        {
            foreach (var picture in Enum.GetValues<Picture>())
                UnitCard.Draw(area, unit, context, picture);
        }),
        OfScreen("job sheet", (area, context, _) => JobSheetScreen.At(context).Draw(area, context, null)),
        OfScreen("mechanical room", (area, context, _) => PanelsScreen.At(context).Draw(area, context, null)),
        OfScreen("cables", (area, context, _) => CablesScreen.At(context).Draw(area, context, null)),
        OfScreen("controls", (area, context, _) => ControlsScreen.At(context).Draw(area, context, null)),
        OfScreen("punch list", (area, context, _) => PunchScreen.At(context).Draw(area, context, null)),
        OfScreen("walk", (area, context, unit) =>
        {
            foreach (var phase in PhaseNames.All)
                WalkScreen.At(context, phase, unit.Id).Draw(area, context, null);
        }),
        Of("decision", "keeping with a reading how it was taken", h =>
        {
            foreach (var run in h.Runs)
                _ = SetFact.Typed(h, run.Item, RunFacts.FirstLoop, "1");
        }),
    ];

    private static FactReader Of(string sort, string name, Action<House> work) => new(sort, name, s => NotedReads.Of(s.House, work));

    private static IReadOnlySet<FactRead> PartsReads(Scribe scribe)
    {
        var cuts = CutPlans.Of(scribe.House);
        return NotedReads.Of(scribe.House, h =>
        {
            var parts = HouseParts.Of(h, cuts);
            _ = (parts.Sum(l => l.Part.In(h).Length + l.CountedFrom.In(h).Length), CallOff.Of(h, scribe.Log.Changes, parts));
        });
    }

    private static FactReader OfPaper(Paper paper) => new("paper", paper.Title, scribe =>
    {
        var (report, cuts) = (CheckReport.Of(scribe.House), CutPlans.Of(scribe.House));
        // A history of its own: nothing was asked yet of the house that it makes.
        var own = HouseLog.Of(scribe.Log.Changes).Value;
        return NotedReads.OfThis(own.House, house =>
        {
            var data = new PaperData(own, Day, report) { Cuts = cuts };
            _ = (paper.Write(data), paper.Csv?.Invoke(data));
        })
        // An order sheet also goes through all fields of what was frozen, whatever they are, for what changed since.
        .Where(r => r.What != Beside.Everything).ToHashSet();
    });

    private static FactReader OfScreen(string name, Action<Area, ScreenContext, Unit> draw) => new("screen", name, scribe =>
    {
        // A scribe of its own: nothing was asked yet of the house that its screens see.
        var own = new Scribe(new MemoryStore("test-laptop", scribe.Log.Changes), new FakeTimeProvider(), "Ash");
        var context = new ScreenContext(own, [], new DateTimeOffset(Day, default, default), Glyphs.Drawn);
        context.GetReady();
        return NotedReads.OfThis(context.House, h =>
        {
            foreach (var unit in h.Units.Take(12))
                draw(new Frame(160, 50).All, context, unit);
        });
    });
}
