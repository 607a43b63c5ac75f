using System.Security.Cryptography;
using TrimOut.Core.History;
using TrimOut.HouseFile.Kept;
using TrimOut.HouseFile.Tests.Crashes;
using Xunit.Abstractions;

namespace TrimOut.HouseFile.Tests.Kept;

/// <summary>What is kept is believed only where it is of the very house and whole; and damage of the house is seen as if nothing had been kept.</summary>
public class KeptDamageTests(ITestOutputHelper output)
{
    private const string Folder = "/home/kept";
    private static readonly BriefWork Brief = new(Folder, LargeFrom: 0);

    /// <summary>A house with days folded in, a journal that was left, what was kept, and some changes after it.</summary>
    private static RecordingFiles Left(int days = 4, int firstName = 0, string words = "A note")
    {
        var files = new RecordingFiles();
        new ScriptedJob(files, firstName: firstName, words: words, brief: Brief).Run(days, savesADay: 5, lastDay: 3);
        using (var house = Open(files))
            house.KeepAtClosing(() => HouseLog.Of(house.Opened).Value);
        using (var house = Open(files))
        {
            for (var one = 1; one <= 3; one++)
                house.Append(new Change(new ChangeId(house.Device, 1000 + one), 1000 + one, DateTimeOffset.UnixEpoch.AddYears(60), "Ash", words,
                    [new Edit.Put("house", "name", $"{one}", [])]));
        }
        return files;
    }

    private static string KeptName => KeptFile.NameOf(Folder, new HouseFileNames(System.IO.Path.GetFullPath(ScriptedJob.Path)));

    private static HouseOnDisk Open(RecordingFiles files, BriefWork? brief = null) =>
        HouseOnDisk.Open(ScriptedJob.Here(files), ScriptedJob.Path, brief ?? Brief);

    private static RecordingFiles With(RecordingFiles files, string name, byte[] bytes)
    {
        var state = files.Now;
        return new RecordingFiles(state with { Contents = new Dictionary<int, byte[]>(state.Contents) { [state.Names[name]] = bytes } });
    }

    /// <summary>What a house holds by one way in, or why it was refused.</summary>
    private static (string Holds, bool Kept) Said(RecordingFiles files, BriefWork brief)
    {
        try
        {
            using var house = Open(files, brief);
            var log = house.Kept ?? HouseLog.Of(house.Opened).Value;
            var items = log.House.Items.Values.Select(i => i.Id + " " + string.Join(" ", i.Fields.Select(f => f.Key + "=" + string.Join("|", f.Value))));
            return (string.Join("\n", [.. items, .. house.Opened.Select(ChangeJson.Write), house.Remark]), house.Kept is not null);
        }
        catch (HouseStoreException refused)
        {
            return ($"{refused.Fault} {refused.Message}", false);
        }
    }

    private static string Plain(RecordingFiles files) => Said(new RecordingFiles(files.Now), Brief with { KeptIn = null }).Holds;

    [Fact]
    public void WhatIsWholeAndOfTheHouseIsBelieved()
    {
        var files = Left();
        Assert.True(files.Exists(ScriptedJob.Path + ".journal"));
        Assert.Equal((Plain(files), true), Said(files, Brief));
    }

    [Fact]
    public void NoFlippedBitOrCutOfItIsEverBelieved()
    {
        var files = Left();
        var (sound, plain) = (files.Read(KeptName), Plain(files));
        for (var at = 0; at < sound.Length; at++)
        {
            var flipped = sound.ToArray();
            flipped[at] ^= (byte)(1 << at % 8);
            foreach (var damaged in new[] { flipped, sound[..at] })
            {
                if (at % 16 == 0 || at < 400)
                    Assert.Equal((plain, false), Said(With(files, KeptName, damaged), Brief));
            }
        }
        Assert.Equal((plain, false), Said(With(files, KeptName, [.. sound, 0]), Brief));
    }

    [Fact]
    public void WhatWasKeptOfAnotherHouseOrAnEarlierDayOrByAnotherProgramIsNotBelieved()
    {
        var files = Left();
        var plain = Plain(files);
        foreach (var other in new[] { Left(firstName: 500), Left(words: "Other words"), Left(days: 1), Left(days: 3), Left(days: 7) })
            Assert.Equal((plain, false), Said(With(files, KeptName, other.Read(KeptName)), Brief));
        var program = files.Read(KeptName);
        program[SHA256.HashSizeInBytes] ^= 1;
        SHA256.HashData(program.AsSpan(SHA256.HashSizeInBytes)).CopyTo(program, 0);
        Assert.Equal((plain, false), Said(With(files, KeptName, program), Brief));
    }

    [Fact]
    public void AnEarlierHousePutBackIsShownAsItIsWhateverWasKeptSince()
    {
        var (now, before) = (Left(), Left(days: 3));
        var mixed = With(before, KeptName, now.Read(KeptName));
        Assert.Equal((Plain(before), false), Said(mixed, Brief));
    }

    /// <summary>TRIMOUT_FUZZ_CASES sets how many cases (600 when unset).</summary>
    [Fact]
    public void DamageOfTheHouseIsSeenAsIfNothingHadBeenKept()
    {
        var cases = int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_FUZZ_CASES"), out var set) ? set : 600;
        var files = Left();
        var sound = Plain(files);
        var (random, seen, used) = (new Random(1), 0, 0);
        for (var one = 0; one < cases; one++)
        {
            var name = one % 2 == 0 ? ScriptedJob.Path : ScriptedJob.Path + ".journal";
            var bytes = files.Read(name);
            var (at, length) = (random.Next(bytes.Length), random.Next(1, 2000));
            // Most of the journal's room is zeros.
            if (one % 2 == 1 && one % 4 != 1)
                at = random.Next(bytes.AsSpan().TrimEnd((byte)0).Length);
            var part = bytes.AsSpan(at, Math.Min(length, bytes.Length - at));
            switch (one / 2 % 4)
            {
                case 0:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    part.Clear();
                    break;
                case 2:
                    random.NextBytes(part);
                    break;
                default:
                    bytes = bytes[..at];
                    break;
            }
            var damaged = With(files, name, bytes);
            var (plain, kept) = (Plain(damaged), Said(damaged, Brief));
            Assert.Equal(plain, kept.Holds);
            seen += plain == sound ? 0 : 1;
            used += kept.Kept ? 1 : 0;
            // What was kept is taken only of a house in which nothing is damaged.
            Assert.False(kept.Kept && plain != sound);
        }
        output.WriteLine($"{cases} cases of damage: {seen} seen as such, {used} that changed nothing and were opened by what was kept");
        Assert.True(seen > cases / 3, $"{seen} of {cases}");
    }

    [Fact]
    public void NoCrashOfShortWorkLosesASavedChangeOrBelievesAWrongFold()
    {
        var files = new RecordingFiles();
        var job = new ScriptedJob(files, brief: Brief);
        job.Run(days: 8, savesADay: 5);
        var (states, kept, wentOn) = (0, 0, 0);
        foreach (var (state, told, step) in CrashStates.Of(files.Record, new Random(1), tries: 1))
        {
            states++;
            try
            {
                using var house = Open(new RecordingFiles(state));
                Assert.True(house.Opened.Count >= told, $"step {step}: {told} changes were called saved, {house.Opened.Count} are there");
                Assert.Contains(house.Opened.Count, job.Saves);
                Assert.Equal(job.Saved.Take(house.Opened.Count).Select(ChangeJson.Write), house.Opened.Select(ChangeJson.Write));
                if (house.Kept is { } log)
                    Assert.Equal(HouseLog.Of(house.Opened).Value.House.Job.Fields.Select(f => f.Value[^1]), log.House.Job.Fields.Select(f => f.Value[^1]));
                kept += house.Kept is null ? 0 : 1;
                wentOn += house.WentOn ? 1 : 0;
            }
            catch (HouseStoreException notMadeYet) when (notMadeYet.Fault == StoreFault.NotThere && told < 0)
            {
                // Nothing was called saved yet.
            }
        }
        output.WriteLine($"short work: {states} crash states, {kept} opened by what was kept, {wentOn} gone on with");
        Assert.True(states > 1000 && kept > 100 && wentOn > 100, $"{states} {kept} {wentOn}");
    }

    [Fact]
    public void AJournalThatIsLeftIsKnownToTheFileToItsLastChange()
    {
        var files = new RecordingFiles();
        var job = new ScriptedJob(files, brief: Brief);
        job.Run(days: 1, savesADay: 5);
        // What a power cut later leaves of it, when the disk keeps nothing but what was flushed.
        var state = CrashStates.AllLost(files.Record);
        var journal = state.Contents[state.Names[ScriptedJob.Path + ".journal"]];
        var shorter = new RecordingFiles(state);
        var last = journal.AsSpan()[..journal.AsSpan().LastIndexOf("\nend\n"u8)].LastIndexOf((byte)'\n') + 1;
        var cut = journal.ToArray();
        cut.AsSpan(last).Clear();
        "end\n"u8.CopyTo(cut.AsSpan(last));
        Assert.Contains("older one", Said(With(shorter, ScriptedJob.Path + ".journal", cut), Brief).Holds, StringComparison.Ordinal);
        Assert.Equal(job.Saved.Count, Open(shorter).Opened.Count);
    }
}
