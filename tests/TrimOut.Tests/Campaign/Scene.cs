using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
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

    public Scene(string folder)
    {
        var path = Path.Combine(folder, "scene.trimout");
        HouseOnDisk.Create(path, TimeProvider.System).Dispose();
        Older = Day(path, 0, begin: true)[^1..];
        Older = [.. Older, new Pair(File.ReadAllBytes(path), null), .. Day(path, 1, begin: false)];
        var copy = Path.Combine(folder, "copy.trimout");
        File.Copy(path, copy);
        var last = Day(path, 2, begin: false);
        Now = last[^1];
        Older = [.. Older, .. last[..^3]];
        OtherCopy = Day(copy, 3, begin: false)[^1];
        Truth = [.. Read(folder, Now).Select(ChangeJson.Write)];
        InFile = Read(folder, new Pair(Older[^1].File, null), goOn: true).Count;
        var foreign = Path.Combine(folder, "foreign.trimout");
        HouseOnDisk.Create(foreign, TimeProvider.System).Dispose();
        Foreign = [Day(foreign, 0, begin: true)[^1], Day(foreign, 1, begin: false)[^1]];
        ForeignTruth = [.. Read(folder, Foreign[^1]).Select(ChangeJson.Write)];
        OtherTruth = [.. Read(folder, OtherCopy).Select(ChangeJson.Write)];
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

    /// <summary>How many of the changes are in the file; the others are in the journal.</summary>
    public int InFile { get; }

    /// <summary>A day of work that ends with closing; the moments after each save.</summary>
    private static List<Pair> Day(string path, int day, bool begin)
    {
        var moments = new List<Pair>();
        using var house = HouseOnDisk.Open(path, TimeProvider.System);
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
            moments.Add(new Pair(File.ReadAllBytes(path), File.ReadAllBytes(path + ".journal")));
        }
    }

    private static IReadOnlyList<Change> Read(string folder, Pair pair, bool goOn = false)
    {
        var path = Path.Combine(folder, "read.trimout");
        Write(path, pair);
        using var house = HouseOnDisk.OpenToRead(path, TimeProvider.System, goOn);
        return house.Opened;
    }

    /// <summary>Puts a pair in the place of whatever was there.</summary>
    public static void Write(string path, Pair pair)
    {
        foreach (var old in Directory.GetFiles(Path.GetDirectoryName(path)!, Path.GetFileName(path) + "*"))
            File.Delete(old);
        File.WriteAllBytes(path, pair.File);
        if (pair.Journal is not null)
            File.WriteAllBytes(path + ".journal", pair.Journal);
    }
}
