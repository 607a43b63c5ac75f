using System.Diagnostics;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Tests.Files;

public sealed class ShellWordTests
{
    [Theory]
    [InlineData("/srv/elm.trimout", "/srv/elm.trimout")]
    [InlineData("/srv/my jobs/elm.trimout", "'/srv/my jobs/elm.trimout'")]
    [InlineData("it's", "'it'\\''s'")]
    public void APathIsQuotedOnlyWhereAShellWouldTakeItApart(string path, string word)
    {
        if (!OperatingSystem.IsWindows())
            Assert.Equal(word, ShellWord.Of(path));
    }

    [Theory]
    [InlineData("a b")]
    [InlineData("$HOME `x` \"q\" 'p' \\ ! ~ # & ; * ? [a] {b} (c) <d> | e\tf")]
    [InlineData("")]
    public void AShellReadsTheSamePath(string path)
    {
        if (OperatingSystem.IsWindows())
            return;
        using var shell = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", $"printf %s {ShellWord.Of(path)}"]) { RedirectStandardOutput = true })!;
        Assert.Equal(path, shell.StandardOutput.ReadToEnd());
    }
}
