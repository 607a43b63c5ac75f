using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Texts;

namespace TrimOut.Tests.SampleJobs;

public class EverySampleJobTests
{
    public static TheoryData<string> Names => [.. SampleJob.Names];

    [Fact]
    public void SampleJobsAreFoldersAndNothingElse()
    {
        Assert.Empty(Directory.GetFiles(SampleJob.Home));
        Assert.True(SampleJob.Names.Any());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ItsHistoryReadsAndWritesToTheByte(string name)
    {
        var job = SampleJob.Open(name);
        Assert.Equal(job.HistoryLines, HistoryText.Write(job.Log));
    }

    /// <summary>Run the tests, read the difference, and copy the file from <c>__mismatch__</c> when it is right.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void TheChecksFindWhatItsListSays(string name)
    {
        var job = SampleJob.Open(name);
        var expected = File.ReadAllText(job.In("expected-findings.txt"));
        if (expected != job.Findings)
        {
            Directory.CreateDirectory(job.In("__mismatch__"));
            File.WriteAllText(Path.Combine(job.In("__mismatch__"), "expected-findings.txt"), job.Findings);
        }
        Assert.Equal(expected, job.Findings);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryValueInItIsOneThatThisVersionReads(string name)
    {
        var unread = from item in SampleJob.Open(name).House.Items.Values
                     from field in item.Fields
                     let head = field.Value[^1]
                     where head is { Stored: not null, Value: null } && !field.Key.Contains('#', StringComparison.Ordinal)
                         && field.Key != Item.RemovedField && !field.Key.StartsWith("steps-version", StringComparison.Ordinal)
                         && !field.Key.StartsWith("asked-again", StringComparison.Ordinal)
                     select $"{item.Id} {field.Key}: {head.Stored}";
        Assert.Empty(unread);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void TwoPeopleWroteItOverMonthsAndTookSomethingBack(string name)
    {
        var changes = SampleJob.Open(name).Log.Changes;
        Assert.True(changes.Select(c => c.By).Distinct().Count() >= 2);
        Assert.True(changes.Select(c => c.Id.Device).Distinct().Count() >= 2);
        Assert.True(changes[^1].SaidAt - changes[0].SaidAt > TimeSpan.FromDays(60));
        Assert.Contains(changes, c => c.Edits.Any(e => e is Edit.Undo));
        Assert.All(changes.Zip(changes.Skip(1)),
            pair => Assert.True(pair.First.SaidAt < pair.Second.SaidAt, $"{pair.Second.Id} comes before {pair.First.Id} by the clock."));
    }

    /// <summary>A set of values that two houses share would read like the sheet of one maker.</summary>
    [Fact]
    public void NoTwoHaveAKitWithTheSameBrackets()
    {
        Fact<Length>[] brackets = [CoveringKindFacts.EndBracket, CoveringKindFacts.EndBracketBack, CoveringKindFacts.EndBracketDown,
            CoveringKindFacts.CentreBracket, CoveringKindFacts.CentreFrom, CoveringKindFacts.DepthNeeded, CoveringKindFacts.DepthFlush];
        var kits = from name in SampleJob.Names
                   from kind in SampleJob.Open(name).House.ItemsOf(ItemKind.CoveringKind)
                   select string.Join(' ', brackets.Select(b => kind.Get(b)));
        Assert.Equal(kits.Count(), kits.Distinct().Count());
        Assert.Equal(9, kits.Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ItsReadmeTellsOfEachStopInIt(string name)
    {
        var job = SampleJob.Open(name);
        var readme = File.ReadAllText(job.In("README.md"));
        Assert.All(job.Report.OpenStops.Select(f => f.Check.Id).Distinct(), id => Assert.Contains($"`{id}`", readme, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ItsReadmeSaysInOneLineWhatItIsFor(string name)
    {
        var lines = File.ReadAllLines(SampleJob.Open(name).In("README.md"));
        Assert.StartsWith("# ", lines[0], StringComparison.Ordinal);
        Assert.InRange(lines.Skip(1).First(l => l.Length > 0).Length, 20, 110);
    }
}
