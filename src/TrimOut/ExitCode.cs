using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.Office;

namespace TrimOut;

/// <summary>What the program tells whoever started it. From 64 on, the numbers are those of sysexits.h.</summary>
internal static class ExitCode
{
    /// <summary>All went well; for <c>check</c>: no open stops among what could be checked.</summary>
    public const int Fine = 0;

    /// <summary><c>check</c>: there are open stops, or checks that wait where they are asked for.</summary>
    public const int OpenStops = 1;

    /// <summary>Done, and something was left out: it is listed on standard error.</summary>
    public const int LeftOut = 2;

    /// <summary>The command was written wrongly.</summary>
    public const int Usage = 64;

    /// <summary>A file holds something else than it should.</summary>
    public const int BadData = 65;

    /// <summary>There is no such file.</summary>
    public const int NoInput = 66;

    /// <summary>Screens were asked for, and there is no terminal that can show them.</summary>
    public const int NoTerminal = 69;

    /// <summary>A browser was to print, and there is none, or it failed.</summary>
    public const int NoProgram = 69;

    /// <summary>The office can't be reached, or is not the one that it should be.</summary>
    public const int NoOffice = 69;

    /// <summary>A fault in TrimOut itself.</summary>
    public const int Fault = 70;

    /// <summary>A file can't be made, or is there already.</summary>
    public const int CannotCreate = 73;

    /// <summary>The disk failed.</summary>
    public const int Disk = 74;

    /// <summary>Another program has the house open: try again later.</summary>
    public const int InUse = 75;

    /// <summary>There is no right to do that.</summary>
    public const int NoRights = 77;

    /// <summary>Stopped from outside between two papers, as by Ctrl-C: 128 and the number of that signal, as shells have it.</summary>
    public const int Stopped = 130;

    /// <summary>The list of them for the help and the manual.</summary>
    public static IReadOnlyList<(int Code, string Meaning)> All { get; } =
    [
        (Fine, "all went well; check: no open stops among what could be checked"),
        (OpenStops, "check: there are open stops; with --all-made, or checks that wait"),
        (LeftOut, "done, but something could not be read and is listed on standard error"),
        (Usage, "the command was written wrongly"),
        (BadData, "a file holds something else than it should, or is damaged"),
        (NoInput, "there is no such file, or a folder, a pipe or a device has its name"),
        (NoTerminal, "no terminal, or one too small for the screens; for a PDF, no browser that prints it; the office can't be reached"),
        (Fault, "a fault in TrimOut itself"),
        (CannotCreate, "a file can't be made, or is there already"),
        (Disk, "the disk failed"),
        (InUse, "another program has the house open"),
        (NoRights, "no right to read or write"),
        (Stopped, "papers: stopped before the last one was written"),
    ];

    /// <summary>The code for what the user or the disk did wrong; null for a fault of our own.</summary>
    public static int? Of(Exception failed) => failed switch
    {
        VerbException end => end.Code,
        HouseStoreException house => Of(house.Fault),
        OfficeException office => Of(office.Fault),
        NotOverwrittenException => CannotCreate,
        UnauthorizedAccessException => NoRights,
        FileNotFoundException or DirectoryNotFoundException or HouseFile.Files.NotAFileException => NoInput,
        IOException => Disk,
        _ => null,
    };

    /// <summary>The code for what is wrong between here and the office.</summary>
    public static int Of(OfficeFault fault) => fault switch
    {
        OfficeFault.NotAllowed => NoRights,
        OfficeFault.BadData => BadData,
        OfficeFault.NoCredentials => NoInput,
        _ => NoOffice,
    };

    /// <summary>The code for what is wrong with a house or its disk.</summary>
    public static int Of(StoreFault fault) => fault switch
    {
        StoreFault.NotThere => NoInput,
        StoreFault.AlreadyThere => CannotCreate,
        StoreFault.Foreign or StoreFault.Damaged => BadData,
        StoreFault.InUse => InUse,
        StoreFault.NoRights => NoRights,
        _ => Disk,
    };
}

/// <summary>A command can't go on: what to say on standard error, and what to end with.</summary>
internal sealed class VerbException(int code, string message, Exception? because = null) : Exception(message, because)
{
    /// <summary>The exit code.</summary>
    public int Code { get; } = code;
}
