using System.Diagnostics;

namespace TrimOut.Tests.Verbs;

public class ByInBytesTests
{
    /// <summary>A terminal that is set to another encoding sends bytes that are no UTF-8; the history would keep a sign for "lost" for a letter.</summary>
    [Fact]
    public void ANameThatIsNoUtf8IsRefusedAndNothingIsMade()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var run = new RunTrimOut();
        var start = new ProcessStartInfo("/bin/sh", ["-c", "exec \"$0\" new house.trimout --by \"$(printf 'J\\366rg')\"", RunTrimOut.Program])
        {
            WorkingDirectory = run.Folder,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        start.Environment["XDG_DATA_HOME"] = run.In("data");
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Contains("no UTF-8", error, StringComparison.Ordinal);
        Assert.NotEqual(0, process.ExitCode);
        Assert.False(File.Exists(run.In("house.trimout")));
    }
}
