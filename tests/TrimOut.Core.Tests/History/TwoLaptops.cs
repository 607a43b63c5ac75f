using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.History;

/// <summary>Several laptops with copies of one house, each with a clock of its own.</summary>
internal sealed class TwoLaptops
{
    private readonly Dictionary<string, Scribe> _scribes = [];

    public TwoLaptops(params string[] names)
    {
        var first = new Scribe(new MemoryStore("office"), new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero)), "Office");
        first.Record(CommonPracticeKit.NewHouse("Elm Street", DisplayUnits.Inches).Value);
        first.Record(AddItems.Window(first.House, "W01", null).Value);
        foreach (var name in names)
            _scribes[name] = Scribe(name, first.Log.Changes, new FakeTimeProvider(new DateTimeOffset(2026, 3, 3, 8, 0, 0, TimeSpan.Zero)));
    }

    public Scribe this[string name] => _scribes[name];

    public static Scribe Scribe(string name, IEnumerable<Change> changes, TimeProvider clock) =>
        new(new MemoryStore(name, [.. changes]), clock, char.ToUpperInvariant(name[0]) + name[1..]);

    /// <summary>Sets a laptop's clock; its history stays.</summary>
    public void SetClock(string name, DateTimeOffset now) => _scribes[name] = Scribe(name, _scribes[name].Log.Changes, new FakeTimeProvider(now));

    public void Type(string name, Fact fact, string typed, string tag = "W01") =>
        Saved(_scribes[name], SetFact.Typed(_scribes[name].House, _scribes[name].House.FindTag(tag)!.Item, fact, typed));

    public void Do(string name, Func<House, Result<Draft>> want) => Saved(_scribes[name], want(_scribes[name].House));

    /// <summary>Takes one laptop's changes into another's copy.</summary>
    public Merge Take(string into, string from)
    {
        var merge = Merge.Of(_scribes[into].Log, _scribes[from].Log).Value;
        _scribes[into] = Scribe(into, merge.Merged.Changes, new FakeTimeProvider(new DateTimeOffset(2026, 3, 4, 8, 0, 0, TimeSpan.Zero)));
        return merge;
    }

    /// <summary>All that can be seen of a house, as text.</summary>
    public static string Picture(HouseLog log) =>
        string.Join("\n", log.Changes.Select(ChangeJson.Write)) + "\n" +
        string.Join("\n", RemovedAtWork.All(log.House).Select(r => $"{r.Item.Id} {r.Show(log.House)}")) + "\n" + Picture(log.House);

    /// <summary>All items of a house with their values, as text.</summary>
    public static string Picture(House house) =>
        string.Join("\n", house.Items.Values.OrderBy(i => i.Id, StringComparer.Ordinal).Select(i => $"{i.Id} {i.Kind} {i.Place} " +
            string.Join(" ", i.Fields.OrderBy(f => f.Key, StringComparer.Ordinal)
                .Select(f => $"{f.Key}={string.Join("|", f.Value.Select(h => $"{h.Id} {h.Stored}"))}"))));

    private static void Saved(Scribe scribe, Result<Draft> draft)
    {
        var saved = draft.Then(scribe.Record);
        if (!saved.Ok)
            throw new InvalidOperationException(saved.Reason);
    }
}
