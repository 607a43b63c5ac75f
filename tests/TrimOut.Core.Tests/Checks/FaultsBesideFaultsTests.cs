using System.Text.RegularExpressions;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>Whoever waives one fault of a thing has not waived the next one: it is a finding of its own, or makes the finding another one.</summary>
public partial class FaultsBesideFaultsTests
{
    private const int MostFaults = 16;

    private static readonly string[] Typed =
    [
        "", "0", "1", "2", "3", "100", "1/4\"", "1\"", "5\"", "20\"", "35\"", "37\"", "61\"", "200\"", "-3", "-24", "12", "24", "48", "0.5", "open",
        "2020-01-01", "2030-01-01", "red, red, black, black", "none", "A thing", "W01", "W02", "yes", "no",
    ];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    /// <summary>
    /// Each house of a check's page gets every single fault that a detail which the check reads can have, and each two of them together: where the first was
    /// waived, the second is open.
    /// </summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void OfTwoFaultsTheSecondIsOpenOnceTheFirstIsWaived(string id)
    {
        var check = AllChecks.Find(id)!;
        var hidden = new List<string>();
        foreach (var house in new[] { Example.Passing(check).Play().Job.House, Example.Finding(check).Begin().House, Example.Finding(check).Play().Job.House })
        {
            var before = Found(check, house);
            foreach (var subject in Faults(check, house, before).GroupBy(f => f.Subject))
            {
                var all = subject.DistinctBy(f => (string.Join('|', f.Figures.Order()), f.Field)).ToList();
                // Each detail with a fault or two, so that all of them come up.
                var faults = all.GroupBy(f => f.Field).SelectMany(g => g.Take(2)).Take(MostFaults).ToList();
                foreach (var first in faults.Where(f => !f.IsOfPart))
                {
                    foreach (var second in faults.Where(f => f.Field != first.Field && (f.IsCleared || !first.IsCleared)
                        && !Kinds(f.Figures).IsSubsetOf(Kinds(first.Figures))))
                    {
                        var both = Of(Found(check, HouseLog.Preview(HouseLog.Preview(house, first.Draft), second.Draft)), subject.Key);
                        if (both.Count > 0 && both.IsSubsetOf(first.Figures) && !IsNoneBeside(id, first.Field.Fact, second.Field.Fact))
                        {
                            hidden.Add($"{id}: {first.Field.Fact}, {second.Field.Fact} ({first.Draft.What}, then {second.Draft.What}: "
                                + $"{string.Join(' ', both)}; the second alone: {string.Join(' ', second.Figures)})");
                        }
                    }
                }
            }
        }
        Assert.True(hidden.Count == 0, string.Join('\n', hidden));
    }

    /// <summary>Faults that are none beside the first: what makes the first one takes away what the second is judged by, or says it too.</summary>
    private static readonly Dictionary<string, string> NoneBeside = new()
    {
        ["box-late: arrival, *"] = "a box that did not come is ordered again, whatever day it was expected",
        ["box-label-off: *, tag"] = "the label is held against the tag",
        ["cable-not-listed: listing, *"] = "a cable without a listing may go nowhere",
        ["delivered-size-off: order-width, size-read-from"] = "another width than the ordered one is off, whatever it was read from",
        ["delivered-size-off: delivered-width, size-read-from"] = "another width than the ordered one is off, whatever it was read from",
        ["entry-off-lead-side: *, entry-from-jamb"] = "how far a tail reaches is no fault",
        ["entry-off-lead-side: *, rough-width"] = "how far a tail reaches is no fault",
        ["fire-stop-open: fire-barrier, sealed-by"] = "a leg that goes through no barrier needs no seal",
        ["fire-stop-open: fire-barrier, seal-seen-on"] = "a leg that goes through no barrier needs no seal",
        ["fire-stop-open: sealed-by, *"] = "what nobody sealed nobody saw sealed",
        ["gap-between-units-too-small: *, gap-between"] = "units that do not go in leave no gap",
        ["gap-between-units-too-small: *, diagonal-down"] = "too wide for the opening is too wide for what hangs plumb in it",
        ["gap-between-units-too-small: *, diagonal-up"] = "too wide for the opening is too wide for what hangs plumb in it",
        ["gap-between-units-too-small: diagonal-down, width-middle"] = "what hangs plumb is the narrower of the two already",
        ["gap-between-units-too-small: diagonal-up, width-middle"] = "what hangs plumb is the narrower of the two already",
        ["head-room-short: head-above, wall-above"] = "it starts lower than the wall reaches",
        ["label-twice: label-at-window, *"] = "the other cable has another label then",
        ["listed-by-relaxation: place, *"] = "the leg goes through another place then",
        ["loop-open-or-shorted: first-loop, *"] = "an open loop says nothing of the length",
        ["past-what-is-made: order-width, mount"] = "the ordered size is the whole of it, with its overlaps",
        ["order-past-opening: *, ordered-inside"] = "wider than the opening is wider than what must come off it",
        ["out-of-square: *, deduction-inside"] = "one lean, held against two limits",
        ["out-of-square: *, square-limit"] = "one lean, held against two limits",
        ["output-overloaded-together: *, *"] = "the largest load is told, and stands for all past the limit",
        ["panel-overloaded: *, *"] = "the largest load is told, and stands for all past the limit",
        ["parts-past-opening: *, diagonal-down"] = "too wide for the opening is too wide for what hangs plumb in it",
        ["parts-past-opening: *, diagonal-up"] = "too wide for the opening is too wide for what hangs plumb in it",
        ["parts-past-opening: *, end-allowance"] = "too wide with the gap alone is too wide with the ends",
        ["parts-past-opening: *, gap-between"] = "too wide without the gap is too wide with it",
        ["parts-past-opening: diagonal-down, width-middle"] = "what hangs plumb is the narrower of the two already",
        ["parts-past-opening: diagonal-up, width-middle"] = "what hangs plumb is the narrower of the two already",
        ["position-twice: position, position"] = "the place of one that has moved past the last is free for the other",
        ["screw-under-centre-support: *, centre-bracket"] = "the screw is somewhere else then",
        ["sheet-contradicts-itself: total-current, input-current"] = "outputs that give less together take less from the mains",
        ["units-unlike: colour, colour"] = "what is written alike of both is alike",
        ["volts-short-at-unit: least-volts, *"] = "a supply that gives too little gives too little over every cable",
        ["volts-short-at-unit: supply, *"] = "a supply that gives too little gives too little over every cable",
    };

    private static bool IsNoneBeside(string check, string first, string second) =>
        new[] { $"{first}, {second}", $"*, {second}", $"{first}, *", "*, *" }.Any(pair => NoneBeside.ContainsKey($"{check}: {pair}"));

    /// <summary>What sorts of faults they are: the figures without lengths, volts, counts and days, of which the worst may stand for others.</summary>
    private static HashSet<string> Kinds(IEnumerable<string> figures) => [.. figures.Select(f => Quantity().Replace(f, "#"))];

    [GeneratedRegex(@"(?<![\w-])(-?[0-9.]+( [A-Za-z]+)?|[0-9]{4}-[0-9]{2}-[0-9]{2})(?![\w-])")]
    private static partial Regex Quantity();

    private static IEnumerable<Fault> Faults(ICheck check, House house, ILookup<string, string> before)
    {
        ReadRecorder.Record(() => check.Run(new House(house.State)).ToList(), out var reads);
        foreach (var item in house.Items.Values.Where(i => !i.Removed))
        {
            foreach (var fact in FactTable.Of(item.Kind).Where(f => !f.IsKeyed && reads.Contains(ReadKey.Field(item, f.Name).Value)))
            {
                foreach (var typed in Typed.Concat(fact.Options(house).Select(o => o.Stored)))
                {
                    if (SetFact.Typed(house, item, fact, typed) is not { Ok: true } draft)
                        continue;
                    foreach (var found in Found(check, HouseLog.Preview(house, draft.Value)))
                    {
                        if (found.ToHashSet() is var figures && !figures.IsSubsetOf(before[found.Key]))
                            yield return new Fault(found.Key, (item.Id, fact.Name), draft.Value, figures, fact is Fact<ItemRef>, typed.Length == 0);
                    }
                }
            }
        }
    }

    private static ILookup<string, string> Found(ICheck check, House house) => check.Run(house).Where(r => r.Outcome is Outcome.Found)
        .ToLookup(r => r.Subject.Id, r => ((Outcome.Found)r.Outcome).Message.Figures);

    private static HashSet<string> Of(ILookup<string, string> found, string subject) => [.. found[subject]];

    private sealed record Fault(string Subject, (string Item, string Fact) Field, Draft Draft, HashSet<string> Figures, bool IsOfPart, bool IsCleared);

    public static TheoryData<string> OfLegs => ["leg-place-off-way", "cable-not-listed", "listed-by-relaxation", "fire-stop-open"];

    [Theory]
    [MemberData(nameof(OfLegs))]
    public void AnotherLegLikeTheFirstIsAnotherFault(string id)
    {
        var job = Waived(Example.Finding(AllChecks.Find(id)!).Play().Job, id);
        var before = job.Run("W01").Legs;
        job.Do(AddItems.Leg(job.Run("W01")));
        foreach (var (field, heads) in before[^1].Item.Fields)
            job.Do(new Draft("alike").PutStored(job.Run("W01").Legs[^1].Id, field, heads[^1].Stored));
        Assert.Contains(job.Report.Findings, f => f.Open && f.Check.Id == id);
    }

    [Theory]
    [InlineData("serial-twice")]
    [InlineData("hub-name-twice")]
    [InlineData("hub-names-alike")]
    [InlineData("label-twice")]
    public void AThirdThatIsCalledAlikeIsAnotherFault(string id)
    {
        var job = Called(Called(new TestJob(), "W01", "Hall"), "W02", id == "hub-names-alike" ? "Halls" : "Hall");
        job = Called(Waived(job, id), "W03", id == "hub-names-alike" ? "Hally" : "Hall");
        Assert.Equal(3, job.Report.Findings.Count(f => f.Open && f.Check.Id == id));

        static TestJob Called(TestJob job, string tag, string name) => job.Window(tag).Say(tag, UnitFacts.Serial, name).Say(tag, UnitFacts.HubName, name)
            .Say(tag, RunFacts.LabelAtWindow, name).Say(tag, RunFacts.LabelAtPanel, name);
    }

    [Fact]
    public void AnotherLabelOfTheSameCableIsAnotherFault()
    {
        var job = new TestJob();
        foreach (var tag in new[] { "W01", "W02", "W03" })
            job.Window(tag).Say(tag, RunFacts.LabelAtWindow, tag).Say(tag, RunFacts.LabelAtPanel, tag);
        job.Say("W03", RunFacts.LabelAtWindow, "W01").Say("W03", RunFacts.LabelAtPanel, "W02");
        Assert.Equal(2, job.Report.Findings.Count(f => f.Check.Id == "label-twice" && f.Subject.Id == job.Run("W03").Id));
    }

    [Fact]
    public void AnotherWindowThatWasMeasuredTooEarlyIsAnotherFault()
    {
        var job = Waived(Jobs.Measured().SayOf("", HouseFacts.PaintedOn, "2027-04-20"), "measured-before-paint");
        Assert.Contains(Jobs.Measured("W02", job).Report.Findings, f => f.Open && f.Check.Id == "measured-before-paint");
    }

    private static TestJob Waived(TestJob job, string id)
    {
        Assert.Contains(job.Report.Findings, f => f.Check.Id == id);
        foreach (var finding in job.Report.Findings.Where(f => f.Check.Id == id).ToList())
            job.Do(PunchList.Waive(finding, job.House, "it may stay", "TC"));
        Assert.DoesNotContain(job.Report.Findings, f => f.Open && f.Check.Id == id);
        return job;
    }
}
