namespace TrimOut.Desks;

/// <summary>Writes a file that only this user may read, beside itself first: a full disk leaves the last one as it was.</summary>
internal static class OwnFile
{
    /// <summary>Writes all bytes of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="bytes">What is to stand in it.</param>
    /// <param name="toTheDisk">Whether it is on the disk before it takes the place of the last one: for what can't be worked out again.</param>
    public static void Write(string path, ReadOnlySpan<byte> bytes, bool toTheDisk = false)
    {
        // A name that nobody has: whatever is called like ours may be somebody's.
        var next = $"{path}.{Path.GetRandomFileName()}";
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = File.Exists(path) ? File.GetUnixFileMode(path) : UnixFileMode.UserRead | UnixFileMode.UserWrite;
        try
        {
            using (var file = new FileStream(next, options))
            {
                file.Write(bytes);
                file.Flush(toTheDisk);
            }
            File.Move(next, path, overwrite: true);
        }
        catch
        {
            File.Delete(next);
            throw;
        }
    }
}
