using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Kits;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;
using TrimOut.Screens.Firm;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Schedules;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>A desk that keeps everything in memory.</summary>
internal sealed class TestDesk(TimeProvider clock) : IDesk
{
    public List<string> Written { get; } = [];

    public TimeProvider Clock => clock;

    public IReadOnlyList<HouseChoice> Houses { get; set; } = [new("samples/corner", "Corner house", true, "A sample job.")];

    public string? Look { get; set; }

    public string? Who { get; set; } = "";

    public bool TakesMouse { get; set; } = true;

    /// <summary>What the user's editor makes of a text; null when there is none.</summary>
    public Func<string, Result<string>>? Editor { get; set; }

    public Result<string> Edit(string text) => Editor?.Invoke(text) ?? new Refusal("No editor is named. Nothing was changed.");

    /// <summary>Other copies of the house, by their paths; what can't be read with the reason.</summary>
    public Dictionary<string, Result<CopyRead>> OtherCopies { get; } = [];

    public IReadOnlyList<CopyChoice> Copies(string where) =>
        [.. OtherCopies.Select(c => new CopyChoice(c.Key, Path.GetFileNameWithoutExtension(c.Key), clock.GetUtcNow(), c.Value.Ok ? true : null))];

    /// <summary>Schedules that are found, each with what reading it gives, by the columns that were chosen.</summary>
    public Dictionary<string, Func<HouseLog, IReadOnlyDictionary<string, string>, Result<ScheduleRead>>> FoundSchedules { get; } = [];

    public IReadOnlyList<ScheduleChoice> Schedules(string where) => [.. FoundSchedules.Keys.Select(s => new ScheduleChoice(s, clock.GetUtcNow()))];

    public Result<ScheduleRead> ReadSchedule(HouseLog log, string path, IReadOnlyDictionary<string, string> columns) =>
        FoundSchedules.TryGetValue(path, out var read) ? read(log, columns) : new Refusal($"There is no file {path}.");

    public Result<string> WriteCalendar(HouseLog log, string where)
    {
        Written.Add($"calendar of {log.House.Visits.Count()}");
        return $"{where}-visits.ics";
    }

    /// <summary>All houses of the user's folders.</summary>
    public IFirmBoard AllHouses { get; set; } = NoHouses.Board;

    public IFirmBoard Firm() => AllHouses;

    public Result<IReadOnlyList<string>> WriteOverHouses(string paper, IReadOnlyList<string> houses, IReadOnlyList<FirmRow> all, string filter,
        CancellationToken stop)
    {
        Written.Add($"{paper} of {houses.Count} of {all.Count} by {filter}");
        return new List<string> { $"{paper}.md" };
    }

    /// <summary>What phases took in other houses.</summary>
    public IReadOnlyList<ImmutableArray<PhaseHours>> HoursElsewhere { get; set; } = [];

    public IReadOnlyList<ImmutableArray<PhaseHours>> OtherHours(string where, CancellationToken stop) => HoursElsewhere;

    /// <summary>The changes that the office has; null where this laptop is enrolled at none.</summary>
    public HashSet<ChangeId>? AtOffice { get; set; }

    /// <summary>What exchanging gives.</summary>
    public Func<HouseLog, Action<string>, CancellationToken, Result<OfficeExchange>> Exchanging { get; set; } =
        (_, _, _) => new Refusal("The office can't be reached.");

    /// <summary>How many changes came from the office and were not taken in.</summary>
    public int PutOff { get; set; }

    public OfficeStanding? Office(HouseLog log) => AtOffice is null ? null
        : log.Changes.Where(c => !AtOffice.Contains(c.Id)).ToList() is var more
            ? new($"Last exchanged yesterday, {more.Count} changes not yet at the office.", more) { PutOff = PutOff } : null;

    public Result<OfficeExchange> Exchange(HouseLog log, Action<string> says, CancellationToken stop) => Exchanging(log, says, stop);

    public Result<CopyRead> ReadCopy(string path) =>
        OtherCopies.TryGetValue(path, out var copy) ? copy : new Refusal($"{path} can't be read: there is no such file.");

    /// <summary>Folders with photos, each with what is in it.</summary>
    public Dictionary<string, PhotosRead> FoundPhotos { get; } = [];

    /// <summary>Photos that go with the stick before they are copied.</summary>
    public List<string> GoneWithTheStick { get; } = [];

    public IReadOnlyList<PhotoFolderChoice> PhotoFolders(string where) =>
        [.. FoundPhotos.Select(f => new PhotoFolderChoice(f.Key, f.Value.Files.Count, clock.GetUtcNow()))];

    public Result<PhotosRead> ReadPhotos(HouseLog log, string where, string folder, Action<string> says, CancellationToken stop) =>
        FoundPhotos.TryGetValue(folder, out var read) ? read : new Refusal($"There is no folder {folder}.");

    public IReadOnlyList<Result<string>> CopyPhotos(HouseLog log, string where, IReadOnlyList<(PhotoFile File, PhotoPlace Place)> photos, Action<string> says,
        CancellationToken stop) => [.. photos.Select(p => GoneWithTheStick.Contains(p.File.Photo.Name) ? new Refusal($"{p.File.Path} can't be read.")
            : (Result<string>)$"house-photos/{p.File.Photo.Name}")];

    public Result<CellPicture> Picture(string where, string path) => LostPictures.Contains(path) ? new Refusal("there is no such file.")
        : new CellPicture(4, 2, [.. Enumerable.Repeat(new byte[] { 255, 0, 0 }, 4).Concat(Enumerable.Repeat(new byte[] { 0, 0, 255 }, 4)).SelectMany(p => p)]);

    public string FileOf(string where, string path) => $"/houses/{path}";

    /// <summary>Pictures that are not there.</summary>
    public List<string> LostPictures { get; } = [];

    public bool IsThere(string where, string picture) => !LostPictures.Contains(picture);

    public string UsualWho => "login";

    public Result<Scribe> Open(string path) =>
        HeldBy is not null
            ? new Refusal($"{path} is open in another program: {HeldBy}.")
            : path == "samples/corner"
            ? Begin("Corner house", DisplayUnits.Inches)
            : new Refusal($"{path} is no house file.");

    public Result<Scribe> Create(string name, DisplayUnits units, IReadOnlyCollection<PartSheet> kit) =>
        kit.Count == 0 ? Begin(name, units) : NewHouse.Begin(name, units, kit).Then(Recorded);

    public string KitFolder => "kit";

    public List<PartSheet> Kept { get; } = [];

    public IReadOnlyList<KeptPart> Kit => [.. Kept.Select((p, at) => new KeptPart($"{p.Name}-{at + 1}.part.txt", p)),
        .. Broken.Select(why => new KeptPart(why.Split(':')[0], new Core.Refusal(why)))];

    /// <summary>Other folders of parts.</summary>
    public Dictionary<string, IReadOnlyList<KeptPart>> Folders { get; } = [];

    public Result<IReadOnlyList<KeptPart>> KitIn(string folder) =>
        Folders.TryGetValue(folder, out var parts) ? (KeptPart[])[.. parts] : new Refusal($"There is no folder {folder}.");

    /// <summary>Files of the kit folder that can't be read, each with why.</summary>
    public List<string> Broken { get; } = [];

    public IReadOnlyList<string> Weaker(IReadOnlyList<PartSheet> parts) => [.. parts.Where(p => Kept.Exists(k => p.Kind == k.Kind && p.Name == k.Name
        && k.Values.Any(v => v.Held) && p.Values.All(v => !v.Held))).Select(p => p.Name)];

    public Result<IReadOnlyList<string>> Keep(IReadOnlyList<PartSheet> parts)
    {
        Kept.RemoveAll(p => parts.Any(k => p.Kind == k.Kind && p.Name == k.Name));
        Kept.AddRange(parts);
        return (string[])[.. parts.Select(p => $"kit/{p.Name}.part.txt")];
    }

    public void Close(Scribe scribe) { }

    public Result<Scribe> OpenToRead(string path) =>
        new Scribe(new MemoryStore("laptop", new TestJob().Window("W01").Scribe.Log.Changes) { ReadOnlyBecause = "you chose only to look." }, clock,
            "Ash");

    public bool CanStillLook => HeldBy is not null;

    public IReadOnlyList<string> Notices { get; set; } = [];

    /// <summary>Who has every house open; null when nobody.</summary>
    public string? HeldBy { get; set; }

    public string Elsewhere(Scribe scribe) => "copy-1.trimout";

    public Result<Scribe> WriteElsewhere(Scribe scribe, string path) => path.StartsWith("full/", StringComparison.Ordinal)
        ? new Refusal("That disk is full too.")
        : new Scribe(new MemoryStore("elsewhere", scribe.Log.Changes), clock, scribe.By);

    public string? FaultNoted { get; private set; }

    public string? NoteFault(string note)
    {
        FaultNoted = note;
        return "fault.txt";
    }

    public IReadOnlyList<PaperChoice> Papers { get; set; } = [new("binder", "Owner's binder", "the owner")];

    /// <summary>What is waited for before a paper is made; nothing where it is made at once.</summary>
    public Action<CancellationToken>? Before { get; set; }

    public Result<IReadOnlyList<PreviewBlock>> Preview(string paper, PaperHouse house, CancellationToken stop)
    {
        Before?.Invoke(stop);
        return new List<PreviewBlock>
        {
            new(PreviewKind.Heading, 1, "", [new(house.Log.House.Name)], []),
            new(PreviewKind.Paragraph, 0, "", [new($"{house.Log.House.Units.Length} units.")], []),
        };
    }

    /// <summary>Files that somebody else wrote.</summary>
    public List<string> Others { get; } = [];

    public string? LabelSheet { get; private set; }

    public IReadOnlyList<string> LabelSheets => ["10x3,letter", "8x3,a4"];

    public Result<string> LabelsInWords(string typed) => typed == "plain" ? "plain paper, to be cut"
        : LabelSheets.Contains(typed) ? $"sheets of {typed}" : new Refusal($"\"{typed}\" is no sheet of labels.");

    public Result<string> ChooseLabels(string typed) => LabelsInWords(typed).Then<string>(words =>
    {
        LabelSheet = typed == "plain" ? null : typed;
        return words;
    });

    /// <summary>Papers that were asked for as PDF.</summary>
    public List<string> Printed { get; } = [];

    public Result<PapersWritten> Write(IReadOnlyList<string> papers, bool pdf, PaperHouse house, Action<string> says, IReadOnlySet<string> over,
        CancellationToken stop)
    {
        if (pdf)
            Printed.AddRange(papers);
        foreach (var paper in papers)
        {
            says(paper);
            Before?.Invoke(stop);
            if (Others.Where(o => o.StartsWith(paper, StringComparison.Ordinal) && !over.Contains(o)).ToList() is { Count: > 0 } others)
                return new PapersWritten([], others);
            Written.Add(paper);
        }
        return new PapersWritten(papers.SelectMany(p => (string[])[$"{p}.md", $"{p}.html", .. pdf ? [$"{p}.pdf"] : Array.Empty<string>()]).ToList(), []);
    }

    private Result<Scribe> Begin(string name, DisplayUnits units) => CommonPracticeKit.NewHouse(name, units).Then(Recorded);

    private Result<Scribe> Recorded(Draft draft)
    {
        var scribe = new Scribe(new MemoryStore(), clock, "Ash");
        return scribe.Record(draft).Then<Scribe>(_ => scribe);
    }
}
