using System.Text;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Tests.Crashes;

namespace TrimOut.HouseFile.Tests.Durable;

/// <summary>A save that was torn is told from damage by the journal alone, and what was called saved is missed by the note in the file.</summary>
public class JournalTailTests
{
    private const string JournalPath = ScriptedJob.Path + ".journal";

    private readonly RecordingFiles _files = new();
    private readonly ScriptedJob _job;

    /// <summary>Two days folded in, and a third that lies in the journal.</summary>
    public JournalTailTests()
    {
        _job = new ScriptedJob(_files);
        _job.Run(days: 3, savesADay: 12);
    }

    private byte[] Whole => _files.Read(JournalPath);

    private static JournalContents Read(byte[] bytes) => Journal.Read(bytes, "00000001", Seal.Of);

    private static int EndOf(byte[] journal) => journal.AsSpan().LastIndexOf("\nend\n"u8) + 1;

    private RecordingFiles With(byte[] journal)
    {
        var files = new RecordingFiles(_files.Now);
        using var file = files.Create(JournalPath);
        file.Write(0, journal);
        return files;
    }

    /// <summary>What is said of the house with this journal, by whoever looks and by whoever works alike.</summary>
    private string Said(byte[] journal)
    {
        var works = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(ScriptedJob.Here(With(journal)), ScriptedJob.Path));
        var looks = Assert.Throws<HouseStoreException>(() => HouseOnDisk.OpenToRead(ScriptedJob.Here(With(journal)), ScriptedJob.Path));
        Assert.Equal(works.Message, looks.Message);
        Assert.Equal((StoreFault.Damaged, true), (looks.Fault, looks.JournalOnly));
        using var went = HouseOnDisk.OpenToRead(ScriptedJob.Here(With(journal)), ScriptedJob.Path, goOn: true);
        Assert.Equal(looks.Message, went.LeftOut);
        Assert.InRange(went.Opened.Count, _job.Saved.Count - 12, _job.Saved.Count - 1);
        return looks.Message;
    }

    [Fact]
    public void AWholeJournalIsWhole() => Assert.Equal((12, 0, null), (Read(Whole).Entries.Count, Read(Whole).Unread, Read(Whole).Fault));

    [Fact]
    public void WhatEveryCutOfASaveLeavesIsATornSave()
    {
        // Room is taken before a line goes into it.
        byte[] before = [.. Whole, .. new byte[Journal.Room]];
        var from = EndOf(before);
        var entry = Read(before).Entries[^1];
        foreach (var length in new[] { 10, 300, 700, 2000, 9000 })
        {
            var json = "{" + new string('x', length) + "}";
            var line = Journal.Line(Read(before).Head!.Id, new Entry(entry.Number + 1, entry.Seal, Seal.Of("00000001", entry.Number + 1, entry.Seal,
                json), json));
            var random = new Random(length);
            for (var time = 0; time < 60; time++)
            {
                var torn = before.ToArray();
                var lost = false;
                for (var piece = from; piece < from + line.Length;)
                {
                    var end = Math.Min((piece / 512 + 1) * 512, from + line.Length);
                    if (random.Next(2) == 0)
                        line.AsSpan(piece - from, end - piece).CopyTo(torn.AsSpan(piece));
                    else
                        lost = true;
                    piece = end;
                }
                var read = Read(torn);
                Assert.Null(read.Fault);
                Assert.Equal(lost ? 12 : 13, read.Entries.Count);
            }
        }
    }

    [Fact]
    public void AFlippedBitInTheLastSaveIsDamage()
    {
        var journal = Whole;
        journal[EndOf(journal) - 9] ^= 2;
        Assert.Contains("does not fit its seal", Read(journal).Fault);
        Assert.Contains("At least 1 save is in doubt.", Said(journal));
    }

    [Fact]
    public void ZerosInThePlaceOfTheLastSavesAreDamage()
    {
        var journal = Whole;
        var lines = Read(journal).Entries.TakeLast(3).Sum(e => Journal.Line(Read(journal).Head!.Id, e).Length - Journal.EndMark.Length);
        journal.AsSpan(EndOf(journal) - lines, lines + 4).Clear();
        Assert.Contains("nothing but zeros", Read(journal).Fault);
        Assert.Contains("At least 3 saves are in doubt.", Said(journal));
    }

    [Fact]
    public void ACutJournalIsDamageWhereverItIsCut()
    {
        var end = EndOf(Whole);
        for (var cut = end - 3000; cut < end; cut += 97)
        {
            Assert.NotNull(Read(Whole[..cut]).Fault);
            Assert.DoesNotContain("middle of a save", Said(Whole[..cut]));
        }
    }

    [Fact]
    public void SavesBehindAHoleAreCounted()
    {
        var journal = Whole;
        var third = journal.AsSpan().IndexOf(Encoding.UTF8.GetBytes($"{Read(journal).Head!.Id} {Read(journal).Entries[2].Number} "));
        journal[third + 40] ^= 1;
        Assert.Contains("others follow it. At least 10 saves are in doubt.", Said(journal));
    }

    [Fact]
    public void AnOlderJournalOfTheSameDayIsMissedByTheNoteInTheFile()
    {
        var earlier = new RecordingFiles();
        new ScriptedJob(earlier).Run(days: 3, savesADay: 12, lastDay: 7);
        Assert.Equal(7, Read(earlier.Read(JournalPath)).Entries.Count);
        Assert.Null(Read(earlier.Read(JournalPath)).Fault);
        Assert.Contains("At least 5 saves are in doubt.", Said(earlier.Read(JournalPath)));
    }

    [Fact]
    public void ATornSaveIsSaidToWhoeverLooks()
    {
        var end = EndOf(Whole);
        var torn = Whole;
        var next = Encoding.UTF8.GetBytes($"{Read(Whole).Head!.Id} {Read(Whole).Last + 1} {Read(Whole).Entries[^1].Seal} 2half a save {new string('y', 900)}");
        next.AsSpan(0, 512 - end % 512).CopyTo(torn.AsSpan(end));
        using var looked = HouseOnDisk.OpenToRead(ScriptedJob.Here(With(torn)), ScriptedJob.Path);
        Assert.Equal(_job.Saved.Count, looked.Opened.Count);
        Assert.Contains("stopped in the middle of a save", looked.Remark);
        Assert.Null(looked.LeftOut);
    }

    [Fact]
    public void ALongDayTakesRoomAgainAndAgain()
    {
        var files = new RecordingFiles();
        var job = new ScriptedJob(files);
        job.Run(days: 3, savesADay: 300);
        Assert.True(files.Read(JournalPath).Length > 2 * Journal.Room);
        Assert.Equal(0, files.Read(JournalPath).Length % Journal.Room);
        using var house = HouseOnDisk.OpenToRead(ScriptedJob.Here(files), ScriptedJob.Path);
        Assert.Equal(job.Saved.Count, house.Opened.Count);
    }

    [Fact]
    public void AJournalThatIsCutInsideItsZerosIsDamage()
    {
        var end = EndOf(Whole) + Journal.EndMark.Length;
        foreach (var length in new[] { end + 1, end + 600, Journal.RoomFor(end) - 1 })
        {
            Assert.Contains("It was cut short, behind its end mark.", SaidOfAll(Whole[..(int)length]), StringComparison.Ordinal);
        }
    }

    /// <summary>A save that was taken back leaves the journal so; room that was being taken leaves it longer.</summary>
    [Fact]
    public void AJournalThatEndsRightBehindItsMarkOrLongerThanItsRoomIsWhole()
    {
        var end = EndOf(Whole) + Journal.EndMark.Length;
        foreach (var bytes in new[] { Whole[..end], [.. Whole, .. new byte[600]] })
        {
            Assert.Null(Read(bytes).Fault);
            using var house = HouseOnDisk.Open(ScriptedJob.Here(With(bytes)), ScriptedJob.Path);
            Assert.Equal(_job.Saved.Count, house.Opened.Count);
        }
    }

    /// <summary>The same, of a journal in which nothing that was saved is missing.</summary>
    private string SaidOfAll(byte[] journal)
    {
        var works = Assert.Throws<HouseStoreException>(() => HouseOnDisk.Open(ScriptedJob.Here(With(journal)), ScriptedJob.Path));
        using var went = HouseOnDisk.OpenToRead(ScriptedJob.Here(With(journal)), ScriptedJob.Path, goOn: true);
        Assert.Equal((works.Message, 0L, _job.Saved.Count), (went.LeftOut, went.InDoubt, went.Opened.Count));
        return works.Message;
    }
}
