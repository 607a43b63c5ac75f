using System.Globalization;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Kept;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>A few weeks of work on one house: many small saves, some long notes, another laptop's work, days that end with a dead battery.</summary>
internal sealed class ScriptedJob
{
    public const string Path = "/stick/elm.trimout";

    private readonly RecordingFiles _files;
    private readonly Surroundings _here;
    private readonly string _words;
    private readonly BriefWork? _brief;

    /// <summary>A job on a disk.</summary>
    /// <param name="files">The disk.</param>
    /// <param name="seal">How entries are sealed; as always when left out.</param>
    /// <param name="firstName">The number before the first fresh name: another one makes another house.</param>
    /// <param name="words">What is written into each note.</param>
    /// <param name="brief">What each day leaves and keeps, where the work is brief.</param>
    public ScriptedJob(RecordingFiles files, SealMaker? seal = null, int firstName = 0, string words = "A note", BriefWork? brief = null)
    {
        _brief = brief;
        _files = files;
        _here = Here(files, seal, firstName);
        _words = words;
    }

    /// <summary>All changes, in the order in which they were saved.</summary>
    public List<Change> Saved { get; } = [];

    /// <summary>How many changes there were after each save; a merge saves several at once.</summary>
    public HashSet<int> Saves { get; } = [0];

    public static Surroundings Here(RecordingFiles files, SealMaker? seal = null, int firstName = 0)
    {
        var names = firstName;
        return new(files, new FakeTimeProvider(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero)), "laptop", "Ash",
            () => (++names).ToString("00000000", CultureInfo.InvariantCulture), seal ?? Seal.Of);
    }

    /// <param name="days">How many days.</param>
    /// <param name="savesADay">How many saves there are on each.</param>
    /// <param name="lastDay">How many there are on the last one, where it is another number.</param>
    public void Run(int days, int savesADay, int? lastDay = null)
    {
        HouseOnDisk.Create(_here, Path).Dispose();
        _files.Record.Steps.Add(new DiskStep.Told(0));
        for (var day = 0; day < days; day++)
        {
            var house = HouseOnDisk.Open(_here, Path, _brief);
            house.KeepAtClosing(() => HouseLog.Of(Saved).Value);
            for (var save = 0; save < (day == days - 1 ? lastDay ?? savesADay : savesADay); save++)
            {
                if (day % 2 == 1 && save == savesADay / 2)
                    TakeAnothersWork(house, day);
                var change = NewChange(house.Device, day, save);
                Saved.Add(change);
                house.Append(change);
                Tell();
            }
            // Every third day ends without closing.
            if (day % 3 != 2)
                house.Dispose();
        }
    }

    private void TakeAnothersWork(HouseOnDisk house, int day)
    {
        List<Change> work = [];
        for (var one = 0; one < 3; one++)
        {
            work.Add(NewChange("other", day, one));
            Saved.Add(work[^1]);
        }
        house.Take(work);
        Tell();
    }

    private void Tell()
    {
        Saves.Add(Saved.Count);
        _files.Record.Steps.Add(new DiskStep.Told(Saved.Count));
    }

    private Change NewChange(string device, int day, int save)
    {
        var length = save % 7 == 3 ? 1500 : save % 11 == 5 ? 9000 : 40;
        var note = new string((char)('a' + day % 26), length);
        return new Change(new ChangeId(device, Saved.Count(c => c.Id.Device == device) + 1), Saved.Count + 1, _here.Clock.GetUtcNow(), "Ash", _words,
            [new Edit.Put("house", "name", note, [])]);
    }
}
