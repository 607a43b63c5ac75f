using TrimOut.Core;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Reads the file of a schedule, and no more of one that is none.</summary>
public static class ScheduleFile
{
    /// <summary>The most bytes of a schedule.</summary>
    public const int MostBytes = 16 << 20;

    /// <summary>The most bytes of a building model.</summary>
    public const int MostBytesOfModel = 8 * MostBytes;

    private const int Start = 64;

    /// <summary>All its bytes; or why it can't be read, or is no house's schedule for its size.</summary>
    public static Result<byte[]> Read(string path)
    {
        try
        {
            using var file = PlainFile.OpenRead(path);
            var start = new byte[Start];
            var read = file.ReadAtLeast(start, Start, throwOnEndOfStream: false);
            var most = IfcRows.IsOne(start[..read]) ? MostBytesOfModel : MostBytes;
            return file.Length > most
                ? new Refusal($"{path} has more than {most >> 20} MiB: that is no house's schedule. Nothing was imported.")
                : PlainFile.ReadAll(path, most);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new Refusal(PlainFile.WhyNotRead(path, failed));
        }
    }
}
