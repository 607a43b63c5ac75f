using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Desks;

namespace TrimOut.Tests.Campaign;

/// <summary>How a verb fared with a damaged house.</summary>
internal enum Outcome { Whole, Said, SilentLoss, Crash, Hang }

/// <summary>Runs everything that reads a house on a damaged one, and judges by what is true, never by what the program says of itself.</summary>
internal sealed partial class Judge
{
    /// <summary>The verbs that read no house that is there.</summary>
    public static readonly string[] ReadNoHouse = ["new", "what-if", "help", "completion"];

    private const string Day = "2026-03-02";
    private const string Part = "trimout-part: 1\nkind: panel-type\nname: Campaign panel\n\noutputs: 14\n";

    private readonly Scene _scene;
    private readonly string _folder;
    private readonly string _house;
    private readonly Dictionary<string, string> _sound = [];

    public Judge(Scene scene, string folder)
    {
        _scene = scene;
        _folder = folder;
        _house = Path.Combine(folder, "h.trimout");
        foreach (var (verb, run) in Verbs())
        {
            Place(scene.Now, []);
            var (ended, shown) = run();
            Assert.True(ended.Crash is null && ended.Code is 0 or 1, $"{verb} on a sound house: {ended.Code} {ended.Crash} {ended.Error}");
            _sound.Add(verb, shown);
        }
    }

    /// <summary>What each verb makes of the house, and why, where it is one of those that must not be.</summary>
    public IEnumerable<(string Verb, Outcome Outcome, string Why)> Of(Damaged damaged)
    {
        foreach (var (verb, run) in Verbs())
        {
            // Writing all papers takes long, and one of them shows what their folder does to it; backups are judged below.
            if (verb is "papers" or "backups" && damaged.Sides.Count > 0)
                continue;
            Place(damaged.Pair, damaged.Sides);
            var (ended, shown) = run();
            var outcome = ended.Hung ? Outcome.Hang
                : ended.IsCrash ? Outcome.Crash
                : shown == _sound[verb] ? Outcome.Whole
                : IsSaid(ended) ? Outcome.Said
                : Outcome.SilentLoss;
            yield return (verb, outcome, $"{ended.Code} {ended.Error} {ended.Crash}");
        }
        Place(damaged.Pair, damaged.Sides);
        yield return Rescue(damaged);
        if (damaged.Sides.FirstOrDefault(s => s.Name == "backup") is { Name: not null } backup && damaged.Hit.Count == 1)
        {
            Place(damaged.Pair, damaged.Sides);
            yield return Backups(backup.Bytes);
        }
    }

    /// <summary>Whether whoever ran it was told, by code and in words, and not told that it was a save that never ended.</summary>
    private static bool IsSaid(VerbRun.Ended ended) =>
        (ended.Code is ExitCode.BadData or ExitCode.LeftOut or ExitCode.NoInput or ExitCode.CannotCreate) && ended.Error.Length > 0
        && !ended.Error.Contains("middle of a save", StringComparison.Ordinal);

    /// <summary>Of the one backup that there is, whole or not, the list must say which.</summary>
    private (string Verb, Outcome Outcome, string Why) Backups(byte[] bytes)
    {
        const string verb = "backups";
        var ended = VerbRun.Run(verb, _house);
        var whole = bytes.AsSpan().SequenceEqual(SideFiles.Of("backup", _scene));
        return (verb, ended.Hung ? Outcome.Hang : ended.IsCrash ? Outcome.Crash : whole && ended.Code == 0 ? Outcome.Whole
            : !whole && IsSaid(ended) ? Outcome.Said : Outcome.SilentLoss, $"{ended.Code} {ended.Error} {ended.Crash}");
    }

    private void Place(Pair pair, IReadOnlyList<(string Name, byte[] Bytes)> sides)
    {
        foreach (var entry in Directory.GetFiles(_folder))
            File.Delete(entry);
        foreach (var folder in Directory.GetDirectories(_folder))
            Directory.Delete(folder, recursive: true);
        if (Directory.Exists(UserFolder.Path))
            Directory.Delete(UserFolder.Path, recursive: true);
        Scene.Write(_house, pair);
        foreach (var (name, bytes) in sides)
        {
            var path = SideFiles.PlaceOf(name, _house, UserFolder.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, bytes);
        }
    }

    /// <summary>Everything that reads a house, and what it shows: of verbs that make a file, what that holds.</summary>
    private IEnumerable<(string Verb, Func<(VerbRun.Ended, string)> Run)> Verbs()
    {
        var made = Path.Combine(_folder, "made.trimout");
        var old = Path.Combine(_folder, "old.trimout");
        foreach (var verb in new[] { "history", "check", "windows", "parts" })
            yield return (verb, () => Shown(VerbRun.Run(verb, _house)));
        // These may show little or nothing of a house: what they end with counts too.
        yield return ("conflicts", () => WithCode(VerbRun.Run("conflicts", _house)));
        yield return ("kit", () => WithCode(VerbRun.Run("kit", _house)));
        yield return ("people", () => WithCode(VerbRun.Run("people", _house)));
        yield return ("hours", () => WithCode(VerbRun.Run("hours", _house)));
        yield return ("photos", () => WithCode(VerbRun.Run("photos", _house)));
        yield return ("service", () => WithCode(VerbRun.Run("service", _house, "--date", Day)));
        yield return ("firm", () => WithCode(VerbRun.Run("firm", _house, "--date", Day)));
        yield return ("firm-paper", () => WrittenOverHouses(
            VerbRun.Run("firm-paper", "call-off", _house, "--out", Path.Combine(_folder, "over"), "--date", Day)));
        yield return ("kit-out", () => WithCode(VerbRun.Run("kit-out", _house, "--kit", Path.Combine(_folder, "kit"))));
        yield return ("kit-in --try", () => Tried(VerbRun.Run("kit-in", _house, Beside("hub.part.txt", Part), "--try")));
        yield return ("import --try", () => Tried(VerbRun.Run("import", _house, Beside("windows.csv", "tag,width,height\nK01,36,60\n"), "--try")));
        yield return ("check --json", () => Shown(VerbRun.Run("check", _house, "--json")));
        yield return ("history --go-on", () => Shown(VerbRun.Run("history", _house, "--go-on")));
        yield return ("compare", () => WithOld(old, () => Shown(VerbRun.Run("compare", _house, old))));
        yield return ("compare, as the other", () => WithOld(old, () => Shown(VerbRun.Run("compare", old, _house))));
        yield return ("binder", () => Written("binder", VerbRun.Run("binder", _house, "--out", Path.Combine(_folder, "papers"), "--date", Day)));
        yield return ("paper labels", () => Written("labels", VerbRun.Run("paper", _house, "labels", "--out", Path.Combine(_folder, "papers"), "--date", Day)));
        yield return ("papers", () => Written("", VerbRun.Run("papers", _house, "--out", Path.Combine(_folder, "papers"), "--date", Day)));
        yield return ("backups", () => WithCode(VerbRun.Run("backups", _house)));
        yield return ("backup --to", () => Made(VerbRun.Run("backup", _house, "--to", made), made));
        yield return ("backup --to --go-on", () => Made(VerbRun.Run("backup", _house, "--to", made, "--go-on"), made));
        yield return ("backup", () => VerbRun.Run("backup", _house) is var ended && ended.Output.Trim() is { Length: > 0 } file ? Made(ended, file)
            : (ended, ""));
        yield return ("restore", () => Made(VerbRun.Run("restore", made, _house), made));
        // What was in its place must be among its backups, whole.
        yield return ("restore --replace", () => WithOld(old, () => VerbRun.Run("restore", _house, old, "--replace") is var ended
            ? Made(ended, LastBackup()) : default));
        yield return ("merge, as the other", () => WithOld(old, () => Made(VerbRun.Run("merge", old, _house), old)));
        yield return ("merge, into it", () => WithOld(old, () => Made(VerbRun.Run("merge", _house, old), _house)));
        yield return ("set", () => Made(VerbRun.Run("set", _house), _house));
        yield return ("the screens, to look", () => Screens(desk => desk.OpenToRead(_house)));
        yield return ("the screens, to work", () => Screens(desk => desk.Open(_house)));
    }

    /// <summary>The names of the verbs that are run.</summary>
    public IEnumerable<string> Names => Verbs().Select(v => v.Verb.Split(' ', ',')[0]).Append("rescue");

    private static (VerbRun.Ended, string) WithCode(VerbRun.Ended ended) => (ended, $"{ended.Code} {ended.Output}");

    /// <summary>What a try shows, and that the house holds what it held.</summary>
    private (VerbRun.Ended, string) Tried(VerbRun.Ended ended) => (ended, $"{ended.Code} {ended.Output} {VerbRun.Run("history", _house).Output}");

    private string Beside(string name, string text)
    {
        File.WriteAllText(Path.Combine(_folder, name), text);
        return Path.Combine(_folder, name);
    }

    /// <summary>The backup of a house that was made last; the house itself where there is none.</summary>
    private string LastBackup() => Path.Combine(UserFolder.Path, "backups") is var all && Directory.Exists(all)
        && Directory.GetFiles(all, "*.trimout", SearchOption.AllDirectories).OrderBy(File.GetLastWriteTimeUtc).LastOrDefault() is { } last ? last : _house;

    private static (VerbRun.Ended, string) Shown(VerbRun.Ended ended) => (ended, ended.Output);

    private (VerbRun.Ended, string) Written(string paper, VerbRun.Ended ended)
    {
        var folder = Path.Combine(_folder, "papers");
        return (ended, Directory.Exists(folder) ? string.Concat(Directory.GetFiles(folder, $"h-{paper}*")
            .Order(StringComparer.Ordinal).Select(File.ReadAllText)) : "");
    }

    private (VerbRun.Ended, string) WrittenOverHouses(VerbRun.Ended ended)
    {
        var folder = Path.Combine(_folder, "over");
        return (ended, Directory.Exists(folder)
            ? string.Concat(Directory.GetFiles(folder, "*.md").Order(StringComparer.Ordinal).Select(File.ReadAllText)) : "");
    }

    /// <summary>What a house file that a verb made or worked on holds. What it says when it is read is for that reader to hear: the verb itself must have
    /// said it.</summary>
    private static (VerbRun.Ended, string) Made(VerbRun.Ended ended, string file) => (ended, VerbRun.Run("history", file).Output);

    private (VerbRun.Ended, string) WithOld(string old, Func<(VerbRun.Ended, string)> run)
    {
        Scene.Write(old, _scene.Older.First(p => p.Journal is null));
        return run();
    }

    private static (VerbRun.Ended, string) Screens(Func<Desk, Result<Scribe>> open)
    {
        var desk = new Desk("Test crew");
        Result<Scribe> opened;
        try
        {
            var opening = Task.Run(() => open(desk));
            if (!opening.Wait(VerbRun.TooLong))
                return (new VerbRun.Ended(-1, "", "", Hung: true), "");
            opened = opening.Result;
        }
        catch (AggregateException failed) when (ExitCode.Of(failed.InnerException!) is null)
        {
            return (new VerbRun.Ended(-1, "", "", failed.InnerException!.ToString()), "");
        }
        if (!opened.Ok)
            return (new VerbRun.Ended(desk.Fault, "", opened.Reason!), "");
        var shown = string.Concat(opened.Value.Log.Changes.Select(c => ChangeJson.Write(c) + "\n"));
        desk.Close(opened.Value);
        return (new VerbRun.Ended(desk.Notices.Count > 0 ? ExitCode.LeftOut : ExitCode.Fine, shown, string.Join("\n", desk.Notices)), shown);
    }

    private (string Verb, Outcome Outcome, string Why) Rescue(Damaged damaged)
    {
        const string verb = "rescue";
        var made = Path.Combine(_folder, "rescued.trimout");
        var ended = VerbRun.Run("rescue", _house, made);
        if (ended.Hung)
            return (verb, Outcome.Hang, "");
        if (ended.IsCrash)
            return (verb, Outcome.Crash, ended.Crash ?? ended.Error);
        var rescued = File.Exists(made) ? VerbRun.Run("history", made).Output.Split('\n',
            StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal) : [];
        var truth = _scene.Truth;
        if (rescued.Count == truth.Count && truth.All(rescued.Contains))
            return (verb, Outcome.Whole, "");
        if (ended.Code is not (ExitCode.LeftOut or ExitCode.BadData) || ended.Error.Length == 0)
            return (verb, Outcome.SilentLoss, $"{rescued.Count} of {truth.Count} and code {ended.Code}: {ended.Error}");
        if (damaged.ForeignFile && rescued.Count > 0 && rescued.All(_scene.ForeignTruth.Contains))
            return (verb, Outcome.Said, "");
        // Of another copy of the same house, what was saved there is as good: it is one house.
        if (damaged.What.Contains("other copy's file", StringComparison.Ordinal) && rescued.All(r => _scene.OtherTruth.Contains(r) || truth.Contains(r)))
            return (verb, Outcome.Said, "");
        // Where nothing of the file itself could be read, a whole journal of another house may pass for its own, as long as that is said.
        if (damaged.What.Contains("foreign journal", StringComparison.Ordinal)
            && ended.Error.Contains("or even another house's", StringComparison.Ordinal) && rescued.All(_scene.ForeignTruth.Contains))
            return (verb, Outcome.Said, "");
        // So is what came from that copy's journal, where no last page could tell whose it is, and that is said.
        if (damaged.What.Contains("other copy's journal", StringComparison.Ordinal)
            && ended.Error.Contains("whether that is this copy's", StringComparison.Ordinal)
            && rescued.All(r => _scene.OtherTruth.Contains(r) || truth.Contains(r)))
            return (verb, Outcome.Said, "");
        if (rescued.FirstOrDefault(r => !truth.Contains(r)) is { } mixed)
            return (verb, Outcome.SilentLoss, $"something that is not of this house came in: {mixed[..60]} {ended.Error}");
        var listed = Listed(ended.Error, truth.Count);
        var missing = Enumerable.Range(1, truth.Count).Where(n => !rescued.Contains(truth[n - 1]) && !listed.Contains(n)).ToList();
        return missing.Count == 0 ? (verb, Outcome.Said, "") : (verb, Outcome.SilentLoss,
            $"neither there nor listed: {string.Join(' ', missing)}; {ended.Error}");

        HashSet<int> Listed(string error, int all)
        {
            var numbers = new HashSet<int>();
            foreach (Match match in Ranges().Matches(error))
            {
                var from = long.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
                var to = match.Groups[2].Success ? long.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture) : from;
                numbers.UnionWith(Enumerable.Range(1, all).Where(n => n >= from && n <= to));
            }
            var lastThere = Enumerable.Range(1, all).LastOrDefault(n => rescued.Contains(truth[n - 1]));
            if (Open().IsMatch(error))
                numbers.UnionWith(Enumerable.Range(1, all).Where(n => n > lastThere));
            if (error.Contains("Nothing in", StringComparison.Ordinal))
                numbers.UnionWith(Enumerable.Range(1, all));
            return numbers;
        }
    }

    [GeneratedRegex("^Changes? ([0-9]+)(?: to ([0-9]+))?", RegexOptions.Multiline)]
    private static partial Regex Ranges();

    /// <summary>What says that everything after the last change that is there may be lost.</summary>
    [GeneratedRegex("after the last that was found|after its last sound change is lost|since the house was last opened|which of the two is the later|only " +
        "its journal was read|several house files")]
    private static partial Regex Open();
}
