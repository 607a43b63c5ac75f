using System.Diagnostics;

namespace TrimOut.Tests;

/// <summary>Runs the real program, as a shell would, in a folder of its own.</summary>
public sealed class RunTrimOut : IDisposable
{
    internal static readonly string Program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "trimout.exe" : "trimout");

    public string Folder { get; } = Directory.CreateTempSubdirectory("trimout-").FullName;

    public string In(string name) => Path.Combine(Folder, name);

    /// <summary>Runs it with nothing on standard input and no terminal.</summary>
    public Ended Run(params string[] arguments) => RunWith("", arguments);

    public Ended RunWith(string input, params string[] arguments)
    {
        using var process = Start(arguments);
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Ended(process.ExitCode, output, error.Result);
    }

    public Process Start(params string[] arguments)
    {
        var start = new ProcessStartInfo(Program, arguments)
        {
            WorkingDirectory = Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["XDG_DATA_HOME"] = In("data");
        return Process.Start(start)!;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>How a run ended.</summary>
public sealed record Ended(int Code, string Output, string Error);
