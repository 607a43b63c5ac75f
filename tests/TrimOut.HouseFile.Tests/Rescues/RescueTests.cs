using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Rescues;
using TrimOut.HouseFile.Tests.Crashes;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Rescues;

/// <summary>What a rescue brings out and what it lists as lost make up all that was saved; what is of others is named and left out.</summary>
public partial class RescueTests
{
    private const string Main = ScriptedJob.Path;
    private const string JournalPath = Main + ".journal";

    private readonly RecordingFiles _files = new();
    private readonly ScriptedJob _job;

    /// <summary>Two days folded in, and a third that lies in the journal.</summary>
    public RescueTests()
    {
        _job = new ScriptedJob(_files);
        _job.Run(days: 3, savesADay: 12);
    }

    private byte[] File => _files.Read(Main);

    private byte[] Journal => _files.Read(JournalPath);

    private static RecordingFiles With(byte[]? file, byte[]? journal)
    {
        var files = new RecordingFiles();
        foreach (var (name, bytes) in new[] { (Main, file), (JournalPath, journal) })
        {
            if (bytes is null)
                continue;
            using var made = files.Create(name);
            made.Write(0, bytes);
        }
        return files;
    }

    /// <summary>The same job in another house, with names of its own.</summary>
    private static RecordingFiles OtherHouse(int lastDay = 12)
    {
        var files = new RecordingFiles();
        new ScriptedJob(files, firstName: 500).Run(days: 3, savesADay: 12, lastDay);
        return files;
    }

    private Rescued Rescued(byte[]? file, byte[]? journal, string? house = null)
    {
        var read = Rescue.Read(ScriptedJob.Here(With(file, journal)), Main, [], house);
        var saved = _job.Saved.Select(ChangeJson.Write).ToList();
        var there = read.Changes.Select(ChangeJson.Write).ToHashSet();
        if (house is null || house == "00000001")
            Assert.All(there, c => Assert.Contains(c, saved));
        var listed = read.Lost.SelectMany(l => Numbers().Matches(l)).SelectMany(m => Range(m)).ToHashSet();
        var open = read.Lost.Any(l => l.Contains("nobody knows", StringComparison.Ordinal) || l.Contains("is lost", StringComparison.Ordinal)
            || l.Contains("are lost", StringComparison.Ordinal) || l.Contains("missing", StringComparison.Ordinal));
        for (var number = 1; number <= saved.Count; number++)
            Assert.True(there.Contains(saved[number - 1]) || listed.Contains(number) || open || house is not null,
                $"change {number} is neither there nor listed");
        return read;
    }

    private static IEnumerable<int> Range(Match match)
    {
        var from = int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        var to = match.Groups[2].Success ? int.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) : from;
        return Enumerable.Range(from, to - from + 1);
    }

    [Fact]
    public void AnotherHousesJournalIsNamedAndNothingOfItComesIn()
    {
        var read = Rescued(File, OtherHouse().Read(JournalPath));
        Assert.Equal(_job.Saved.Count - 12, read.Changes.Length);
        Assert.Contains(read.Lost, l => l.Contains("is not the journal that goes on from the file", StringComparison.Ordinal));
        Assert.Contains(read.Lost, l => l.StartsWith("Changes 28 to 39", StringComparison.Ordinal));
        Assert.Contains(read.Apart, l => l.Contains("is of another house (00000501)", StringComparison.Ordinal));
    }

    [Fact]
    public void AnOlderJournalOfTheSameDayIsMissedByTheNoteInTheFile()
    {
        var earlier = new RecordingFiles();
        new ScriptedJob(earlier).Run(days: 3, savesADay: 12, lastDay: 7);
        var read = Rescued(File, earlier.Read(JournalPath));
        Assert.Equal(_job.Saved.Count - 5, read.Changes.Length);
        Assert.Contains(read.Lost, l => l.StartsWith("Changes 35 to 39", StringComparison.Ordinal));
    }

    [Fact]
    public void OfTwoHousesOneBehindTheOtherOneIsTakenAndTheOtherNamed()
    {
        var other = OtherHouse().Read(Main);
        byte[] joined = [.. other, .. File];
        var read = Rescued(joined, Journal);
        Assert.Equal(_job.Saved.Count, read.Changes.Length);
        Assert.Contains(read.Lost, l => l.Contains("several house files", StringComparison.Ordinal));
        Assert.Contains(read.Apart, l => l.Contains("another house (00000501)", StringComparison.Ordinal));
        Assert.Equal(_job.Saved.Count - 12, Rescued(joined, Journal, house: "00000501").Changes.Length);
    }

    [Fact]
    public void OfTwoHousesOneBehindTheOtherTheOneOfTheJournalIsTakenWhereNoLastPageTells()
    {
        byte[] joined = [.. OtherHouse().Read(Main), .. File];
        joined.AsSpan(joined.Length - Trailer.Size).Clear();
        var read = Rescued(joined, Journal);
        Assert.Equal(_job.Saved.Count, read.Changes.Length);
        Assert.Contains(read.Lost, l => l.Contains("changes of several houses", StringComparison.Ordinal) && l.Contains("--house", StringComparison.Ordinal));
        Assert.Contains(read.Apart, l => l.Contains("another house (00000501)", StringComparison.Ordinal));
    }

    [Fact]
    public void AHouseAndAnOlderStateOfItOneBehindTheOtherAreOneHouse()
    {
        var earlier = new RecordingFiles();
        new ScriptedJob(earlier).Run(days: 2, savesADay: 12);
        Assert.Equal(_job.Saved.Count, Rescued([.. earlier.Read(Main), .. File], Journal).Changes.Length);
        Assert.Equal(_job.Saved.Count, Rescued(File, [.. Journal, .. Journal]).Changes.Length);
        Assert.Equal(_job.Saved.Count, Rescued(File, [.. OtherHouse().Read(JournalPath), .. Journal]).Changes.Length);
    }

    [Fact]
    public void AFlippedBitInARowsNumberNeitherMovesItNorMakesALoop()
    {
        for (var bit = 0; bit < 64; bit++)
        {
            var file = File;
            var at = file.AsSpan().IndexOf("\u0012n\0"u8) + 3;
            var number = BinaryPrimitives.ReadInt64LittleEndian(file.AsSpan(at));
            BinaryPrimitives.WriteInt64LittleEndian(file.AsSpan(at), number ^ (1L << bit));
            var read = Rescued(file, Journal);
            Assert.Equal(_job.Saved.Count - 1, read.Changes.Length);
            Assert.Single(read.Lost);
            Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"Change {number}"), read.Lost[0]);
        }
    }

    [Fact]
    public void AnotherCopysChangesInTheSameFileAreLeftOut()
    {
        // The same house and numbers, other changes.
        var other = new RecordingFiles();
        new ScriptedJob(other, words: "other").Run(days: 3, savesADay: 12);
        var read = Rescued([.. other.Read(Main), .. File], Journal);
        Assert.Equal(_job.Saved.Count, read.Changes.Length);
        Assert.Contains(read.Apart, l => l.Contains("another copy of this house", StringComparison.Ordinal));
    }

    [Fact]
    public void TwoCopiesOfOneHouseOneBehindTheOtherAreMergedByTheNamesOfTheirChanges()
    {
        using var folder = new TryFolder();
        folder.Begin();
        var site = folder.In("site.trimout");
        System.IO.File.Copy(folder.House, site);
        folder.Work(s => TryFolder.AddWindow(s));
        folder.Work(s =>
        {
            for (var window = 0; window < 3; window++)
                TryFolder.AddWindow(s);
        }, site);
        var joined = folder.In("joined.trimout");
        System.IO.File.WriteAllBytes(joined, [.. System.IO.File.ReadAllBytes(site), .. System.IO.File.ReadAllBytes(folder.House)]);
        var read = Rescue.Read(joined);
        Assert.Equal(2 + 1 + 3, read.Changes.Length);
        Assert.Contains(read.Apart, l => l.StartsWith("3 changes of another copy of this house", StringComparison.Ordinal));
        Assert.DoesNotContain(read.Apart, l => l.Contains("left out", StringComparison.Ordinal));
        Assert.True(HouseLog.Of(read.Changes).Ok);
    }

    [Fact]
    public void WhatIsTiedToNothingIsBroughtOutAndListedAsNotCertain()
    {
        var file = File;
        foreach (var number in new[] { 4, 6 })
        {
            var text = System.Text.Encoding.UTF8.GetBytes(ChangeJson.Write(_job.Saved[number - 1])[..40]);
            file[file.AsSpan().IndexOf(text) + 8] ^= 1;
        }
        var read = Rescued(file, Journal);
        Assert.Equal(_job.Saved.Count - 2, read.Changes.Length);
        Assert.Contains(read.Lost, l => l.StartsWith("Change 4,", StringComparison.Ordinal));
        Assert.Contains(read.Lost, l => l.StartsWith("Change 6,", StringComparison.Ordinal));
        Assert.Contains(read.Lost, l => l.StartsWith("Change 5 was brought out, and what ties it", StringComparison.Ordinal));
    }

    [Fact]
    public void GapsAreFilledFromAnotherCopyByTheChain()
    {
        var file = File;
        file.AsSpan(5 * 8192, 3 * 8192).Clear();
        var files = With(file, Journal);
        using (var backup = files.Create("/stick/backup.trimout"))
            backup.Write(0, File);
        var read = Rescue.Read(ScriptedJob.Here(files), Main, ["/stick/backup.trimout"]);
        Assert.Equal(_job.Saved.Select(ChangeJson.Write), read.Changes.Select(ChangeJson.Write));
        Assert.Empty(read.Lost);
        using (var foreign = files.Create("/stick/foreign.trimout"))
            foreign.Write(0, OtherHouse().Read(Main));
        Assert.Contains(Rescue.Read(ScriptedJob.Here(files), Main, ["/stick/foreign.trimout"]).Lost, l =>
            l.Contains("is of another house: nothing was taken", StringComparison.Ordinal));
    }

    [GeneratedRegex("^Changes? ([0-9]+)(?: to ([0-9]+))?")]
    private static partial Regex Numbers();

    [Fact]
    public void WhatAnotherCopyFilledIsNotCalledLost()
    {
        var files = With(File, Journal[..(Journal.AsSpan().LastIndexOf("\nend\n"u8) - 40)]);
        const string copy = "/home/copy.trimout";
        using (var made = files.Create(copy))
            made.Write(0, File);
        using (var made = files.Create(copy + ".journal"))
            made.Write(0, Journal);
        var alone = Rescue.Read(ScriptedJob.Here(files), Main, []);
        Assert.Contains(alone.Lost, l => l.EndsWith("What came after its last sound change is lost.", StringComparison.Ordinal));
        var filled = Rescue.Read(ScriptedJob.Here(files), Main, [copy]);
        Assert.Equal(_job.Saved.Select(ChangeJson.Write), filled.Changes.Select(ChangeJson.Write));
        Assert.DoesNotContain(filled.Lost, l => l.Contains("lost", StringComparison.Ordinal));
        Assert.Contains(filled.Lost, l => l.EndsWith($"Whether anything was saved after change {_job.Saved.Count} can't be told.", StringComparison.Ordinal));
        Assert.Contains(filled.Apart, a => a.StartsWith("From the other copies", StringComparison.Ordinal)
            && a.EndsWith($"change {_job.Saved.Count}.", StringComparison.Ordinal));
    }

    /// <summary>The number in such a head is under no seal.</summary>
    [Theory]
    [InlineData("1")]
    [InlineData("4")]
    [InlineData("6")]
    [InlineData("999999999")]
    public void AHeadOfTheFirstFormWithAnotherNumberBringsNoChangeTwice(string number)
    {
        var kept = System.IO.Path.Combine(Repository.Root, "tests", "TrimOut.HouseFile.Tests", "old-files", "form-1-open");
        var journal = System.IO.File.ReadAllText(kept + ".trimout.journal");
        Assert.Contains(" 5 ", journal[..journal.IndexOf('\n', StringComparison.Ordinal)], StringComparison.Ordinal);
        var at = journal.IndexOf(" 5 ", StringComparison.Ordinal);
        var files = With(System.IO.File.ReadAllBytes(kept + ".trimout"), Encoding.UTF8.GetBytes(journal[..at] + $" {number} " + journal[(at + 3)..]));
        var read = Rescue.Read(ScriptedJob.Here(files), Main, []);
        Assert.Equal(System.IO.File.ReadAllLines(kept + ".jsonl"), read.Changes.Select(ChangeJson.Write));
        Assert.NotEmpty(read.Lost);
    }

    [Fact]
    public void AJournalOfAnotherHouseDoesNotDecideWhichHouseAFileWithoutItsLastPageIsOf()
    {
        var file = File;
        file.AsSpan(file.Length - Trailer.Size).Clear();
        var read = Rescue.Read(ScriptedJob.Here(With(file, OtherHouse().Read(JournalPath))), Main, []);
        Assert.Equal(_job.Saved.Take(read.Changes.Length).Select(ChangeJson.Write), read.Changes.Select(ChangeJson.Write));
        Assert.InRange(read.Changes.Length, 20, _job.Saved.Count);
        Assert.NotEmpty(read.Lost);
    }

    [Fact]
    public void WhoseJournalItIsIsAskedWhereNoLastPageTells()
    {
        var file = File;
        file.AsSpan(file.Length - Trailer.Size).Clear();
        var read = Rescue.Read(ScriptedJob.Here(With(file, Journal)), Main, []);
        Assert.Equal(_job.Saved.Select(ChangeJson.Write), read.Changes.Select(ChangeJson.Write));
        Assert.Contains(read.Lost, l => l.StartsWith($"Changes {_job.Saved.Count - 11} to {_job.Saved.Count} came from ", StringComparison.Ordinal));
    }

    /// <summary>What a journal was cut to within a line, and a line that a program which did not see it wrote behind the hole.</summary>
    [Fact]
    public void ALineThatStandsWholeBehindZerosInTheMiddleOfAnotherIsBroughtOut()
    {
        var journal = Journal;
        var text = Encoding.UTF8.GetString(journal);
        var lines = text.Split('\n');
        var from = lines[0].Length + 1 + lines[1].Length + 1;
        journal.AsSpan(from + 30, lines[2].Length + 1 - 30).Clear();
        var read = Rescued(File, journal);
        var saved = _job.Saved.Select(ChangeJson.Write).ToList();
        var there = read.Changes.Select(ChangeJson.Write).ToHashSet();
        Assert.Equal(lines[2][lines[2].IndexOf('{', StringComparison.Ordinal)..], Assert.Single(saved, s => !there.Contains(s)));
    }

    [Fact]
    public void WhatWasPutBackInAnotherOrderIsNotSaidToBeLeftOut()
    {
        var backup = File;
        var files = With(File, Journal);
        using (var house = HouseOnDisk.Open(ScriptedJob.Here(files), Main))
        {
            var changes = house.Opened.ToList();
            (changes[^1], changes[^2]) = (changes[^2], changes[^1]);
            house.Replace(changes);
        }
        using (var other = files.Create("/old.trimout"))
            other.Write(0, backup);
        var read = Rescue.Read(ScriptedJob.Here(files), Main, ["/old.trimout"]);
        Assert.Empty(read.Lost);
        Assert.DoesNotContain(read.Apart, a => a.Contains("left out", StringComparison.Ordinal));
    }
}
