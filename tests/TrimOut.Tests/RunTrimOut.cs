using System.Diagnostics;

namespace TrimOut.Tests;

/// <summary>
/// Runs the real program, as a shell would, in a folder of its own. TRIMOUT_PROGRAM is the path of another build of it, such as the native one; the one
/// beside the tests when unset, which is kept warm for what is only run and read.
/// </summary>
public sealed class RunTrimOut : IDisposable
{
    /// <summary>Another build of the program, which all tests that run it are to run; null for the one beside the tests.</summary>
    internal static readonly string? Elsewhere = System.Environment.GetEnvironmentVariable("TRIMOUT_PROGRAM") is { Length: > 0 } path
        ? Path.GetFullPath(path) : null;

    internal static readonly string Program = Elsewhere ?? Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "trimout.exe" : "trimout");

    public string Folder { get; } = Directory.CreateTempSubdirectory("trimout-").FullName;

    private string Data => In("data");

    /// <summary>What stands otherwise in the environment of the runs.</summary>
    public Dictionary<string, string> Environment { get; } = [];

    public string In(string name) => Path.Combine(Folder, name);

    /// <summary>Runs it with nothing on standard input and no terminal.</summary>
    public Ended Run(params string[] arguments) => RunWith("", arguments);

    public Ended RunWith(string input, params string[] arguments) =>
        Elsewhere is null && Environment.Count == 0 ? WarmProgram.Run(Folder, Data, input, arguments) : RunAlone(input, arguments);

    /// <summary>Runs it as a process of its own, also where a warm one waits: for what the process itself has to say.</summary>
    public Ended RunAlone(string input, params string[] arguments)
    {
        using var process = Start(arguments);
        return End(process, input);
    }

    /// <summary>Runs it as somebody whom the rights of files hold back, also where the tests are run by the machine's administrator. Linux only.</summary>
    public Ended RunHeldBack(params string[] arguments)
    {
        const string overriding = "-dac_override,-dac_read_search";
        using var process = !System.Environment.IsPrivilegedProcess ? Start(arguments)
            : Start("setpriv", ["--bounding-set", overriding, "--inh-caps", overriding, Program, .. arguments]);
        return End(process, "");
    }

    /// <summary>Runs another program as the one of TrimOut is run.</summary>
    public Ended RunOther(string program, params string[] arguments)
    {
        using var process = Start(program, arguments);
        return End(process, "");
    }

    private static Ended End(Process process, string input)
    {
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended without reading all of it.
        }
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Ended(process.ExitCode, output, error.Result);
    }

    public Process Start(params string[] arguments) => Start(Program, arguments);

    private Process Start(string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["XDG_DATA_HOME"] = Data;
        foreach (var (name, value) in Environment)
            start.Environment[name] = value;
        return Process.Start(start)!;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>How a run ended.</summary>
public sealed record Ended(int Code, string Output, string Error);

/// <summary>A test that is for another build of the program than the one beside the tests.</summary>
public sealed class OtherBuildFactAttribute : FactAttribute
{
    public OtherBuildFactAttribute() => Skip = RunTrimOut.Elsewhere is not null ? null! : "TRIMOUT_PROGRAM names no other build of the program";
}

/// <summary>A test that sets something inside the program, and so can only be of the one that runs in the tests.</summary>
public sealed class ThisBuildFactAttribute : FactAttribute
{
    public ThisBuildFactAttribute() => Skip = RunTrimOut.Elsewhere is null ? null! : "it sets something inside the program, and TRIMOUT_PROGRAM is another";
}
