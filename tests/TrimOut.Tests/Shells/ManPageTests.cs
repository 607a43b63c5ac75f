using System.Diagnostics;
using TrimOut.Shells;
using TrimOut.Tests.Campaign;

namespace TrimOut.Tests.Shells;

[Collection(nameof(OneProcess))]
public class ManPageTests
{
    private static readonly string Page = VerbRun.Run("help", "--man").Output;

    [Fact]
    public void ThePageHasEveryVerbOptionAndExitCodeInTheWordsOfTheHelp()
    {
        static string Written(string text) => text.Replace("-", "\\-", StringComparison.Ordinal);
        foreach (var verb in CommandLine.Build().Subcommands)
        {
            Assert.Contains($".SS \"{Written($"trimout {verb.Name}")}", Page, StringComparison.Ordinal);
            Assert.Contains(Written(verb.Description!), Page, StringComparison.Ordinal);
            Assert.All(verb.Options, o => Assert.Contains(Written(o.Description!), Page, StringComparison.Ordinal));
        }
        Assert.All(ExitCode.All, c => Assert.Contains(Written(c.Meaning), Page, StringComparison.Ordinal));
        Assert.StartsWith($".TH TRIMOUT 1 \"\" \"TrimOut {ProgramVersion.Short}\"", Page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task GroffReadsItWithoutAWarning()
    {
        if (!File.Exists("/usr/bin/groff"))
            return;
        using var groff = Process.Start(new ProcessStartInfo("groff", ["-man", "-Tutf8", "-ww", "-P-cbou"])
        { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var (text, said) = (groff.StandardOutput.ReadToEndAsync(), groff.StandardError.ReadToEndAsync());
        groff.StandardInput.Write(Page);
        groff.StandardInput.Close();
        await groff.WaitForExitAsync();
        Assert.Equal("", await said);
        Assert.Contains("trimout check HOUSE", await text, StringComparison.Ordinal);
        Assert.Contains("--go-on", (await text).Replace('‐', '-'), StringComparison.Ordinal);
    }

    [Fact]
    public void TheVersionIsTheOneOfTheBuildWithTheCommit()
    {
        using var run = new RunTrimOut();
        var said = run.RunAlone("", "--version");
        Assert.Equal(0, said.Code);
        Assert.Matches(@"^\d+\.\d+\.\d+(\+[0-9a-f]{40})?\s*$", said.Output);
        if (RunTrimOut.Elsewhere is null)
            Assert.Equal(ProgramVersion.Whole, said.Output.Trim());
    }
}
