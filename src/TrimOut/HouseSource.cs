using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Kept;
using TrimOut.HouseFile.Texts;
using TrimOut.Verbs;

namespace TrimOut;

/// <summary>Finds the house that a command names: a house file, or a folder with a history as text.</summary>
internal static class HouseSource
{
    /// <summary>Whether a path is a folder that holds a house's history as text.</summary>
    public static bool IsSample(string path) => File.Exists(Path.Combine(path, HistoryText.FileName));

    /// <summary>The history of a house, only to be looked at, and what is to be said about how it was found.</summary>
    /// <param name="path">The house.</param>
    /// <param name="goOn">Whether a house with a damaged journal is read as far as it is sound, rather than refused.</param>
    /// <param name="aloud">Whether what does not count, and how far a long text is read, is said on standard error; not while screens are shown.</param>
    /// <returns>The history, the remarks, and how many saves are in doubt at the least: 0 where nobody knows how many, null where none is.</returns>
    public static (HouseLog Log, IReadOnlyList<string> Remarks, long? InDoubt) Read(string path, bool goOn, bool aloud = true)
    {
        if (IsSample(path))
            return ReadAsText(Path.Combine(path, HistoryText.FileName), aloud);
        if (path.EndsWith(".jsonl", StringComparison.OrdinalIgnoreCase))
            return ReadAsText(path, aloud);
        using var house = Looked(() => HouseOnDisk.OpenToRead(path, TimeProvider.System, goOn));
        if (house.Newer > 0)
            throw new VerbException(ExitCode.BadData, $"{path}: {house.ReadOnlyBecause}");
        var log = HouseLog.Of(house.Opened);
        if (!log.Ok)
            throw new VerbException(ExitCode.BadData, $"{path}: {log.Reason}");
        return (Told(log.Value, aloud), [.. Remarks(house), .. Holes(house, log.Value)], house.InDoubt);
    }

    /// <summary>What is to be said about how a house was found.</summary>
    public static IReadOnlyList<string> Remarks(HouseOnDisk house) =>
        [.. new[] { house.Remark, house.LeftOut is null ? null : house.LeftOut + " Told to go on, this shows only what is sound." }.OfType<string>()];

    /// <summary>
    /// What the numbers of a house's changes say is missing from its history, as after a rescue that lost some; one sentence or none. What was left out of a
    /// damaged journal is said by itself.
    /// </summary>
    public static IEnumerable<string> Holes(HouseOnDisk house, HouseLog log)
    {
        if (house.Kept is not null || NumberGaps.In(log.Changes) is not { IsEmpty: false } gaps)
            return [];
        const int most = 5;
        var which = string.Join(", ", gaps.Take(most).Select(g => g.Which)) + (gaps.Length > most ? ", and others" : "");
        var many = (int)Math.Min(int.MaxValue, gaps.Sum(g => g.Count));
        return [$"{NumberText.Counted(many, "change is", "changes are")} missing from the history of {house.Where}, "
            + $"by the numbers of those that are there: {which}. What they said does not stand in the house. Another copy may have them: trimout merge "
            + $"{ShellWord.Of(house.Where)} OTHER"];
    }

    /// <summary>Looks at a house; where that is refused because only its journal is damaged, says how to look all the same.</summary>
    public static T Looked<T>(Func<T> look)
    {
        try
        {
            return look();
        }
        catch (HouseStoreException refused) when (refused is { Fault: StoreFault.Damaged, JournalOnly: true })
        {
            throw new VerbException(ExitCode.BadData, $"{refused.Message.TrimEnd('.')}. To look at what is sound all the same: --go-on", refused);
        }
    }

    /// <summary>The history that a text file holds, and which changes its devices' numbers say are missing from it.</summary>
    /// <returns>The history, the remarks, and how many changes are missing at the least: null where none is known to be.</returns>
    public static (HouseLog Log, IReadOnlyList<string> Remarks, long? InDoubt) ReadAsText(string path, bool aloud = true)
    {
        var log = ReadText(path, aloud);
        var gaps = NumberGaps.In(log.Changes);
        const int most = 20;
        return (log, [.. gaps.Take(most).Select(g => $"{path}: {g.Sentence}"), .. gaps.Skip(most).Take(1).Select(_ =>
            string.Create(CultureInfo.InvariantCulture, $"{path}: and {gaps.Length - most} more such gaps."))], gaps.IsEmpty ? null : gaps.Sum(g => g.Count));
    }

    /// <summary>The history that a text file holds; <c>-</c> is standard input.</summary>
    public static HouseLog ReadText(string path, bool aloud = true)
    {
        try
        {
            using var text = path == "-" ? Console.In : new StreamReader(PlainFile.OpenRead(path), TextBytes.Marking);
            var log = HistoryText.Read(text, many =>
            {
                if (aloud)
                    Common.Say($"{NumberText.Counted(many, "change")} of {path} {(many == 1 ? "was" : "were")} read.");
            });
            return log.Ok ? Told(log.Value, aloud) : throw new VerbException(ExitCode.BadData, $"{path}: {log.Reason}");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw new VerbException(failed is UnauthorizedAccessException ? ExitCode.NoRights : ExitCode.NoInput, PlainFile.WhyNotRead(path, failed));
        }
    }

    /// <summary>Says on standard error what of a history does not count; each such thing once.</summary>
    /// <returns>How much there is of it.</returns>
    public static int Tell(HouseLog log)
    {
        const int most = 40;
        var all = NotCounted.Of(log);
        var fresh = all.Where(Said.Add).ToList();
        foreach (var sentence in fresh.Take(most))
            Console.Error.WriteLine(ShownText.Line(sentence));
        if (fresh.Count > most)
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"And {fresh.Count - most} more that do not count."));
        return all.Length;
    }

    /// <summary>From how many bytes on a house file is large; tests have small ones.</summary>
    internal static long LargeFrom { get; set; } = BriefWork.Large;

    private static readonly HashSet<string> Said = new(StringComparer.Ordinal);

    /// <summary>Another command line begins, of which nothing was said yet.</summary>
    public static void Begin() => Said.Clear();

    private static HouseLog Told(HouseLog log, bool aloud)
    {
        if (aloud)
            Tell(log);
        return log;
    }

    /// <summary>Opens a house file to work on it.</summary>
    /// <param name="path">The house file.</param>
    /// <param name="by">Whose changes are written.</param>
    /// <param name="brief">Whether it is a short piece of work: see <see cref="BriefWork"/>.</param>
    public static (HouseOnDisk File, Scribe Scribe) Open(string path, string by, bool brief = false)
    {
        if (IsSample(path))
            throw new VerbException(ExitCode.Usage,
                $"{path} is a folder with a history as text: it can be looked at, not changed. To make a house file of it: " +
                $"trimout restore NEW.trimout {ShellWord.Of(Path.Combine(path, HistoryText.FileName))}");
        var file = HouseOnDisk.Open(path, TimeProvider.System, brief ? new BriefWork(KeptPlace.Folder(), LargeFrom) : KeptPlace.NotBrief());
        try
        {
            foreach (var remark in new[] { file.Remark, BackupPlace.NotKnownWhere(), BackupPlace.Keep(file) }.OfType<string>())
                Console.Error.WriteLine(remark);
            var scribe = new Scribe(file, TimeProvider.System, by);
            foreach (var hole in Holes(file, scribe.Log))
                Console.Error.WriteLine(hole);
            Tell(scribe.Log);
            file.KeepAtClosing(() => scribe.Log);
            return (file, scribe);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>The value of a result, or an end with its reason.</summary>
    public static T OrEnd<T>(this Result<T> result, int code) => result.Ok ? result.Value : throw new VerbException(code, result.Reason!);
}
