using System.Diagnostics;

namespace TrimOut.Tests.Releases;

/// <summary>
/// A build as it is unpacked on a machine that has nothing: a root of its own (<c>unshare</c>, <c>chroot</c>) with the build, the system's libraries that it
/// is linked against, and what the kernel says of processes; neither .NET nor a shell, no users, no settings.
/// </summary>
public sealed class EmptyRootTests : IDisposable
{
    private const string Enter = "mount --rbind /proc \"$0/proc\" && exec chroot \"$0\" \"$@\"";

    private readonly string _root = Directory.CreateTempSubdirectory("trimout-root-").FullName;

    public EmptyRootTests()
    {
        if (RunTrimOut.Elsewhere is not { } program)
            return;
        var build = Path.GetDirectoryName(program)!;
        foreach (var file in Directory.GetFiles(build, "*", SearchOption.AllDirectories))
            CopyTo(file, Path.Combine(_root, "opt", "trimout", Path.GetRelativePath(build, file)));
        var parts = Directory.GetFiles(build, "*.so").Prepend(program);
        foreach (var library in parts.SelectMany(p => Output("ldd", p).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Where(w => w[0] == '/'))
        {
            if (!library.StartsWith(build, StringComparison.Ordinal))
                CopyTo(library, _root + library);
        }
        Directory.CreateDirectory(Path.Combine(_root, "tmp"));
        Directory.CreateDirectory(Path.Combine(_root, "proc"));
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [OtherBuildFact]
    public void TheFirstCommandsAfterUnpackingNeedNothingElse()
    {
        Assert.Empty(Directory.GetFiles(_root, "*dotnet*", SearchOption.AllDirectories));
        Assert.Matches(@"^\d+\.\d+\.\d+", Run(0, "--version"));
        Assert.Contains("completion", Run(0, "help"), StringComparison.Ordinal);
        var sample = "/opt/trimout/sample-jobs/ridge-house";
        var findings = Run(1, "check", sample);
        Assert.Contains("stop    W", findings, StringComparison.Ordinal);
        Run(0, "new", "/tmp/elm", "--by", "Ash");
        Run(0, "papers", sample, "--out", "/tmp/papers", "--date", "2026-09-30");
        Assert.InRange(Directory.GetFiles(Path.Combine(_root, "tmp", "papers"), "*.html").Length, 10, 100);
        Assert.Contains("\"add\"", Run(0, "history", "/tmp/elm.trimout"), StringComparison.Ordinal);
    }

    [OtherBuildFact]
    public void TheScreensComeUpInIt()
    {
        var line = $"stty rows 24 cols 80; exec unshare -rm sh -c '{Enter}' {_root} " +
            "/opt/trimout/trimout open /opt/trimout/sample-jobs/ridge-house --by Ash";
        var start = new ProcessStartInfo("script", ["-qfec", line, "/dev/null"]) { RedirectStandardInput = true, RedirectStandardOutput = true };
        start.Environment["TERM"] = "xterm";
        start.Environment["XDG_DATA_HOME"] = "/tmp/data";
        using var run = Process.Start(start)!;
        var seen = "";
        var buffer = new char[4096];
        while (!seen.Contains("Living room", StringComparison.Ordinal) && run.StandardOutput.Read(buffer) is > 0 and var count)
            seen += new string(buffer, 0, count);
        Assert.Contains("Living room", seen, StringComparison.Ordinal);
        run.StandardInput.Write("qq");
        run.StandardInput.Flush();
        run.StandardOutput.ReadToEnd();
        Assert.True(run.WaitForExit(TimeSpan.FromSeconds(20)));
        Assert.Equal(0, run.ExitCode);
    }

    private string Run(int code, params string[] arguments)
    {
        var start = new ProcessStartInfo("unshare", ["-rm", "sh", "-c", Enter, _root, "/opt/trimout/trimout", .. arguments])
        { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment.Clear();
        start.Environment["PATH"] = "/usr/sbin:/usr/bin:/sbin:/bin";
        start.Environment["XDG_DATA_HOME"] = "/tmp/data";
        using var run = Process.Start(start)!;
        var error = run.StandardError.ReadToEndAsync();
        var output = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        Assert.True(code == run.ExitCode, $"{string.Join(' ', arguments)}: {run.ExitCode} {error.Result}");
        return output;
    }

    private static string Output(string command, params string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        return run.StandardOutput.ReadToEnd();
    }

    private static void CopyTo(string file, string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.Copy(file, to, overwrite: true);
    }
}
