using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Office.Tests;

/// <summary>Small houses for tests, each with device names of its own.</summary>
internal static class Houses
{
    private static int _named;

    /// <summary>A device name that no other test has.</summary>
    public static string Fresh(string stem) => $"{stem}-{Interlocked.Increment(ref _named)}";

    /// <summary>A house that was just begun on a device of its own.</summary>
    public static Scribe Begin(string name, TimeProvider? clock = null)
    {
        var scribe = new Scribe(new MemoryStore(Fresh("laptop")), clock ?? TimeProvider.System, "Test crew");
        Assert.True(scribe.Record(NewHouse.Begin(name, DisplayUnits.Inches, []).Value).Ok);
        return scribe;
    }

    /// <summary>A copy of a house on a device of its own.</summary>
    public static Scribe Copy(HouseLog log, TimeProvider? clock = null) =>
        new(new MemoryStore(Fresh("laptop"), [.. log.Changes]), clock ?? TimeProvider.System, "Other crew");

    /// <summary>Says something about the house.</summary>
    public static Change Note(this Scribe scribe, string text)
    {
        var saved = scribe.Record(new Draft($"Note {text}", [new Edit.Put(House.RootId, "address", text, [])]));
        return saved.Ok ? saved.Value : throw new InvalidOperationException(saved.Reason);
    }

    /// <summary>The names of all changes of a history.</summary>
    public static ImmutableSortedSet<string> Names(this HouseLog log) => [.. log.Changes.Select(ChangeJson.Write)];

    /// <summary>Exchanges a house and takes in what came.</summary>
    public static async Task<ExchangeMark> Exchange(this Credentials office, Scribe scribe, ExchangeMark? mark, TimeProvider? clock = null, bool sends = true)
    {
        await using var connection = await OfficeConnection.Open(office, default, patience: 20);
        var done = await Office.Exchange.Run(connection, scribe.Log, mark, clock ?? TimeProvider.System, sends, _ => { }, default);
        if (done.Merge is { } merge)
            Assert.True(scribe.TakeIn(merge).Ok);
        return done.Mark;
    }
}
