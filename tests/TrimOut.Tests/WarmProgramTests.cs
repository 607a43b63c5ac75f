using TrimOut.Testing;

namespace TrimOut.Tests;

/// <summary>What is run in a program that is kept warm ends, says and leaves behind what a process of its own does, in any order.</summary>
public sealed class WarmProgramTests : IDisposable
{
    private static readonly string History = Path.Combine(Repository.Root, "sample-jobs", "orchard-cottage", "history.jsonl");

    private readonly RunTrimOut _warm = new();
    private readonly RunTrimOut _alone = new();

    public void Dispose()
    {
        _warm.Dispose();
        _alone.Dispose();
    }

    [ThisBuildFact]
    public void ItSaysWhatAProcessOfItsOwnSays()
    {
        (string Input, string[] Words)[] lines =
        [
            ("", ["help"]),
            ("", ["no-such-verb"]),
            ("", ["restore", "elm.trimout", History]),
            ("", ["check", "elm.trimout"]),
            ("", ["check", "elm.trimout"]),
            ("\ufeffW01\tnote\t\u201cs\u00fcd\u201d \u001b[31m\nW99\tnote\tx\n", ["set", "elm.trimout"]),
            ("", ["open", "elm.trimout"]),
            ("", ["check", "gone.trimout"]),
            ("", ["windows", "elm.trimout"]),
        ];
        foreach (var (input, words) in lines)
            Assert.Equal(Told(_alone, _alone.RunAlone(input, words)), Told(_warm, _warm.RunWith(input, words)));
    }

    /// <summary>Without the folder and the name of the process, the only two things in which they differ.</summary>
    private static Ended Told(RunTrimOut run, Ended ended)
    {
        return new Ended(ended.Code, Alike(ended.Output), Alike(ended.Error));

        string Alike(string text) => text.Replace(run.Folder, "FOLDER", StringComparison.Ordinal).Replace("TrimOut.Warm", "trimout", StringComparison.Ordinal);
    }
}
