using System.Buffers.Binary;
using System.Globalization;
using System.Runtime.InteropServices;

namespace TrimOut.HouseFile.Files;

/// <summary>When and as what the disk made a file. A rename keeps it; a copy has another.</summary>
/// <remarks>
/// .NET does not ask Linux for it, so this does, by statx(2). On macOS the Finder gives a copy the day of what it copied, so the file's number is asked too,
/// by getattrlist(2): without it a copy that is put back in place would be taken for the file itself, and go on with its device's name. On Windows a file that
/// gets the name of one that went less than 15 seconds before takes over its day (file system tunneling); what is noted in a file is the day when that very
/// file was written, which is never that of the one before.
/// </remarks>
internal static class FileBirth
{
    private const int FromHere = -100;
    private const uint BirthAndNumber = 0x800 | 0x100;
    private const int NumberAt = 32;
    private const int SecondsAt = 80;
    private const int NanosecondsAt = 88;
    private const int MacAnswer = 4 + 16 + 8;

    /// <summary>Five groups of attributes, of which the first is asked for its ATTR_CMN_CRTIME and ATTR_CMN_FILEID.</summary>
    private static readonly byte[] Asked = [5, 0, 0, 0, 0x00, 0x02, 0x00, 0x02, .. new byte[16]];

    /// <summary>The birth as text; null where the disk does not keep it.</summary>
    public static string? Of(string path)
    {
        if (OperatingSystem.IsMacOS())
            return OnMac(path);
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
        return InWords(seconds, nanoseconds, number);
    }

    /// <summary>The birth by an answer of getattrlist(2) to <see cref="Asked"/>; null where the disk left something out.</summary>
    /// <remarks>The answer begins with its length; the attributes follow in the order of their bits, packed to four bytes.</remarks>
    internal static string? OfMac(ReadOnlySpan<byte> answer) => BinaryPrimitives.ReadUInt32LittleEndian(answer) != MacAnswer ? null
        : InWords(BinaryPrimitives.ReadInt64LittleEndian(answer[4..]), (uint)BinaryPrimitives.ReadInt64LittleEndian(answer[12..]),
            BinaryPrimitives.ReadUInt64LittleEndian(answer[20..]));

    private static string? OnMac(string path)
    {
        var answer = new byte[MacAnswer];
        return AskMac(path, Asked, answer, answer.Length, 0) == 0 ? OfMac(answer) : null;
    }

    private static string InWords(long seconds, uint nanoseconds, ulong number) =>
        string.Create(CultureInfo.InvariantCulture, $"{seconds}.{nanoseconds:000000000}-{number}");

    [DllImport("libc", EntryPoint = "statx", BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Ask(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, [Out] byte[] answer);

    [DllImport("libc", EntryPoint = "getattrlist", BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int AskMac([MarshalAs(UnmanagedType.LPUTF8Str)] string path, [In] byte[] asked, [Out] byte[] answer, nint length, nuint options);
}
