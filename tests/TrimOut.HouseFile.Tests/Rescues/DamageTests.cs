using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Rescues;
using TrimOut.HouseFile.Tests.Crashes;
using Xunit.Abstractions;

namespace TrimOut.HouseFile.Tests.Rescues;

/// <summary>Damage is seen, said, and what is sound is brought out. TRIMOUT_FUZZ_CASES sets the number of random cases (2000 when unset).</summary>
public class DamageTests
{
    private const string Main = ScriptedJob.Path;
    private const string JournalPath = Main + ".journal";
    private static readonly int Cases = int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_FUZZ_CASES"), out var cases) ? cases : 2000;

    private readonly RecordingFiles _files = new();
    private readonly ScriptedJob _job;
    private readonly ITestOutputHelper _output;

    /// <summary>Two days folded in, and a third that lies in the journal.</summary>
    public DamageTests(ITestOutputHelper output)
    {
        _output = output;
        _job = new ScriptedJob(_files);
        _job.Run(days: 3, savesADay: 12);
    }

    private byte[] File => _files.Read(Main);

    private byte[] Journal => _files.Read(JournalPath);

    private static RecordingFiles With(byte[]? file, byte[]? journal)
    {
        var names = new Dictionary<string, int>();
        var contents = new Dictionary<int, byte[]>();
        foreach (var (name, bytes) in new[] { (Main, file), (JournalPath, journal) })
        {
            if (bytes is null)
                continue;
            names[name] = names.Count + 1;
            contents[names[name]] = bytes;
        }
        return new RecordingFiles(new DiskState(names, contents));
    }

    private static HouseStoreException Refused(RecordingFiles files) =>
        Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(ScriptedJob.Here(files), Main));

    private string Lost(RecordingFiles files, out int rescued)
    {
        var read = Rescue.Read(ScriptedJob.Here(files), Main, []);
        var saved = _job.Saved.Select(ChangeJson.Write).ToHashSet();
        Assert.All(read.Changes, c => Assert.Contains(ChangeJson.Write(c), saved));
        rescued = read.Changes.Length;
        return string.Join("\n", read.Lost);
    }

    [Fact]
    public void ASoundFileIsRescuedWhole()
    {
        Assert.Equal("", Lost(_files, out var rescued));
        Assert.Equal(_job.Saved.Count, rescued);
    }

    [Fact]
    public void AFlippedBitInTheFileIsSeenAndTheRestIsRescued()
    {
        var file = File;
        var inText = file.AsSpan().IndexOf("\"value\":\"aaaaaaaaaaaaaaaaaaaaaaaaaaaaa"u8) + 12;
        file[inText] ^= 1;
        Assert.Contains("its contents are not what was written", Refused(With(file, Journal)).Message);
        Assert.StartsWith("Change ", Lost(With(file, Journal), out var rescued));
        Assert.Equal(_job.Saved.Count - 1, rescued);
    }

    [Fact]
    public void AZeroedPageIsSeenAndTheRestIsRescued()
    {
        var file = File;
        file.AsSpan(5 * 8192, 8192).Clear();
        Assert.Equal(StoreFault.Damaged, Refused(With(file, Journal)).Fault);
        Assert.NotEmpty(Lost(With(file, Journal), out var rescued));
        Assert.InRange(rescued, 12, _job.Saved.Count - 1);
    }

    [Fact]
    public void AFileThatWasCutShortIsSeenAndTheRestIsRescued()
    {
        var file = File[..(File.Length / 2)];
        Assert.Contains("its last page is missing", Refused(With(file, Journal)).Message);
        Assert.Contains("nobody knows how many changes there were", Lost(With(file, null), out _));
    }

    [Fact]
    public void ALostJournalIsSeen()
    {
        Assert.Contains("which is missing", Refused(With(File, null)).Message);
        Assert.Contains("which is missing", Lost(With(File, null), out var rescued));
        Assert.Equal(_job.Saved.Count - 12, rescued);
    }

    [Fact]
    public void AnotherHousesJournalIsSeen()
    {
        var others = new RecordingFiles();
        new ScriptedJob(others).Run(days: 3, savesADay: 2);
        Assert.Contains("is not the one that goes on from it", Refused(With(File, others.Read(JournalPath))).Message);
    }

    [Fact]
    public void AnEarlierDaysJournalIsSeen()
    {
        var earlier = new RecordingFiles();
        new ScriptedJob(earlier).Run(days: 6, savesADay: 12);
        Assert.Equal(StoreFault.Damaged, Refused(With(earlier.Read(Main), Journal)).Fault);
    }

    [Fact]
    public void AJournalThatWasCutAtALinesEndIsSeen()
    {
        var lines = System.Text.Encoding.UTF8.GetString(Journal).TrimEnd('\0').Split('\n');
        var cut = System.Text.Encoding.UTF8.GetBytes(string.Join('\n', lines[..^4]) + "\n");
        Assert.Contains("its end mark is missing", Refused(With(File, cut)).Message);
        Assert.Contains("its end mark is missing", Lost(With(File, cut), out _));
    }

    [Fact]
    public void AFlippedBitInTheMiddleOfTheJournalIsSeenAndTheRestIsRescued()
    {
        var journal = Journal;
        journal[journal.AsSpan().TrimEnd((byte)0).Length / 2] ^= 4;
        Assert.Contains("is damaged, and others follow it", Refused(With(File, journal)).Message);
        Assert.NotEmpty(Lost(With(File, journal), out var rescued));
        Assert.Equal(_job.Saved.Count - 1, rescued);
    }

    [Fact]
    public void ASaveThatNeverEndedIsSaidAndItsBytesAreKept()
    {
        var torn = Journal;
        var end = torn.AsSpan().LastIndexOf("\nend\n"u8) + 1;
        torn.AsSpan((end / 512 + 2) * 512, 100).Fill((byte)'x');
        var files = With(File, torn);
        using var house = HouseOnDisk.Open(ScriptedJob.Here(files), Main);
        Assert.Equal(_job.Saved.Count, house.Opened.Count);
        Assert.Contains("bytes that are no save which ended", house.Remark);
        Assert.Equal(torn, files.Read(Main + ".unread-20260302-080000"));
    }

    [Fact]
    public void NoRandomDamageHangsCrashesOrLosesInSilence()
    {
        var random = new Random(11);
        int seen = 0, said = 0, harmless = 0;
        for (var one = 0; one < Cases; one++)
        {
            var (file, journal) = (File, Journal);
            for (var times = random.Next(1, 4); times > 0; times--)
            {
                if (random.Next(2) == 0)
                    file = Spoil(file, random);
                else
                    journal = Spoil(journal, random);
            }
            var files = With(file, journal);
            var lost = Lost(files, out var rescued);
            try
            {
                using var house = HouseOnDisk.Open(ScriptedJob.Here(files), Main);
                Assert.All(house.Opened.Zip(_job.Saved), pair => Assert.Equal(ChangeJson.Write(pair.Second), ChangeJson.Write(pair.First)));
                if (house.Opened.Count == _job.Saved.Count)
                    harmless++;
                else
                    said += house.Remark is null
                        ? throw new InvalidOperationException($"case {one}: {house.Opened.Count} of {_job.Saved.Count} changes and nothing said")
                        : 1;
            }
            catch (HouseStoreException)
            {
                seen++;
            }
            Assert.True(rescued == _job.Saved.Count || lost.Length > 0, $"case {one}: {rescued} rescued and no loss listed");
        }
        _output.WriteLine($"{Cases} cases: {seen} seen as damage, {said} a save that never ended, {harmless} without loss");
        Assert.True(seen > Cases / 2);
    }

    private static byte[] Spoil(byte[] bytes, Random random)
    {
        var spoilt = bytes.ToArray();
        if (spoilt.Length == 0)
            return spoilt;
        var at = random.Next(spoilt.Length);
        var length = Math.Min(random.Next(1, 5000), spoilt.Length - at);
        switch (random.Next(6))
        {
            case 0:
                spoilt[at] ^= (byte)(1 << random.Next(8));
                return spoilt;
            case 1:
                spoilt.AsSpan(at, length).Clear();
                return spoilt;
            case 2:
                return spoilt[..at];
            case 3:
                random.NextBytes(spoilt.AsSpan(at, length));
                return spoilt;
            case 4:
                return [.. spoilt[..at], .. spoilt[(at + length)..]];
            default:
                spoilt.AsSpan(random.Next(spoilt.Length - length + 1), length).CopyTo(spoilt.AsSpan(at));
                return spoilt;
        }
    }
}
