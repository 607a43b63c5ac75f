using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
using TrimOut.Papers;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>Opens houses, writes papers and remembers settings for the screens.</summary>
/// <param name="by">Whose changes are written.</param>
/// <param name="clock">The clock; the machine's own where none is given.</param>
internal sealed class Desk(string by, TimeProvider? clock = null) : IDesk
{
    private Settings _settings = Settings.Read();

    /// <inheritdoc/>
    public TimeProvider Clock { get; } = clock ?? TimeProvider.System;

    /// <summary>The exit code for what last went wrong in opening a house.</summary>
    public int Fault { get; private set; } = ExitCode.Fault;

    /// <summary>What the user should hear after the screens are gone.</summary>
    public List<string> Remarks { get; } = [];

    /// <inheritdoc/>
    public IReadOnlyList<HouseChoice> Houses =>
    [
        .. _settings.Recent.Concat(Kept()).Distinct().Where(File.Exists).Select(f => new HouseChoice(f, Path.GetFileNameWithoutExtension(f), false, Path.GetDirectoryName(f)!)),
        .. SampleJobs.Folders.Select(f => new HouseChoice(f, Path.GetFileName(f), true, SampleJobs.About(f))),
    ];

    /// <inheritdoc/>
    public string? Look
    {
        get => _settings.Look;
        set => Remember(_settings with { Look = value });
    }

    /// <inheritdoc/>
    public IReadOnlyList<PaperChoice> Papers => PaperFiles.Choices;

    /// <inheritdoc/>
    public Result<Scribe> Open(string path) => Try(() =>
    {
        var full = Path.GetFullPath(path);
        if (HouseSource.IsSample(full))
        {
            var (copy, made) = SampleJobs.Copy(full);
            Remarks.Add(made ? $"{path} was made into a house file: {copy}." : $"The copy of {path} that you worked on before was opened: {copy}.");
            full = copy;
        }
        return Take(HouseOnDisk.Open(full, Clock));
    });

    /// <summary>Opens a house for looking only.</summary>
    public Result<Scribe> OpenToRead(string path) => Try(() => Take(HouseOnDisk.OpenToRead(path, Clock)));

    /// <inheritdoc/>
    public Result<Scribe> Create(string name, DisplayUnits units) => NewHouse.Begin(name, units).Then(begin => Try(() =>
    {
        UserFolder.Make(UserFolder.Houses);
        var scribe = Take(HouseOnDisk.Create(Path.Combine(UserFolder.Houses, FileName(name) + ".trimout"), Clock));
        return scribe.Record(begin).Then<Scribe>(_ => scribe);
    }));

    /// <inheritdoc/>
    public void Close(Scribe scribe) => (scribe.Store as IDisposable)?.Dispose();

    /// <inheritdoc/>
    public Result<Scribe> WriteElsewhere(Scribe scribe) => Try(() =>
    {
        UserFolder.Make(UserFolder.Houses);
        var stem = Path.Combine(UserFolder.Houses, FileName(scribe.House.Name) + "-copy");
        var file = Enumerable.Range(1, 999).Select(n => string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}.trimout")).First(f => !File.Exists(f));
        return Take(HouseOnDisk.Create(file, Clock, scribe.Log.Changes));
    });

    /// <inheritdoc/>
    public string? NoteFault(string note)
    {
        try
        {
            UserFolder.Make(UserFolder.Path);
            var file = Path.Combine(UserFolder.Path, string.Create(CultureInfo.InvariantCulture, $"fault-{Clock.GetUtcNow():yyyyMMdd-HHmmss}.txt"));
            File.WriteAllText(file, note);
            return file;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <inheritdoc/>
    public string Preview(string paper, House house, DateOnly date) => PaperFiles.Find(paper).Then<string>(p => p.Write(PaperData.Of(house, date)).Markdown) is { Ok: true } text ? text.Value : "";

    /// <inheritdoc/>
    public Result<IReadOnlyList<string>> Write(string paper, Scribe scribe, DateOnly date) => PaperFiles.Find(paper).Then<IReadOnlyList<string>>(found =>
    {
        var file = scribe.Store.Where;
        try
        {
            return new List<string>(PaperFiles.Write(found, PaperData.Of(scribe.House, date), null, Path.GetDirectoryName(file)!, PaperFiles.StemOf(file)));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal($"Nothing was written: {failed.Message}");
        }
    });

    private static IEnumerable<string> Kept() =>
        Directory.Exists(UserFolder.Houses) ? Directory.GetFiles(UserFolder.Houses, "*.trimout").Order(StringComparer.Ordinal) : [];

    private static string FileName(string name) =>
        new([.. name.Trim().Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' or '.' ? c : '-')]);

    private Result<Scribe> Try(Func<Result<Scribe>> open)
    {
        try
        {
            return open();
        }
        catch (Exception failed) when (ExitCode.Of(failed) is { } code)
        {
            Fault = code;
            return new Refusal(failed.Message);
        }
    }

    private Scribe Take(HouseOnDisk house)
    {
        try
        {
            var scribe = new Scribe(house, Clock, by);
            if (house.Remark is { } remark)
                Remarks.Add(remark);
            if (BackupPlace.Keep(house) is { } failed)
                Remarks.Add(failed);
            Remember(_settings.Opened(house.Where));
            return scribe;
        }
        catch
        {
            house.Dispose();
            throw;
        }
    }

    private void Remember(Settings settings)
    {
        _settings = settings;
        settings.Write();
    }
}
