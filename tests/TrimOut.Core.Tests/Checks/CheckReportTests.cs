using CsCheck;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

public class CheckReportTests
{
    private static readonly string[] Typed =
        ["1", "4", "12", "36", "40 1/2", "0", "left", "right", "yes", "no", "none", "open", "inside", "outside", "panel", "battery", "W0001", "W0002", "Room 0", "Room 1", "Roller", "Cellular", "16/2", "18/2", "P0", "P1", "Hub", "Remote 0", "done", "cl2p", "cl2x", "other", "air-handling-space", "between-floors", "20 AWG", "1 mm2", "swapped", "2026-03-14", ""];

    // The report after one change is the report from the beginning, whatever was typed into whatever fact.
    [Fact]
    public void JudgingOnlyWhatChangedSaysTheSameAsJudgingEverything()
    {
        var start = BigHouse.Of(12);
        var first = CheckReport.Of(start.House);
        Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 9999], Gen.Int[0, Typed.Length - 1], Gen.Int[0, 9999], Gen.Bool).Array[1, 12].Sample(deeds =>
        {
            var (log, report) = (start.Scribe.Log, first);
            foreach (var (at, which, typed, key, aside) in deeds)
            {
                if (Draft(log.House, at, which, Typed[typed], key, aside) is not { Ok: true } draft)
                    continue;
                log = log.With(Change(log, draft.Value, aside && which % 3 == 0));
                report = report.After(log.House);
                Same(CheckReport.Of(log.House), report);
            }
        }, iter: 200, threads: 1);
    }

    [Fact]
    public void AWaiverAndItsFindingsFiguresAreKeptUp()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "12");
        var report = CheckReport.Of(job.House);
        var finding = report.Findings.Single(f => f.Check.Id == "tail-under-half-width");
        job.Do(PunchList.Waive(finding, job.House, "battery later", "TC"));
        report = report.After(job.House);
        Assert.False(report.Findings.Single(f => f.Check.Id == "tail-under-half-width").Open);
        Assert.True(report.After(job.Say("W01", RunFacts.TailAtWindow, "13").House).Findings.Single(f => f.Check.Id == "tail-under-half-width").Open);
    }

    [Fact]
    public void TheSameHouseIsNotJudgedAgain()
    {
        var report = Jobs.Roughed().Report;
        Assert.Same(report, report.After(report.House));
    }

    [Fact]
    public void AHouseThatIsNotOneChangeAwayIsJudgedFromTheBeginning()
    {
        var job = Jobs.Roughed();
        var report = CheckReport.Of(job.House);
        job.Say("W01", RunFacts.TailAtWindow, "1").Say("W01", RunFacts.TailAtPanel, "1");
        Same(CheckReport.Of(job.House), report.After(job.House));
        job.Scribe.Undo();
        Same(CheckReport.Of(job.House), report.After(job.House));
    }

    [Fact]
    public void FindingsComeStopsFirstThenByPhase()
    {
        var findings = BigHouse.Of(30).Report.Findings;
        Assert.NotEmpty(findings);
        Assert.Equal(findings.OrderBy(f => f.Check.Severity).ThenBy(f => f.Check.Phase), findings);
    }

    private static Result<Draft> Draft(House house, int at, int which, string typed, int key, bool aside)
    {
        // The nth item and fact, so that every kind of item and every fact comes up.
        var kinds = house.Items.Values.Where(i => !i.Removed).OrderBy(i => i.Place).ToLookup(i => i.Kind).ToList();
        var items = kinds[at % kinds.Count].ToList();
        var item = items[at % items.Count];
        if (which % 97 == 0)
            return RemoveItems.Remove(house, item);
        if (which % 97 == 1)
            return AddItems.Window(house, AddItems.NextTag(house), null);
        if (which % 97 == 2)
            return PunchList.Write(house, item, "mend it", Phase.Hang);
        var facts = FactTable.Of(item.Kind);
        var fact = facts[which % facts.Count];
        if (aside && FactTable.IsKit(item.Kind) && !fact.IsKeyed)
            return new Draft("checked").PutStored(item.Id, Companion.Checked(fact.Name), "yes");
        var keyed = fact.Name == "step" ? StepList.All[key % StepList.All.Length].Id : house.Units.Length == 0 ? "x" : house.Units[key % house.Units.Length].Id;
        return SetFact.Typed(house, item, fact, typed, keyed);
    }

    /// <summary>The change as a laptop makes it that has seen all there is, or one that has seen nothing of the values: then both stay.</summary>
    private static Change Change(HouseLog log, Draft draft, bool unseen)
    {
        var id = new ChangeId("deed", log.Changes.Count + 1);
        return new Change(id, log.LargestStamp + 1, DateTimeOffset.UnixEpoch, "Deed", draft.What, [.. draft.Edits.Select(e => e switch
        {
            Edit.Add add => add with { Item = Named(add.Item), Under = Named(add.Under) },
            Edit.Put put => put with { Item = Named(put.Item), Over = unseen ? [] : [.. log.House.Find(put.Item)?.Heads(put.Field).Select(h => h.Id) ?? []] },
            _ => e,
        })]);

        string Named(string item) => item.StartsWith('\u0001') ? $"{id.Device}-{id.Sequence}-{item[1..]}" : item;
    }

    private static void Same(CheckReport expected, CheckReport actual)
    {
        Assert.Equal(expected.Findings.Select(f => (f.Check, f.Subject.Id, f.Found, f.Waiver?.Id)), actual.Findings.Select(f => (f.Check, f.Subject.Id, f.Found, f.Waiver?.Id)));
        Assert.Equal(expected.Missing.Select(m => (m.Check, m.Subject.Id, m.NotChecked)), actual.Missing.Select(m => (m.Check, m.Subject.Id, m.NotChecked)));
        Assert.Equal(expected.Passed, actual.Passed);
        Assert.All(actual.Findings.Select(f => f.Subject).Concat(actual.Missing.Select(m => m.Subject)), s => Assert.Same(actual.House.Find(s.Id), s));
    }
}
