using Microsoft.Extensions.Time.Testing;
using System.Globalization;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>A few weeks of work on one house: many small saves, some long notes, an import, days that end with a dead battery.</summary>
internal sealed class ScriptedJob
{
    public const string Path = "/stick/elm.trimout";

    private readonly RecordingFiles _files;
    private readonly Surroundings _here;

    public ScriptedJob(RecordingFiles files, Durable.SealMaker? seal = null)
    {
        _files = files;
        _here = Here(files, seal);
    }

    /// <summary>All changes, in the order in which they were saved.</summary>
    public List<Change> Saved { get; } = [];

    public static Surroundings Here(RecordingFiles files, Durable.SealMaker? seal = null)
    {
        var names = 0;
        return new(files, new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero)), "laptop", "Ash",
            () => (++names).ToString("00000000", CultureInfo.InvariantCulture), seal ?? Durable.Seal.Of);
    }

    public void Run(int days, int savesADay)
    {
        HouseOnDisk.Create(_here, Path).Dispose();
        _files.Record.Steps.Add(new DiskStep.Told(0));
        for (var day = 0; day < days; day++)
        {
            var house = HouseOnDisk.Open(_here, Path);
            for (var save = 0; save < savesADay; save++)
            {
                var change = NewChange(house.Device, day, save);
                Saved.Add(change);
                house.Append(change);
                _files.Record.Steps.Add(new DiskStep.Told(Saved.Count));
            }
            // Every third day ends without closing.
            if (day % 3 != 2)
                house.Dispose();
        }
    }

    private Change NewChange(string device, int day, int save)
    {
        var length = save % 7 == 3 ? 1500 : save % 11 == 5 ? 9000 : 40;
        var note = new string((char)('a' + day % 26), length);
        return new Change(new ChangeId(device, Saved.Count + 1), Saved.Count + 1, _here.Clock.GetUtcNow(), "Ash", "A note", [new Edit.Put("house", "name", note, [])]);
    }
}
