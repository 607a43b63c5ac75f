using System.Diagnostics;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Terminals;

/// <summary>The program in the ways in which users get it, and a bare program in the same ways.</summary>
internal sealed class Builds(string folder)
{
    private static readonly string Root = Repository.Root;

    /// <summary>The bare program, as <c>dotnet build</c> makes it.</summary>
    public string BareBuilt()
    {
        Run("dotnet", "build", "tests/TrimOut.Bare", "-c", "Release", "-v", "quiet", "-o", In("bare"));
        return Path.Combine(In("bare"), "bare");
    }

    /// <summary>The bare program, compiled for this processor.</summary>
    public string BareNative()
    {
        Run("dotnet", "publish", "tests/TrimOut.Bare", "-p:PublishProfile=OnSite", "-v", "quiet", "-o", In("bare-native"));
        return Path.Combine(In("bare-native"), "bare");
    }

    /// <summary>The program, as <c>dotnet tool install</c> puts it there.</summary>
    public string Tool()
    {
        Run(Path.Combine(Root, ".build", "release"), In("package"), "tool");
        Run("dotnet", "tool", "install", "TrimOut", "--tool-path", In("tool"), "--source", In("package"));
        return Path.Combine(In("tool"), "trimout");
    }

    /// <summary>The program for the laptop on site.</summary>
    public string Native()
    {
        Run(Path.Combine(Root, ".build", "native"), In("native"));
        return Path.Combine(In("native"), "trimout");
    }

    private string In(string name) => Path.Combine(folder, name);

    private static void Run(string command, params string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(command, arguments) { WorkingDirectory = Root, RedirectStandardOutput = true })!;
        var said = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        if (run.ExitCode != 0)
            throw new InvalidOperationException($"{command} {string.Join(' ', arguments)} did not go: {said}");
    }
}
