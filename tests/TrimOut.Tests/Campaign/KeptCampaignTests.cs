using System.Globalization;
using TrimOut.Desks;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Kept;
using Xunit.Abstractions;

namespace TrimOut.Tests.Campaign;

/// <summary>
/// <c>set</c> in a house that counts as large, whose journal was left beside it and of which a fold was kept: the house damaged in every way, what was
/// kept whole, damaged, of an earlier day, of another house or gone. Judged by what was saved, and by what the same verb does where nothing is kept.
/// TRIMOUT_CAMPAIGN_CASES, _SEED and _FROM are those of <see cref="CampaignTests"/>; every third sort of damage when none is set.
/// </summary>
[Collection(nameof(OneProcess))]
public sealed class KeptCampaignTests : IDisposable
{
    private const string Line = "W01\tnote\tcampaign";

    private readonly ITestOutputHelper _output;
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-").FullName;
    private readonly string? _data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
    private readonly string _house;
    private readonly string _foreign;
    private readonly Scene _scene;
    private readonly byte[][] _otherFolds;
    private Begun? _begun;

    public KeptCampaignTests(ITestOutputHelper output)
    {
        _output = output;
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", Path.Combine(_folder, "data"));
        HouseSource.LargeFrom = 0;
        _house = Path.Combine(Directory.CreateDirectory(Path.Combine(_folder, "place")).FullName, "h.trimout");
        _foreign = Path.Combine(_folder, "foreign.trimout");
        _scene = Scene.Present();
        _otherFolds = [FoldOf(_house, _scene.Older.First(p => p.Journal is null)), FoldOf(_foreign, _scene.Foreign[0])];
    }

    private static string Fold => Directory.GetFiles(KeptPlace.Path, "*.fold").Single();

    public void Dispose()
    {
        HouseSource.LargeFrom = BriefWork.Large;
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _data);
        Directory.Delete(_folder, recursive: true);
    }

    [ThisBuildFact]
    public void WhatIsKeptNeverShowsLessAndNeverHidesDamage()
    {
        var (cases, seed, from) = (Number("CASES", Damage.SortsOfFiles.Count), Number("SEED", 1), Number("FROM", 0));
        var step = Number("CASES", 0) == 0 ? 3 : 1;
        var (counts, wrong) = (new int[Enum.GetValues<Outcome>().Length], new List<string>());
        for (var number = from; number < from + cases; number += step)
        {
            var (sound, truth) = Begin();
            var fold = File.ReadAllBytes(Fold);
            // One case in eight leaves the house whole, so that what was kept stands against nothing else.
            var damaged = number % 8 == 7 ? new Damaged(sound, "house whole", false, []) : Damage.OfFiles(_scene, sound, number, seed);
            var how = Spoil(fold, number, new Random(unchecked(seed * 1_000_003 + number)));
            Place(damaged.Pair);
            var (kept, why) = Set(truth);
            Begin(damaged.Pair);
            Directory.Delete(KeptPlace.Path, recursive: true);
            var (plain, _) = Set(truth);
            counts[(int)kept]++;
            if (kept is not (Outcome.Whole or Outcome.Said) || kept != plain || (damaged.What == "house whole" && kept != Outcome.Whole))
                wrong.Add(string.Create(CultureInfo.InvariantCulture, $"seed {seed} case {number} ({damaged.What}; kept {how}): {kept}, plain {plain}: {why}"));
        }
        var all = string.Join(", ", Enum.GetValues<Outcome>().Select(o => $"{counts[(int)o]} {o}"));
        _output.WriteLine($"set in a large house: {counts.Sum()} cases, seed {seed}: {all}");
        Assert.True(wrong.Count == 0, string.Join("\n", wrong.Take(20)));
        Assert.True(counts[(int)Outcome.Whole] > 0 && counts[(int)Outcome.Said] > counts.Sum() / 2, all);
    }

    [ThisBuildFact]
    public void WithoutDamageTheKeptFoldIsGoneOnFrom()
    {
        var (_, truth) = Begin();
        var written = File.GetLastWriteTimeUtc(Fold);
        var file = File.ReadAllBytes(_house);
        Assert.Equal(Outcome.Whole, Set(truth).Outcome);
        Assert.Equal((written, true), (File.GetLastWriteTimeUtc(Fold), File.Exists(_house + ".journal")));
        Assert.Equal(file[..^1024], File.ReadAllBytes(_house)[..^1024]);
    }

    private static int Number(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_CAMPAIGN_" + name), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number : otherwise;

    /// <summary>A house with its journal left and its fold kept, as two runs of the verb leave it.</summary>
    /// <param name="damaged">What is then put in the place of its bytes.</param>
    private (Pair Pair, List<string> Truth) Begin(Pair? damaged = null)
    {
        // As long as the file is the one that was begun its bytes can be put back: to its disk it is then as it was left.
        if (_begun is null || !File.Exists(_house) || FileBirth.Of(_house) != _begun.Birth)
            _begun = BeginAnew();
        Place(_begun.Pair);
        foreach (var other in Directory.GetFiles(Path.GetDirectoryName(_house)!).Where(f => f != _house && f != _house + ".journal"))
            File.Delete(other);
        foreach (var other in OwnFiles().Where(f => !_begun.Own.ContainsKey(f)))
            File.Delete(other);
        foreach (var (path, bytes) in _begun.Own.Where(o => !File.Exists(o.Key) || !File.ReadAllBytes(o.Key).AsSpan().SequenceEqual(o.Value)))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, bytes);
        }
        if (damaged is not null)
            Place(damaged);
        return (_begun.Pair, _begun.Truth);
    }

    private Begun BeginAnew()
    {
        foreach (var path in new[] { KeptPlace.Path, Path.Combine(UserFolder.Path, "backups") })
        {
            if (Directory.Exists(path))
                Directory.Delete(path, recursive: true);
        }
        Scene.Write(_house, _scene.Now);
        for (var run = 0; run < 2; run++)
            Assert.Equal(0, VerbRun.RunWith($"W0{run + 1}\tnote\tfirst {run}\n", "set", _house).Code);
        var pair = new Pair(File.ReadAllBytes(_house), File.ReadAllBytes(_house + ".journal"));
        return new Begun(FileBirth.Of(_house), pair, History(), OwnFiles().ToDictionary(f => f, File.ReadAllBytes));
    }

    private static string[] OwnFiles() => Directory.GetFiles(UserFolder.Path, "*", SearchOption.AllDirectories);

    private sealed record Begun(string? Birth, Pair Pair, List<string> Truth, IReadOnlyDictionary<string, byte[]> Own);

    /// <summary>Writes over the files in place: to their disk they are the ones that they were, and only what they hold tells that they are not.</summary>
    private void Place(Pair pair)
    {
        File.WriteAllBytes(_house, pair.File);
        if (pair.Journal is null)
            File.Delete(_house + ".journal");
        else
            File.WriteAllBytes(_house + ".journal", pair.Journal);
    }

    /// <summary>Puts something else in the place of what was kept.</summary>
    private string Spoil(byte[] fold, int number, Random random)
    {
        var at = random.Next(fold.Length);
        var (how, bytes) = (number / 3 % 6) switch
        {
            0 => ("whole", fold),
            1 => ("with a bit flipped", [.. fold[..at], (byte)(fold[at] ^ (1 << random.Next(8))), .. fold[(at + 1)..]]),
            2 => ("cut", fold[..at]),
            3 => ("of an earlier day", _otherFolds[0]),
            4 => ("of another house", _otherFolds[1]),
            _ => ("gone", (byte[]?)null),
        };
        var path = Fold;
        if (bytes is null)
            File.Delete(path);
        else
            File.WriteAllBytes(path, bytes);
        return how;
    }

    private static byte[] FoldOf(string path, Pair pair)
    {
        Scene.Write(path, pair);
        Assert.Equal(0, VerbRun.RunWith(Line + "\n", "set", path).Code);
        var bytes = File.ReadAllBytes(Fold);
        Directory.Delete(KeptPlace.Path, recursive: true);
        return bytes;
    }

    private List<string> History() => [.. VerbRun.Run("history", _house).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    private (Outcome Outcome, string Why) Set(List<string> truth)
    {
        var ended = VerbRun.RunWith(Line + "\n", "set", _house);
        if (ended.Hung || ended.IsCrash)
            return (ended.Hung ? Outcome.Hang : Outcome.Crash, ended.Crash ?? ended.Error);
        var after = ended.Code == ExitCode.Fine ? History() : [];
        return ended.Code == ExitCode.Fine && after.Count == truth.Count + 1 && after.Take(truth.Count).SequenceEqual(truth)
            && after[^1].Contains("campaign", StringComparison.Ordinal) ? (Outcome.Whole, "")
            : ended.Code is ExitCode.BadData or ExitCode.LeftOut or ExitCode.NoInput && ended.Error.Length > 0
                && !ended.Error.Contains("middle of a save", StringComparison.Ordinal) ? (Outcome.Said, ended.Error)
            : (Outcome.SilentLoss, $"{ended.Code} {after.Count} of {truth.Count}: {ended.Error}");
    }
}
