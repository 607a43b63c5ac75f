using System.Diagnostics;
using TrimOut.Shells;
using TrimOut.Tests.Campaign;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Shells;

[Collection(nameof(OneProcess))]
public sealed class CompletionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-").FullName;

    public static TheoryData<string> Scripts => ["bash", "zsh", "fish", "powershell"];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Scripts))]
    public void EveryVerbAndEveryOptionIsInTheScript(string shell)
    {
        var script = Script(shell);
        foreach (var verb in VerbTable.Of(CommandLine.Build()))
        {
            Assert.Contains(verb.Name, script, StringComparison.Ordinal);
            Assert.All(verb.Options, o => Assert.Contains(shell == "fish" ? o.Name.TrimStart('-') : o.Name, script, StringComparison.Ordinal));
        }
        Assert.Equal("A4, letter", string.Join(", ", VerbTable.Of(CommandLine.Build()).Single(v => v.Name == "papers").Options
            .Single(o => o.Name == "--size").Value!.Words));
    }

    [LinuxTheory]
    [InlineData("che", "check")]
    [InlineData("ki", "kit kit-out kit-in")]
    [InlineData("paper x ca", "card")]
    [InlineData("papers x --size ", "A4 letter")]
    [InlineData("papers x --size l", "letter")]
    [InlineData("check --a", "--all-made")]
    [InlineData("completion ", "bash fish powershell zsh")]
    [InlineData("help what", "what-if")]
    [InlineData("new x --units ", "inches mm")]
    [InlineData("binder x --date ", "")]
    [InlineData("check my", "my house.trimout")]
    public void BashCompletesWhatIsTyped(string typed, string completed)
    {
        File.WriteAllText(Path.Combine(_folder, "script"), Script("bash"));
        File.WriteAllText(Path.Combine(_folder, "my house.trimout"), "");
        var words = string.Join(' ', $"trimout {typed}".Split(' ').Select(w => $"'{w}'"));
        var answer = Ran("bash", "-c", $"source ./script; COMP_WORDS=({words}); COMP_CWORD=$(( ${{#COMP_WORDS[@]}} - 1 )); _trimout; " +
            "printf '%s\\n' \"${COMPREPLY[@]}\"");
        Assert.Equal(completed.Split(' ').Order(StringComparer.Ordinal), string.Join(' ', answer.Output.TrimEnd('\n').Split('\n')).Split(' ')
            .Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void AShellThatIsHereReadsItsScript(string shell)
    {
        var script = Path.Combine(_folder, "script");
        File.WriteAllText(script, Script(shell));
        if (!(Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, shell))))
            return;
        Assert.Equal((0, "", ""), Ran(shell, "-n", script));
        if (shell == "fish")
        {
            Assert.StartsWith("--size\t", Ran("fish", "-c", $"source {script}; complete -C 'trimout papers x --siz'").Output, StringComparison.Ordinal);
            Assert.StartsWith("check\t", Ran("fish", "-c", $"source {script}; complete -C 'trimout che'").Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void AShellThatIsNotKnownIsRefused() => Assert.Equal(ExitCode.Usage, VerbRun.Run("completion", "tcsh").Code);

    private static string Script(string shell)
    {
        var ended = VerbRun.Run("completion", shell);
        Assert.Equal(0, ended.Code);
        Assert.DoesNotContain('\r', ended.Output);
        return ended.Output;
    }

    private (int Code, string Output, string Error) Ran(string command, params string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(command, arguments)
        { WorkingDirectory = _folder, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var error = run.StandardError.ReadToEndAsync();
        var output = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return (run.ExitCode, output, error.Result);
    }
}
