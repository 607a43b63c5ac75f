using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Texts;

namespace TrimOut;

/// <summary>Finds the house that a command names: a house file, or a folder with a history as text.</summary>
internal static class HouseSource
{
    /// <summary>Whether a path is a folder that holds a house's history as text.</summary>
    public static bool IsSample(string path) => File.Exists(Path.Combine(path, HistoryText.FileName));

    /// <summary>The history of a house, only to be looked at.</summary>
    public static HouseLog Read(string path)
    {
        if (IsSample(path))
            return ReadText(Path.Combine(path, HistoryText.FileName));
        if (path.EndsWith(".jsonl", StringComparison.OrdinalIgnoreCase))
            return ReadText(path);
        using var house = HouseOnDisk.OpenToRead(path, TimeProvider.System);
        if (house.Newer > 0)
            throw new VerbException(ExitCode.BadData, $"{path}: {house.ReadOnlyBecause}");
        var log = HouseLog.Of(house.Opened);
        return log.Ok ? log.Value : throw new VerbException(ExitCode.BadData, $"{path}: {log.Reason}");
    }

    /// <summary>The history that a text file holds; <c>-</c> is standard input.</summary>
    public static HouseLog ReadText(string path)
    {
        string text;
        try
        {
            text = path == "-" ? Console.In.ReadToEnd() : File.ReadAllText(path);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw new VerbException(failed is UnauthorizedAccessException ? ExitCode.NoRights : ExitCode.NoInput, $"{path} can't be read: {failed.Message}");
        }
        var log = HistoryText.Read(text);
        return log.Ok ? log.Value : throw new VerbException(ExitCode.BadData, $"{path}: {log.Reason}");
    }

    /// <summary>Opens a house file to work on it.</summary>
    /// <param name="path">The house file.</param>
    /// <param name="by">Whose changes are written.</param>
    public static (HouseOnDisk File, Scribe Scribe) Open(string path, string by)
    {
        if (IsSample(path))
            throw new VerbException(ExitCode.Usage,
                $"{path} is a folder with a history as text: it can be looked at, not changed. To make a house file of it: " +
                $"trimout restore NEW.trimout {Path.Combine(path, HistoryText.FileName)}");
        var file = HouseOnDisk.Open(path, TimeProvider.System);
        try
        {
            foreach (var remark in new[] { file.Remark, BackupPlace.Keep(file) }.OfType<string>())
                Console.Error.WriteLine(remark);
            return (file, new Scribe(file, TimeProvider.System, by));
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
