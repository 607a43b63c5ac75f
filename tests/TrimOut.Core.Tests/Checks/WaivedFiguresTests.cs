using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

public class WaivedFiguresTests
{
    private static readonly string Samples = Path.Combine(RepositoryRoot.Path, "sample-jobs");

    public static TheoryData<string> Houses => [.. Directory.GetDirectories(Samples).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Houses))]
    public void RenamingEverythingAndSwitchingUnitsLeavesEveryWaiverInForce(string sample) => StaysInForce(sample, asOfAnEarlierRelease: false);

    [Theory]
    [MemberData(nameof(Houses))]
    public void AWaiverOfAnEarlierReleaseThatHoldsOnlyTheWordsOfItsDayStaysInForceToo(string sample) => StaysInForce(sample, asOfAnEarlierRelease: true);

    private static void StaysInForce(string sample, bool asOfAnEarlierRelease)
    {
        var scribe = Open(sample, asOfAnEarlierRelease);
        var waived = Waived(scribe.House);
        Assert.Equal(scribe.House.Waivers.Length, waived.Count);
        Assert.All(scribe.House.Waivers, w => Assert.Equal(asOfAnEarlierRelease, w.Arguments is null));
        var draft = new Draft("Everything has another name, in other units");
        foreach (var (at, named) in new[] { ItemKind.Room, ItemKind.Window, ItemKind.Remote, ItemKind.Panel, ItemKind.Hub }
            .SelectMany(k => scribe.House.ItemsOf(k)).Index())
            draft = draft.PutStored(named.Id, named.Kind == ItemKind.Window ? WindowFacts.Tag.Name : "name", $"New {at}");
        Assert.True(scribe.Record(draft).Ok);
        Assert.Equal(waived, Waived(scribe.House));
        foreach (var units in new[] { "millimetres", "inches", "millimetres" })
        {
            Assert.True(scribe.Record(new Draft(units).PutStored(House.RootId, HouseFacts.Units.Name, units)).Ok);
            Assert.Equal(waived, Waived(scribe.House));
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void AnotherFigureReopensAWaiverAndTheFormerOneClosesItAgain(bool asOfAnEarlierRelease)
    {
        var scribe = Open("orchard-cottage", asOfAnEarlierRelease);
        var waiver = CheckReport.Of(scribe.House).Findings.Single(f => f is { Open: false, Check.Id: "tail-under-whole-width" });
        var field = RunFacts.TailFound.Name;
        var run = waiver.Subject.Kind == ItemKind.Run ? waiver.Subject : scribe.House.FindUnit(waiver.Subject.Id)!.Run!.Item;
        var before = run.Latest(field)!.Stored;
        Assert.True(scribe.Record(SetFact.Typed(scribe.House, run, RunFacts.TailFound, "29 9/16\"").Value).Ok);
        Assert.True(CheckReport.Of(scribe.House).Findings.Single(f => f.Check.Id == waiver.Check.Id && f.Subject.Id == waiver.Subject.Id).Open);
        Assert.True(scribe.Record(new Draft("As before").PutStored(run.Id, field, before)).Ok);
        Assert.False(CheckReport.Of(scribe.House).Findings.Single(f => f.Check.Id == waiver.Check.Id && f.Subject.Id == waiver.Subject.Id).Open);
    }

    private static List<(string, string)> Waived(House house) =>
        [.. CheckReport.Of(house).Findings.Where(f => !f.Open).Select(f => (f.Check.Id, f.Subject.Id)).Order()];

    private static Scribe Open(string sample, bool asOfAnEarlierRelease)
    {
        var store = new MemoryStore(opened: [.. File.ReadLines(Path.Combine(Samples, sample, "history.jsonl")).Where(l => l.Length > 0)
            .Select(l => ChangeJson.Read(l).Value)]);
        var scribe = new Scribe(store, new FakeTimeProvider(new DateTimeOffset(2027, 1, 4, 8, 0, 0, TimeSpan.Zero)), "Test crew");
        if (!asOfAnEarlierRelease)
        {
            var draft = new Draft("The same waivers, with their figures");
            foreach (var finding in CheckReport.Of(scribe.House).Findings.Where(f => !f.Open))
                draft = draft.Put(finding.Waiver!.Id, WaiverFacts.Arguments, finding.Found.Message.Figures);
            Assert.True(scribe.Record(draft).Ok);
        }
        return scribe;
    }
}
