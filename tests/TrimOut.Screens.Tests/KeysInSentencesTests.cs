using System.Text.RegularExpressions;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>A sentence that says what a key does names a key that does something there.</summary>
public partial class KeysInSentencesTests
{
    private static readonly string Screens = Path.Combine(Repository.Root, "src", "TrimOut.Screens");

    private static readonly Lazy<HashSet<string>> Common = new(() =>
        [.. CommonKeys.For(new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe)).SelectMany(k => k.Strokes)]);

    private static readonly Lazy<ILookup<string, string>> ByFolder = new(() => KeyTableTests.EveryScreen()
        .SelectMany(s => s.Keys.SelectMany(k => k.Strokes).Select(stroke => (Folder: s.GetType().Namespace!.Split('.')[^1], Stroke: stroke)))
        .ToLookup(k => k.Folder, k => k.Stroke));

    // What is said of the job sheet stands on other screens too.
    [Fact]
    public void EverySentenceNamesAKeyOfItsScreenOrOneThatEveryScreenHas() => Assert.Empty(
        from path in Directory.EnumerateFiles(Screens, "*.cs", SearchOption.AllDirectories)
        let folder = Path.GetRelativePath(Screens, path).Split(Path.DirectorySeparatorChar)[0]
        where ByFolder.Value.Contains(folder)
        from line in File.ReadLines(path)
        where !line.TrimStart().StartsWith("//", StringComparison.Ordinal)
        from key in Named(line)
        where !Common.Value.Contains(key) && !ByFolder.Value[folder].Contains(key) && !ByFolder.Value["JobSheet"].Contains(key)
        select $"{Path.GetFileName(path)}: {key} in {line.Trim()}");

    [Fact]
    public void AKeyIsSeenInASentenceAndAnArticleIsNone()
    {
        Assert.Equal(["t"], Named("    Say(\"{said} t counts.\");"));
        Assert.Equal(["h", "N"], Named("    Say(\"No hub yet: h adds one, N adds another.\");"));
        Assert.Empty(Named("    Say(\"That is a mark, and a key.\");"));
    }

    private static IEnumerable<string> Named(string line) => Literal().Matches(line).SelectMany(l => Key().Matches(l.Value)).Select(m => m.Groups["key"].Value);

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literal();

    [GeneratedRegex(@"(?<![\w'@{])(?<key>[a-zA-Z%]) "
        + @"(adds|counts|keeps|takes|opens|brings|merges|goes|shows|lists|marks|walks|does|undoes|removes|lands|begins)\b")]
    private static partial Regex Key();
}
