using System.Globalization;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Tests.Crashes;
using TrimOut.Testing;

namespace TrimOut.Tests.Campaign;

/// <summary>A house file and its journal at one moment; the journal is null where the house was closed.</summary>
internal sealed record Pair(byte[] File, byte[]? Journal);

/// <summary>
/// The truth that a campaign judges by: a house with two days folded in and a third in its journal, as a killed program leaves it, with
/// every change that was called saved; earlier moments of the same house, another copy of it, and another house.
/// </summary>
internal sealed class Scene
{
    private const int WindowsADay = 6;

    private const string Path = "/stick/scene.trimout";

    private Scene(Pair now, IReadOnlyList<Pair> older, Pair otherCopy, IReadOnlyList<Pair> foreign)
    {
        (Now, Older, OtherCopy, Foreign) = (now, older, otherCopy, foreign);
        Truth = [.. Read(Now).Select(ChangeJson.Write)];
        ForeignTruth = [.. Read(Foreign[^1]).Select(ChangeJson.Write)];
        OtherTruth = [.. Read(OtherCopy).Select(ChangeJson.Write)];
    }

    /// <summary>The scene in the present form of the file. It is the same to the byte each time: disk, clock, machine and names come from here.</summary>
    public static Scene Present()
    {
        ThrowsTheSame();
        var (files, here) = Fresh(0);
        HouseOnDisk.Create(here, Path).Dispose();
        var older = Day(files, here, Path, 0, begin: true)[^1..];
        older = [.. older, new Pair(files.Read(Path), null), .. Day(files, here, Path, 1, begin: false)];
        const string copy = "/stick/copy.trimout";
        using (var made = files.Create(copy))
            made.Write(0, files.Read(Path));
        var last = Day(files, here, Path, 2, begin: false);
        var other = Day(files, here, copy, 3, begin: false)[^1];
        return new Scene(last[^1], [.. older, .. last[..^3]], other, Another());
    }

    /// <summary>A house in the first form, with its journal, as it was kept; nothing of it can be older but what was in its file.</summary>
    public static Scene FirstForm()
    {
        var kept = System.IO.Path.Combine(Repository.Root, "tests", "TrimOut.HouseFile.Tests", "old-files", "form-1-open.trimout");
        var now = new Pair(File.ReadAllBytes(kept), File.ReadAllBytes(kept + ".journal"));
        var (files, here) = Fresh(5_000);
        HouseOnDisk.Create(here, Path, [.. Read(now).Take(2)]).Dispose();
        return new Scene(now, [new Pair(files.Read(Path), null)], now, Another());
    }

    /// <summary>
    /// The database throws dice for how many levels an entry of its index has, and so for where things lie in a page. It has no seed to set: its dice are
    /// exchanged for some that fall the same each time.
    /// </summary>
    private static void ThrowsTheSame()
    {
        const System.Reflection.BindingFlags any = System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Instance
            | System.Reflection.BindingFlags.Static;
        var dice = typeof(LiteDB.LiteDatabase).Assembly.GetTypes().Where(t => t.Name == "Randomizer").SelectMany(t => t.GetFields(any))
            .Select(f => f.GetValue(null)).OfType<Random>().Single();
        var way = typeof(Random).GetField("_impl", any)!;
        way.SetValue(dice, way.GetValue(new Random(1)));
    }

    private static List<Pair> Another()
    {
        var (files, here) = Fresh(9_000);
        HouseOnDisk.Create(here, Path).Dispose();
        return [Day(files, here, Path, 0, begin: true)[^1], Day(files, here, Path, 1, begin: false)[^1]];
    }

    private static (RecordingFiles Files, Surroundings Here) Fresh(int firstName)
    {
        var files = new RecordingFiles();
        return (files, new Surroundings(files, new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero)), "laptop", "Ash",
            () => (++firstName).ToString("00000000", CultureInfo.InvariantCulture), Seal.Of));
    }

    /// <summary>The house as it is.</summary>
    public Pair Now { get; }

    /// <summary>Earlier moments of it, closed and open.</summary>
    public IReadOnlyList<Pair> Older { get; }

    /// <summary>A copy of it that went its own way.</summary>
    public Pair OtherCopy { get; }

    /// <summary>Another house, at two moments.</summary>
    public IReadOnlyList<Pair> Foreign { get; }

    /// <summary>Every change of the house that was called saved, in the order of saving.</summary>
    public IReadOnlyList<string> Truth { get; }

    public HashSet<string> ForeignTruth { get; }

    public HashSet<string> OtherTruth { get; }

    /// <summary>A day of work that ends with closing; the moments after each save.</summary>
    private static List<Pair> Day(RecordingFiles files, Surroundings here, string path, int day, bool begin)
    {
        var moments = new List<Pair>();
        using var house = HouseOnDisk.Open(here, path);
        // The same seed does the same damage only where every text is as long as it was; so the clock stands still.
        var scribe = new Scribe(house, new FakeTimeProvider(new DateTimeOffset(2026, 3, 2 + day, 8, 0, 0, TimeSpan.Zero)), "Test crew");
        if (begin)
            Do(CommonPracticeKit.NewHouse("Campaign", DisplayUnits.Inches).Value);
        for (var one = 0; one < WindowsADay; one++)
        {
            Do(AddItems.Window(scribe.House, AddItems.NextTag(scribe.House), null).Value);
            var window = scribe.House.Windows[^1];
            var note = $"Note {day} {one} {new string((char)('a' + one), one == 1 ? 350 : 20)}";
            Do(SetFact.Typed(scribe.House, window.Item, WindowFacts.RoughWidth, $"{900 + day * 40 + one} mm").Value);
            var draft = SetFact.Typed(scribe.House, window.Item, FactTable.Find(window.Item.Kind, "note")!, note).Value;
            // Some lines are longer than a sector, some than a page of the database.
            Do(one == 3 ? draft with { What = draft.What + new string('.', 9000) } : draft);
        }
        return moments;

        void Do(Draft draft)
        {
            Assert.True(scribe.Record(draft).Ok);
            moments.Add(new Pair(files.Read(path), files.Read(path + ".journal")));
        }
    }

    private static IReadOnlyList<Change> Read(Pair pair)
    {
        var (files, here) = Fresh(0);
        foreach (var (name, bytes) in new[] { (Path, pair.File), (Path + ".journal", pair.Journal) })
        {
            if (bytes is null)
                continue;
            using var made = files.Create(name);
            made.Write(0, bytes);
        }
        using var house = HouseOnDisk.OpenToRead(here, Path);
        return house.Opened;
    }

    /// <summary>Puts a pair in the place of whatever was there.</summary>
    public static void Write(string path, Pair pair)
    {
        foreach (var old in Directory.GetFiles(System.IO.Path.GetDirectoryName(path)!, System.IO.Path.GetFileName(path) + "*"))
            File.Delete(old);
        File.WriteAllBytes(path, pair.File);
        if (pair.Journal is not null)
            File.WriteAllBytes(path + ".journal", pair.Journal);
    }
}
