using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Kits;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Plans.InService;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Plans.Visits;
using TrimOut.Core.Units;
using TrimOut.Desks.Firm;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Files;
using TrimOut.Papers.FirmPapers;
using TrimOut.Papers.Labels;
using TrimOut.Screens.Firm;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Schedules;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>Opens houses, writes papers and remembers settings for the screens.</summary>
/// <param name="by">Whose changes are written this time; null where it is whoever said so on the screens, or is asked.</param>
/// <param name="clock">The clock; the machine's own where none is given.</param>
/// <param name="goOn">Whether a house whose journal is damaged is shown as far as it is sound, where it is only looked at.</param>
/// <param name="mouse">Whether clicks are taken this time; null where it is as it was left last.</param>
internal sealed class Desk(string? by, TimeProvider? clock = null, bool goOn = false, bool? mouse = null) : IDesk
{
    private readonly PaperDesk _papers = new() { Labels = KeptGrid(Settings.Read().Labels) };
    // Read again when a house is opened and when papers were written: the screens ask with every key.
    private volatile IReadOnlyList<PaperChoice> _choices = PaperFiles.Choices;
    private Settings _settings = Settings.Read();
    private Scribe? _writtenElsewhere;
    private FirmBoard? _firm;
    private string? _by = by;
    private bool? _mouse = mouse;

    /// <inheritdoc/>
    public TimeProvider Clock { get; } = clock ?? TimeProvider.System;

    /// <summary>The office.</summary>
    internal OfficeDesk AtOffice { private get; init; } = new(() => OfficePlace.IsEnrolled ? OfficePlace.Credentials() : null);

    /// <summary>The exit code for what last went wrong in opening a house.</summary>
    public int Fault { get; private set; } = ExitCode.Fault;

    /// <summary>What the user should hear after the screens are gone.</summary>
    public List<string> Remarks { get; } = [];

    /// <summary>What is not on the disk of the houses that were closed, for the user to hear after the screens are gone.</summary>
    public List<string> Unsaved { get; } = [];

    /// <inheritdoc/>
    public bool CanStillLook => Fault == ExitCode.InUse;

    /// <inheritdoc/>
    public IReadOnlyList<string> Notices { get; private set; } = [];

    /// <inheritdoc/>
    public IReadOnlyList<HouseChoice> Houses =>
    [
        .. _settings.Recent.Concat(Kept()).Distinct().Where(File.Exists)
            .Select(f => new HouseChoice(f, Path.GetFileNameWithoutExtension(f), false, FromHome(Path.GetDirectoryName(f)!))),
        .. SampleJobs.Folders.Select(f => new HouseChoice(f, Path.GetFileName(f), true, SampleJobs.About(f))),
    ];

    /// <inheritdoc/>
    public string? Look
    {
        get => _settings.Look;
        set => Remember(_settings with { Look = value });
    }

    /// <inheritdoc/>
    public bool TakesMouse
    {
        get => _mouse ?? _settings.Mouse ?? true;
        set
        {
            _mouse = null;
            Remember(_settings with { Mouse = value });
        }
    }

    /// <inheritdoc/>
    public Result<string> Edit(string text) => UserEditor.Edit(text,
        Environment.GetEnvironmentVariable("VISUAL") is { Length: > 0 } visual ? visual : Environment.GetEnvironmentVariable("EDITOR"));

    /// <inheritdoc/>
    public string? Who
    {
        get => _by ?? _settings.By;
        set
        {
            _by = null;
            Remember(_settings with { By = value });
        }
    }

    /// <inheritdoc/>
    public bool IsThere(string where, string picture) => PhotoFiles.Of(where).Has(picture);

    /// <inheritdoc/>
    public string FileOf(string where, string path) => PhotoFiles.Of(where).FileOf(path);

    /// <inheritdoc/>
    public IReadOnlyList<PhotoFolderChoice> PhotoFolders(string where) => PhotoDesk.Folders(where, LookedInto());

    /// <inheritdoc/>
    public Result<PhotosRead> ReadPhotos(HouseLog log, string where, string folder, Action<string> says, CancellationToken stop) =>
        PhotoDesk.Read(log, where, Typed(folder), says, stop);

    /// <inheritdoc/>
    public IReadOnlyList<Result<string>> CopyPhotos(HouseLog log, string where, IReadOnlyList<(PhotoFile File, PhotoPlace Place)> photos, Action<string> says,
        CancellationToken stop) => PhotoDesk.Copy(log.House, where, photos, says, stop);

    /// <inheritdoc/>
    public Result<CellPicture> Picture(string where, string path) => PhotoDesk.Picture(PhotoFiles.Of(where).Read(path));

    /// <inheritdoc/>
    public string UsualWho => LoginName.Now;

    /// <inheritdoc/>
    public IReadOnlyList<PaperChoice> Papers => _choices;

    /// <inheritdoc/>
    public Result<Scribe> Open(string path) => Try(() =>
    {
        var full = Typed(path);
        if (HouseSource.IsSample(full))
        {
            var (copy, made) = SampleJobs.Copy(full);
            Remarks.Add(made ? $"{path} was made into a house file: {copy}." : $"The copy of {path} that you worked on before was opened: {copy}.");
            full = copy;
        }
        return Take(HouseOnDisk.Open(full, Clock, KeptPlace.NotBrief()));
    });

    /// <inheritdoc/>
    public Result<Scribe> OpenToRead(string path) => Try(() => Take(HouseSource.Looked(() => HouseOnDisk.OpenToRead(Typed(path), Clock, goOn)), asked: true));

    /// <inheritdoc/>
    public string KitFolder => FromHome(UserFolder.Kit);

    /// <inheritdoc/>
    public IReadOnlyList<KeptPart> Kit =>
    [
        .. PartFolder.In(UserFolder.Kit).Select(p => new KeptPart(Path.GetFileName(p.File), p.Part)),
        .. PartFolder.OlderIn(UserFolder.Kit).Select(p => new KeptPart(Path.GetFileName(p.File), p.Part, Older: true)),
    ];

    /// <inheritdoc/>
    public Result<IReadOnlyList<KeptPart>> KitIn(string folder)
    {
        var full = Typed(folder);
        try
        {
            PartFolder.EndIfClosed(full);
            return Directory.Exists(full) ? (KeptPart[])[.. PartFolder.In(full).Select(p => new KeptPart(Path.GetFileName(p.File), p.Part))]
                : new Refusal($"There is no folder {folder}.");
        }
        catch (Exception failed) when (ExitCode.Of(failed) is not null)
        {
            return new Refusal(failed.Message);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Weaker(IReadOnlyList<PartSheet> parts)
    {
        var kept = new PartsKept(UserFolder.Kit);
        return [.. parts.Where(kept.IsWeaker).Select(p => p.Name)];
    }

    /// <inheritdoc/>
    public Result<IReadOnlyList<string>> Keep(IReadOnlyList<PartSheet> parts)
    {
        var kept = new PartsKept(UserFolder.Kit);
        try
        {
            return (string[])[.. parts.Select(kept.Write)];
        }
        catch (Exception failed) when (ExitCode.Of(failed) is not null)
        {
            return new Refusal(failed.Message);
        }
    }

    /// <inheritdoc/>
    public Result<Scribe> Create(string name, DisplayUnits units, IReadOnlyCollection<PartSheet> kit) =>
        NewHouse.Begin(name, units, kit).Then(begin => Try(() =>
    {
        UserFolder.Make(UserFolder.Houses);
        var scribe = Take(HouseOnDisk.Create(Path.Combine(UserFolder.Houses, FileName(name) + ".trimout"), Clock));
        return scribe.Record(begin).Then<Scribe>(_ => scribe);
    }));

    /// <inheritdoc/>
    public IReadOnlyList<CopyChoice> Copies(string where) =>
        CopyFinder.Of(where, LookedInto());

    private IEnumerable<string> LookedInto() => [.. _settings.Recent.Select(r => Path.GetDirectoryName(r) ?? ""), .. FoundFiles.UsualFolders()];

    /// <inheritdoc/>
    public IReadOnlyList<ScheduleChoice> Schedules(string where) => ScheduleDesk.Find(where, LookedInto());

    /// <inheritdoc/>
    public Result<ScheduleRead> ReadSchedule(HouseLog log, string path, IReadOnlyDictionary<string, string> columns) =>
        ScheduleDesk.Read(log, Typed(path), columns, _settings.Columns).Then<ScheduleRead>(read =>
        {
            if (columns.Count > 0)
                (_settings = _settings.Naming(read.Headers, columns)).Write();
            return read.Read;
        });

    /// <inheritdoc/>
    public Result<string> WriteCalendar(HouseLog log, string where)
    {
        try
        {
            return CalendarFile.Write(CalendarFile.Beside(where), log, DateOnly.FromDateTime(Clock.GetLocalNow().DateTime));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotWritten(CalendarFile.Beside(where), failed));
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<ImmutableArray<PhaseHours>> OtherHours(string where, CancellationToken stop) =>
        HoursElsewhere.Of(where, Houses.Where(h => !h.Sample).Select(h => h.Path), stop);

    /// <inheritdoc/>
    public IFirmBoard Firm()
    {
        _firm?.Stop();
        return _firm = FirmBoard.Of(() => FirmHouses.Find([UserFolder.Houses, .. _settings.Recent.Select(Path.GetDirectoryName).OfType<string>()]),
            AtOffice.Known);
    }

    /// <inheritdoc/>
    public Result<IReadOnlyList<string>> WriteOverHouses(string paper, IReadOnlyList<string> houses, IReadOnlyList<FirmRow> all, string filter,
        CancellationToken stop)
    {
        try
        {
            var rows = FirmHouses.Kept(houses).Select(r => r.Stale ? FirmHouses.MakeAnew(r.Path) : r).ToList();
            return FirmPaperFiles.Write(FirmPaper.All.Single(p => p.Id == paper), rows, [.. all.ExceptBy(houses, r => r.Path)],
                ChosenHouses.By(filter), DateOnly.FromDateTime(Clock.GetLocalNow().DateTime), null, UserFolder.PapersOverHouses, _ => false, stop);
        }
        catch (Exception failed) when (ExitCode.Of(failed) is not null || failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(failed.Message);
        }
    }

    /// <inheritdoc/>
    public Result<CopyRead> ReadCopy(string path)
    {
        try
        {
            var (log, remarks, _) = HouseSource.Read(Typed(path), goOn, aloud: false);
            return new CopyRead(log, [.. remarks, .. NotCounted.Of(log).Take(1)]);
        }
        catch (Exception failed) when (ExitCode.Of(failed) is not null)
        {
            return new Refusal(failed.Message);
        }
    }

    /// <inheritdoc/>
    public OfficeStanding? Office(HouseLog log) => AtOffice.Of(log);

    /// <inheritdoc/>
    public Result<OfficeExchange> Exchange(HouseLog log, Action<string> says, CancellationToken stop) => AtOffice.Exchange(log, Clock, says, stop);

    /// <inheritdoc/>
    public void Close(Scribe scribe)
    {
        (scribe.Store as IDisposable)?.Dispose();
        if (scribe == _writtenElsewhere)
            return;
        if ((scribe.Store as HouseOnDisk)?.NotKeptBecause is { } because)
            Unsaved.Add($"{scribe.Store.Where}: what was called saved is not to be found there. {because}");
        if (scribe.NotSaved is { } typed)
            Unsaved.Add($"{scribe.Store.Where}: the last thing that you typed was not saved. {typed}");
    }

    /// <inheritdoc/>
    public string Elsewhere(Scribe scribe)
    {
        var stem = Path.Combine(UserFolder.Houses, FileName(scribe.House.Name) + "-copy");
        return Enumerable.Range(1, 999).Select(n => string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}.trimout")).First(HouseOnDisk.IsFree);
    }

    /// <inheritdoc/>
    public Result<Scribe> WriteElsewhere(Scribe scribe, string path) => Try(() =>
    {
        var named = NewFile.Of(FromOwn(path), FileName(scribe.House.Name));
        if (!named.Ok)
            return new Refusal(named.Reason!);
        var file = Path.GetFullPath(named.Value);
        if (Path.GetDirectoryName(file) == UserFolder.Houses)
            UserFolder.Make(UserFolder.Houses);
        return Directory.Exists(Path.GetDirectoryName(file))
            ? TakeElsewhere(scribe, HouseOnDisk.Create(file, Clock, scribe.Log.Changes))
            : new Refusal($"There is no folder {Path.GetDirectoryName(file)}.");
    });

    /// <inheritdoc/>
    public string? NoteFault(string note)
    {
        try
        {
            UserFolder.Make(UserFolder.Path);
            var file = Path.Combine(UserFolder.Path, string.Create(CultureInfo.InvariantCulture, $"fault-{Clock.GetUtcNow():yyyyMMdd-HHmmss}.txt"));
            OwnFile.Write(file, Encoding.UTF8.GetBytes(note));
            return file;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <inheritdoc/>
    public Result<IReadOnlyList<PreviewBlock>> Preview(string paper, PaperHouse house, CancellationToken stop) => _papers.Preview(paper, house, stop);

    /// <inheritdoc/>
    public string? LabelSheet => _papers.Labels is null ? null : _settings.Labels;

    /// <inheritdoc/>
    public IReadOnlyList<string> LabelSheets { get; } = [.. LabelGrid.Common.Select(g => g.Typed)];

    /// <inheritdoc/>
    public Result<string> LabelsInWords(string typed) => Labels(typed).Then<string>(grid => grid is null ? "plain paper, to be cut" : grid.InWords);

    /// <inheritdoc/>
    public Result<string> ChooseLabels(string typed)
    {
        var grid = Labels(typed);
        if (!grid.Ok)
            return new Refusal(grid.Reason!);
        _papers.Labels = grid.Value;
        Remember(_settings with { Labels = grid.Value is null ? null : typed.Trim() });
        return LabelsInWords(typed);
    }

    private static Result<LabelGrid?> Labels(string typed) => typed.Trim() is "" or "plain" ? (LabelGrid?)null : LabelGrid.Read(typed).Then<LabelGrid?>(g => g);

    private static LabelGrid? KeptGrid(string? labels) => labels is null || !LabelGrid.Read(labels).Ok ? null : LabelGrid.Read(labels).Value;

    /// <inheritdoc/>
    public Result<PapersWritten> Write(IReadOnlyList<string> papers, bool pdf, PaperHouse house, Action<string> says, IReadOnlySet<string> over,
        CancellationToken stop)
    {
        var written = _papers.Write(papers, pdf, house, says, over, stop);
        _choices = PaperFiles.WrittenBeside(house.Where, WrittenPapers.OfUser);
        return written;
    }

    private static IEnumerable<string> Kept() =>
        Directory.Exists(UserFolder.Houses) ? Directory.GetFiles(UserFolder.Houses, "*.trimout").Order(StringComparer.Ordinal) : [];

    private static string FromHome(string path) =>
        Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) is { Length: > 1 } home && path.StartsWith(home, StringComparison.Ordinal) ? "~"
            + path[home.Length..] : path;

    private static string FileName(string name) =>
        NameAnywhere.Freed(new([.. name.Trim().Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-')]));

    /// <summary>The file that somebody means who typed a path; ~ is the user's own folder, as in a shell.</summary>
    private static string Typed(string path) => Path.GetFullPath(FromOwn(path));

    private static string FromOwn(string path) => path is ['~', '/' or '\\', ..]
        ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), path[2..])
        : path;

    private Result<Scribe> Try(Func<Result<Scribe>> open)
    {
        Fault = ExitCode.Fault;
        try
        {
            return open();
        }
        catch (Exception failed) when (ExitCode.Of(failed) is { } code)
        {
            Fault = code;
            return new Refusal(WayBack.From(failed) is { } way ? $"{failed.Message} {way.ReplaceLineEndings(" ")}" : failed.Message);
        }
    }

    private Scribe TakeElsewhere(Scribe from, HouseOnDisk house)
    {
        var taken = Take(house);
        _writtenElsewhere = from;
        return taken;
    }

    /// <param name="house">The house.</param>
    /// <param name="asked">Whether the user asked to look only, and so need not be told.</param>
    private Scribe Take(HouseOnDisk house, bool asked = false)
    {
        try
        {
            var backup = Task.Run(() => BackupPlace.Keep(house));
            var scribe = new Scribe(house, Clock, Who ?? UsualWho);
            house.KeepAtClosing(() => scribe.Log);
            var why = asked || house.ReadOnlyBecause is not { } because ? null
                : $"This house is open for reading only: {because} Nothing that you do is saved here. F2 writes all of it to a new file, to go on there.";
            var counting = Task.Run(() => NotCounted.Of(scribe.Log));
            var due = DueInService.Of(scribe.House, scribe.Today).Where(d => d.Pressing).Select(d => d.Say.In(scribe.House)).ToList();
            var order = VisitPlan.Order(scribe.House);
            var uncounted = counting.GetAwaiter().GetResult();
            var kept = uncounted.IsEmpty ? null
                : $"{uncounted.Length} of what stands in the history does not count; trimout check lists it. {uncounted[0]}";
            Notices = [.. HouseSource.Remarks(house), .. HouseSource.Holes(house, scribe.Log),
                .. new[] { BackupPlace.NotKnownWhere(), backup.GetAwaiter().GetResult(), why, kept }.OfType<string>(),
                .. due.Count == 0 ? Array.Empty<string>() : [$"In service: {string.Join(" ", due)} H on the job sheet shows all of it."]];
            if (order?.IsPressing(scribe.Today) == true)
                Notices = [.. Notices, OrderNotice(order, scribe.Today)];
            _papers.InDoubt = house.InDoubt;
            _choices = PaperFiles.WrittenBeside(house.Where, WrittenPapers.OfUser);
            Remember(_settings.Opened(house.Where));
            return scribe;
        }
        catch
        {
            house.Dispose();
            throw;
        }
    }

    private static string OrderNotice(OrderDue due, DateOnly today) => string.Create(CultureInfo.InvariantCulture,
        $"{(due.By < today ? "The last day to order was" : "To be ordered by")} {due.By:yyyy-MM-dd}, to be here on {due.Needed:yyyy-MM-dd}: ")
        + $"{string.Join(", ", due.Units.Take(MostUnits))}{(due.Units.Length > MostUnits ? " and others" : "")}. P on the job sheet shows all of it.";

    private const int MostUnits = 12;

    private void Remember(Settings settings)
    {
        _settings = settings;
        settings.Write();
    }
}
