using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using Xunit.Abstractions;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>What was called saved is missed when it is gone: by the note in the house file, and by the room and the end mark of the journal; with each of
/// these taken out.</summary>
public class LostTailTests(ITestOutputHelper output)
{
    private const string JournalPath = ScriptedJob.Path + ".journal";
    private const int Saves = 12;

    /// <summary>How often fewer changes were shown than were saved, and what was said then.</summary>
    private sealed record Counts(int Tried, int Refused, int CalledTorn, int Silent);

    private static (RecordingFiles Files, ScriptedJob Job) AfterThirdDay(RecordingFiles files, int saves = Saves)
    {
        var job = new ScriptedJob(files);
        job.Run(days: 3, savesADay: Saves, lastDay: saves);
        return (files, job);
    }

    private static List<byte[]> OlderJournals() => [.. Enumerable.Range(1, Saves - 1).Select(n => AfterThirdDay(new RecordingFiles(),
        n).Files.Read(JournalPath))];

    /// <summary>The journal cut at every sector and every line, and at some places between.</summary>
    private static List<byte[]> CutJournals(byte[] journal)
    {
        var end = journal.AsSpan().TrimEnd((byte)0).Length;
        var head = journal.AsSpan().IndexOf((byte)'\n') + 1;
        return [.. Enumerable.Range(head, end - head).Where(at => at % 512 == 0 || at % 61 == 0 || journal[at - 1] == '\n').Select(at => journal[..at])];
    }

    private static byte[] WithRoom(byte[] journal) => [.. journal, .. new byte[Journal.RoomFor(journal.Length) - journal.Length]];

    private Counts Count(string what, RecordingFiles files, int saved, IEnumerable<byte[]> journals)
    {
        var counts = new Counts(0, 0, 0, 0);
        foreach (var journal in journals)
        {
            var now = new RecordingFiles(files.Now);
            using (var file = now.Create(JournalPath))
                file.Write(0, journal);
            counts = counts with { Tried = counts.Tried + 1 };
            try
            {
                using var house = HouseOnDisk.OpenToRead(ScriptedJob.Here(now), ScriptedJob.Path);
                if (house.Opened.Count < saved)
                    counts = house.Remark is null ? counts with { Silent = counts.Silent + 1 } : counts with { CalledTorn = counts.CalledTorn + 1 };
            }
            catch (HouseStoreException)
            {
                counts = counts with { Refused = counts.Refused + 1 };
            }
        }
        output.WriteLine($"{what}: {counts}");
        return counts;
    }

    [Fact]
    public void AnOlderJournalIsSeenByTheNoteAndByNothingElse()
    {
        var (files, job) = AfterThirdDay(new RecordingFiles());
        Assert.Equal(new Counts(11, 11, 0, 0), Count("older journals", files, job.Saved.Count, OlderJournals()));
        (files, job) = AfterThirdDay(new NoNotes());
        Assert.Equal(new Counts(11, 0, 0, 11), Count("older journals, no note", files, job.Saved.Count, OlderJournals()));
    }

    [Fact]
    public void ACutJournalIsSeenByItsRoomWhereThereIsNoNote()
    {
        var (files, job) = AfterThirdDay(new RecordingFiles());
        var cut = CutJournals(files.Read(JournalPath));
        Assert.Equal(new Counts(cut.Count, cut.Count, 0, 0), Count("cut journals", files, job.Saved.Count, cut));
        Assert.Equal(new Counts(cut.Count, cut.Count, 0, 0), Count("cut journals with zeros behind", files, job.Saved.Count, cut.Select(WithRoom)));
        (files, job) = AfterThirdDay(new NoNotes());
        cut = CutJournals(files.Read(JournalPath));
        Assert.Equal(new Counts(cut.Count, cut.Count, 0, 0), Count("cut journals, no note", files, job.Saved.Count, cut));
        // Without the note and without the room, what was cut at a sector's edge is as a torn save would be; it is never silent.
        var neither = Count("cut journals with zeros behind, no note", files, job.Saved.Count, cut.Select(WithRoom));
        Assert.InRange(neither.CalledTorn, 1, cut.Count / 2);
        Assert.Equal(0, neither.Silent);
    }

    [Fact]
    public void WhatIsCutOffAfterAPowerCutIsNeverMissedInSilence()
    {
        var files = new RecordingFiles();
        var job = new ScriptedJob(files);
        job.Run(days: 3, savesADay: Saves);
        var random = new Random(9);
        int tried = 0, refused = 0, torn = 0;
        foreach (var (state, told, _) in CrashStates.Of(files.Record, new Random(3), tries: 1))
        {
            if (!state.Names.TryGetValue(JournalPath, out var number) || random.Next(3) > 0)
                continue;
            var journal = state.Contents[number].ToArray();
            var end = journal.AsSpan().TrimEnd((byte)0).Length;
            if (end < 200)
                continue;
            var from = random.Next(100, end);
            journal.AsSpan(from, Math.Min(journal.Length - from, end - from)).Clear();
            var now = new RecordingFiles(state);
            using (var file = now.Create(JournalPath))
                file.Write(0, random.Next(2) == 0 ? journal : journal[..from]);
            tried++;
            try
            {
                using var house = HouseOnDisk.OpenToRead(ScriptedJob.Here(now), ScriptedJob.Path);
                if (house.Opened.Count < told)
                    torn += house.Remark is not null ? 1 : throw new InvalidOperationException($"{house.Opened.Count} of {told} and nothing said");
            }
            catch (HouseStoreException)
            {
                refused++;
            }
        }
        output.WriteLine($"tails cut off after a power cut: {tried} tried, {refused} refused, {torn} called torn");
        Assert.True(tried > 100, $"Only {tried} were tried.");
        Assert.InRange(torn, 0, tried / 20);
    }
}
