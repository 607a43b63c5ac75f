using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
public sealed class TryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("trimout-").FullName;

    /// <summary>The house file that most tests need.</summary>
    public string House => In("Elm Street.trimout");

    public string In(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>The names of all files in the folder.</summary>
    public string[] Names => [.. Directory.GetFiles(Path).Select(f => System.IO.Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    /// <summary>Who may do what with a file, as a long listing shows it; owner only where the system has no such rights.</summary>
    public string RightsOf(string name)
    {
        if (OperatingSystem.IsWindows())
            return "rw-------";
        var mode = (int)File.GetUnixFileMode(In(name));
        return string.Concat("rwxrwxrwx".Select((letter, at) => ((mode >> (8 - at)) & 1) == 1 ? letter : '-'));
    }

    /// <summary>Opens the house, lets something be done with it, and closes it.</summary>
    public void Work(Action<Scribe> work, string? path = null)
    {
        using var file = HouseOnDisk.Open(path ?? House, TimeProvider.System);
        work(new Scribe(file, TimeProvider.System, "Test crew"));
    }

    /// <summary>Begins the house with windows W01 up to a number.</summary>
    public TryFolder Begin(int windows = 1)
    {
        using var file = HouseOnDisk.Create(House, TimeProvider.System);
        var scribe = new Scribe(file, TimeProvider.System, "Test crew");
        Do(scribe, CommonPracticeKit.NewHouse("Elm Street", DisplayUnits.Inches).Value);
        for (var at = 1; at <= windows; at++)
            AddWindow(scribe);
        return this;
    }

    public static void AddWindow(Scribe scribe) => Do(scribe, AddItems.Window(scribe.House, AddItems.NextTag(scribe.House), null).Value);

    public static Change Do(Scribe scribe, Draft draft) =>
        scribe.Record(draft) is { Ok: true } saved ? saved.Value : throw new InvalidOperationException(scribe.Record(draft).Reason);

    /// <summary>The tags of the windows in a house file.</summary>
    public string Tags(string? path = null)
    {
        using var file = HouseOnDisk.OpenToRead(path ?? House, TimeProvider.System);
        return string.Join(" ", HouseLog.Of(file.Opened).Value.House.Windows.Select(w => w.Tag));
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
