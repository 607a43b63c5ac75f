using System.Buffers.Binary;
using System.Globalization;
using System.Runtime.InteropServices;

namespace TrimOut.HouseFile.Files;

/// <summary>When and as what the disk made a file. A rename keeps it; a copy has another.</summary>
/// <remarks>.NET does not ask Linux for it, so this does, by statx(2).</remarks>
internal static class FileBirth
{
    private const int FromHere = -100;
    private const uint BirthAndNumber = 0x800 | 0x100;
    private const int NumberAt = 32;
    private const int SecondsAt = 80;
    private const int NanosecondsAt = 88;

    /// <summary>The birth as text; null where the disk does not keep it.</summary>
    public static string? Of(string path)
    {
        if (!OperatingSystem.IsLinux())
            return File.GetCreationTimeUtc(path).ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture);
        var answer = new byte[256];
        try
        {
            if (Ask(FromHere, path, 0, BirthAndNumber, answer) != 0)
                return null;
        }
        catch (EntryPointNotFoundException)
        {
            return null;
        }
        if ((BinaryPrimitives.ReadUInt32LittleEndian(answer) & BirthAndNumber) != BirthAndNumber)
            return null;
        var seconds = BinaryPrimitives.ReadInt64LittleEndian(answer.AsSpan(SecondsAt));
        var nanoseconds = BinaryPrimitives.ReadUInt32LittleEndian(answer.AsSpan(NanosecondsAt));
        var number = BinaryPrimitives.ReadUInt64LittleEndian(answer.AsSpan(NumberAt));
        return string.Create(CultureInfo.InvariantCulture, $"{seconds}.{nanoseconds:000000000}-{number}");
    }

    [DllImport("libc", EntryPoint = "statx", BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Ask(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, [Out] byte[] answer);
}
