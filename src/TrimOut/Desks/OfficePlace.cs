using System.Globalization;
using TrimOut.Core.History;
using TrimOut.HouseFile.Files;
using TrimOut.Office;

namespace TrimOut.Desks;

/// <summary>What this machine knows of the office: the credentials, and how far each house was exchanged. Nothing here asks the network.</summary>
internal static class OfficePlace
{
    private const int LargestMark = 1 << 20;

    /// <summary>The credentials file, where none is named.</summary>
    public static string UsualFile => Path.Combine(UserFolder.Path, "office.credentials");

    /// <summary>What this device is known by at the office. Where the system has the secret it is not asked for it yet: that may take its time.</summary>
    /// <param name="named">The credentials file; null for the one that the environment names, or the usual one.</param>
    /// <exception cref="OfficeException">There is none, others may read it, or it is no such file.</exception>
    public static Credentials Credentials(string? named = null)
    {
        var read = Read(FileOf(named));
        return Environment.GetEnvironmentVariable(Office.Credentials.PasswordVariable) is { Length: > 0 } secret ? read with { Password = secret } : read;
    }

    /// <summary>The credentials file that is meant by a name; null for the one that the environment names, or the usual one.</summary>
    public static string FileOf(string? named) =>
        named ?? (Environment.GetEnvironmentVariable(Office.Credentials.FileVariable) is { Length: > 0 } set ? set : UsualFile);

    /// <summary>What stands in a credentials file, whatever the environment says.</summary>
    /// <exception cref="OfficeException">It is not there, others may read it, or it is no such file.</exception>
    public static Credentials Read(string file)
    {
        byte[] text;
        try
        {
            PlainFile.Check(file);
            if (!OperatingSystem.IsWindows() && File.Exists(file)
                && (File.GetUnixFileMode(file) & ~(UnixFileMode.UserRead | UnixFileMode.UserWrite)) != UnixFileMode.None)
            {
                throw new OfficeException(OfficeFault.NotAllowed,
                    $"{file} holds a secret, and others may read it, so it was not used. To make it yours alone: chmod 600 {ShellWord.Of(file)}");
            }
            text = PlainFile.ReadAll(file, Office.Credentials.Largest);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw new OfficeException(OfficeFault.NoCredentials, Path.Exists(file) ? PlainFile.WhyNotRead(file, failed)
                : $"This machine is not enrolled at an office: there is no {file}. The office makes that file: trimout office enroll", failed);
        }
        var read = Office.Credentials.Read(text);
        if (!read.Ok)
            throw new OfficeException(OfficeFault.NoCredentials, $"{file} can't be used: {read.Reason} Ask the office for a new one.");
        return read.Value;
    }

    /// <summary>Whether this machine has credentials for an office.</summary>
    public static bool IsEnrolled => File.Exists(FileOf(null));

    /// <summary>How far a house was exchanged with an office; null where it never was, or nobody remembers.</summary>
    public static ExchangeMark? MarkOf(Credentials office, HouseLog log) => log.Changes.IsEmpty ? null : MarkOf(office, log.Changes[0].Id);

    /// <summary>When it was last remembered how far a house was exchanged; some day long ago where it never was.</summary>
    public static DateTime MarkedAt(Credentials office, ChangeId begun) => File.GetLastWriteTimeUtc(FileOf(office, begun));

    /// <summary>The same of a house by the change that began it.</summary>
    public static ExchangeMark? MarkOf(Credentials office, ChangeId begun)
    {
        try
        {
            return ExchangeMark.Read(PlainFile.ReadAll(FileOf(office, begun), LargestMark));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Remembers how far a house was exchanged. Where that can't be, the next exchange works it out again.</summary>
    public static void Keep(Credentials office, HouseLog log, ExchangeMark mark)
    {
        try
        {
            UserFolder.Make(UserFolder.Path);
            UserFolder.Make(Folder);
            OwnFile.Write(FileOf(office, log.Changes[0].Id), mark.Write());
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            // It is worked out again.
        }
    }

    /// <summary>Writes a credentials file that only this user can read; one that is there already is left alone.</summary>
    /// <exception cref="VerbException">There is one already, or it can't be written.</exception>
    public static void Write(string file, Credentials credentials)
    {
        if (Path.Exists(file))
            throw new VerbException(ExitCode.CannotCreate, $"{file} is there already, and was left as it is.");
        OwnFile.Write(file, credentials.Write());
    }

    private static string Folder => Path.Combine(UserFolder.Path, "office");

    private static string FileOf(Credentials office, ChangeId begun) => Path.Combine(Folder, string.Create(CultureInfo.InvariantCulture,
        $"{Named(office.Host)}-{office.Port}-{Named(office.Database)}-{begun.Device}-{begun.Sequence}.json"));

    private static string Named(string text) => new([.. text.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' ? c : '-')]);
}
