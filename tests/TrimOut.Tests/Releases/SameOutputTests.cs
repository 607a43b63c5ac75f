using System.Diagnostics;
using TrimOut.Testing;

namespace TrimOut.Tests.Releases;

/// <summary>Another build of the program says and writes what the one beside the tests does, to the byte.</summary>
public sealed class SameOutputTests : IDisposable
{
    private static readonly string Beside = Path.Combine(AppContext.BaseDirectory, "trimout");

    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-same-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [OtherBuildFact]
    public void EveryVerbThatOnlyLooksSaysTheSameOfEverySample()
    {
        foreach (var sample in SampleHouse.Names)
        {
            var house = Path.Combine(Repository.Root, "sample-jobs", sample);
            string[][] runs = [["check", house], ["check", "--json", house], ["history", house], ["windows", house], ["parts", house], ["people", house],
                ["service", house, "--date", "2026-09-30"],
                ["kit", house], ["conflicts", house], ["compare", house, house], ["paper", house, "binder", "--show-template"]];
            Assert.All(runs, run => Assert.Equal(Ran(Beside, run), Ran(RunTrimOut.Elsewhere!, run)));
        }
        string[][] others = [["help"], ["help", "--man"], ["help", "papers"], ["set", "--details", "x"], ["what-if", "62 ft", "16 AWG", "1", "--supply", "21",
            "--least", "18"], ["completion", "zsh"], ["frobnicate"], ["check", "none"]];
        Assert.All(others, run => Assert.Equal(Ran(Beside, run), Ran(RunTrimOut.Elsewhere!, run)));
    }

    [OtherBuildFact]
    public void EveryPaperOfEverySampleInEveryLanguageIsTheSame()
    {
        File.WriteAllText(Path.Combine(_folder, "own.md"), "# {{house}}\n\n{{#if everything}}\n{{findings}}\n{{else}}\nNothing.\n{{/if}}\n\n{{panels}}\n");
        foreach (var sample in SampleHouse.Names)
        {
            var house = Path.Combine(Repository.Root, "sample-jobs", sample);
            foreach (var more in new string[][] { [], ["--language", "de"], ["--language", "es"], ["--owner-only"] })
                Written(sample, ["papers", house, "--date", "2026-09-30", .. more]);
            Written(sample, ["binder", house, "--date", "2026-09-30", "--template", Path.Combine(_folder, "own.md")]);
        }
    }

    private void Written(string sample, string[] arguments)
    {
        var (one, other) = (Path.Combine(_folder, "one"), Path.Combine(_folder, "other"));
        Assert.Equal(0, Ran(Beside, [.. arguments, "--out", one, "--overwrite"]).Code);
        Assert.Equal(0, Ran(RunTrimOut.Elsewhere!, [.. arguments, "--out", other, "--overwrite"]).Code);
        var files = Directory.GetFiles(one, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(one, f)).Order().ToList();
        Assert.Equal(files, Directory.GetFiles(other, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(other, f)).Order());
        Assert.NotEmpty(files);
        Assert.All(files, f => Assert.True(File.ReadAllBytes(Path.Combine(one, f)).AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(other, f))),
            $"{sample}: {f}"));
        Directory.Delete(one, recursive: true);
        Directory.Delete(other, recursive: true);
    }

    private (int Code, string Output, string Error) Ran(string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        { WorkingDirectory = _folder, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["XDG_DATA_HOME"] = Path.Combine(_folder, "data");
        using var run = Process.Start(start)!;
        run.StandardInput.Close();
        var error = run.StandardError.ReadToEndAsync();
        var output = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return (run.ExitCode, output, error.Result);
    }
}
