using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using Xunit.Abstractions;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>
/// Whatever a power cut leaves: the house opens, every change that was called saved is there, none is there by half.
/// TRIMOUT_CRASH_TRIES sets how many parts are tried where there are too many to try all (5 when unset).
/// </summary>
public class CrashTests(ITestOutputHelper output)
{
    private static readonly int Tries = int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_CRASH_TRIES"), out var tries) ? tries : 5;

    [Fact]
    public void NoCrashLosesASavedChange()
    {
        var (states, failures) = Count("the journal", new RecordingFiles(), days: 7, Tries);
        Assert.True(states > 2000, $"Only {states} states were tried.");
        Assert.Empty(failures);
    }

    [Fact]
    public void WithoutFlushingChangesAreLost() => Assert.NotEmpty(Count("no flush", new RecordingFiles { Flushes = false }, days: 3).Failures);

    [Fact]
    public void WithoutFlushingTheFolderChangesAreLost() =>
        Assert.NotEmpty(Count("no folder flush", new RecordingFiles { FlushesFolders = false }, days: 3).Failures);

    [Fact]
    public void WithTheJournalCutFirstChangesAreLost() => Assert.NotEmpty(Count("journal cut first", new JournalCutFirst(), days: 3).Failures);

    [Fact]
    public void WithoutSealsHalfAChangePassesForAWholeOne() => Assert.NotEmpty(Count("no seals", new RecordingFiles(), days: 3, seal: (_, _, _, _) =>
        "-").Failures);

    [Fact]
    public void ACrashWhileRecoveringFromACrashLosesNothing()
    {
        var files = new RecordingFiles();
        var job = new ScriptedJob(files);
        job.Run(days: 5, savesADay: 4);
        var (states, failures) = (0, new List<string>());
        foreach (var (state, told, step) in CrashStates.Of(files.Record, new Random(5), tries: 1).Where((_, at) => at % 9 == 0))
        {
            var again = new RecordingFiles(state);
            if (Fault(job, again, told, null) is { } first)
            {
                failures.Add($"step {step}: {first}");
                continue;
            }
            foreach (var (second, _, _) in RecoveryStates(state, again.Record))
            {
                states++;
                if (Fault(job, new RecordingFiles(second), told, null) is { } fault)
                    failures.Add($"step {step}: {fault}");
            }
        }
        output.WriteLine($"crash within recovery: {states} states, {failures.Count} failed");
        Assert.True(states > 300, $"Only {states} states were tried.");
        Assert.Empty(failures);
    }

    private (int States, List<string> Failures) Count(string what, RecordingFiles files, int days, int tries = 2, SealMaker? seal = null)
    {
        var job = new ScriptedJob(files, seal);
        job.Run(days, savesADay: 12);
        var states = 0;
        var failures = new List<string>();
        foreach (var (state, told, step) in CrashStates.Of(files.Record, new Random(1), tries))
        {
            states++;
            if (Fault(job, new RecordingFiles(state), told, seal) is { } fault)
                failures.Add($"step {step}: {fault}");
        }
        output.WriteLine($"{what}: {states} states, {failures.Count} failed");
        return (states, failures);
    }

    /// <summary>What is wrong with a state; null when nothing is.</summary>
    private static string? Fault(ScriptedJob job, RecordingFiles files, int told, SealMaker? seal)
    {
        try
        {
            using var house = HouseOnDisk.Open(ScriptedJob.Here(files, seal), ScriptedJob.Path);
            if (house.Opened.Count < told)
                return $"{told} changes were called saved, {house.Opened.Count} are there";
            if (!job.Saves.Contains(house.Opened.Count))
                return $"{house.Opened.Count} changes are there: a merge is there by half";
            for (var at = 0; at < house.Opened.Count; at++)
            {
                if (at >= job.Saved.Count || ChangeJson.Write(house.Opened[at]) != ChangeJson.Write(job.Saved[at]))
                    return $"change {at + 1} is not as it was saved";
            }
            return null;
        }
        catch (HouseStoreException notMadeYet) when (notMadeYet.Fault == StoreFault.NotThere && told < 0)
        {
            return null;
        }
        catch (Exception failed) when (failed is HouseStoreException or LiteDB.LiteException)
        {
            return failed.Message;
        }
    }

    /// <summary>The states that a crash in the middle of a recovery could have left.</summary>
    private static IEnumerable<(DiskState State, int Told, int Step)> RecoveryStates(DiskState state, DiskRecord recovery)
    {
        var record = new DiskRecord { Files = recovery.Files };
        foreach (var (file, bytes) in state.Contents)
        {
            record.OlderContents[file] = [];
            record.Steps.Add(new DiskStep.Write(file, 0, bytes));
            record.Steps.Add(new DiskStep.Flush(file));
        }
        foreach (var (name, file) in state.Names)
            record.Steps.Add(new DiskStep.Name(name, file, null));
        record.Steps.Add(new DiskStep.FlushFolder());
        foreach (var (file, older) in recovery.OlderContents)
            record.OlderContents[file] = older;
        var from = record.Steps.Count;
        record.Steps.AddRange(recovery.Steps);
        return CrashStates.Of(record, new Random(7), tries: 1, from);
    }
}
