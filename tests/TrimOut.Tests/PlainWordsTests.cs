using System.Text.RegularExpressions;
using TrimOut.Testing;

namespace TrimOut.Tests;

/// <summary>What is said is said in one English with the words of the trade. Names in code, in files and of ids are another matter.</summary>
public partial class PlainWordsTests
{
    // One spelling for all houses; and words that readers stumbled over, with what is said in their place in docs/changes.md.
    private static readonly string[] Retired =
    [
        @"colors?", @"gray", @"centers?", @"aluminum", @"neighbors?", @"labeled", @"leveling", @"molding", @"canceled", @"meters? of cable",
        @"held against", @"frozen", @"mend(s|ed|ing)?", @"least volts", @"tak(e|es|en) away", @"anew", @"reckoned", @"farther by", @"facts?",
    ];

    [Fact]
    public void NoSentenceOfTheProgramHasAWordThatWasRetired() => Assert.Empty(
        from path in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
        where !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin")
        from line in File.ReadLines(path).Index()
        where !line.Item.TrimStart().StartsWith("//", StringComparison.Ordinal)
        from said in Said(line.Item)
        where Sees(said)
        select $"{Path.GetFileName(path)}:{line.Index + 1}: {said}");

    [Theory]
    [InlineData("            Say($\"{name} was held against the sheet.\");", true)]
    [InlineData("            Say(\"2 facts are missing\");", true)]
    [InlineData("            Say($\"{fact.Name} is here\");", false)]
    [InlineData("            json.WriteString(\"mend\", text);", false)]
    public void AWordIsSeenInASentenceAndNotInANameOfAField(string line, bool seen) => Assert.Equal(seen, Said(line).Any(Sees));

    /// <summary>The sentences on a line of code: literals of more than one word, without what is filled in.</summary>
    private static IEnumerable<string> Said(string line) =>
        Literal().Matches(line).Select(m => Filled().Replace(m.Groups[1].Value, "")).Where(s => s.Trim().Contains(' ', StringComparison.Ordinal));

    private static bool Sees(string said) => Retired.Any(word => Regex.IsMatch(said, $@"\b{word}\b", RegexOptions.IgnoreCase));

    [GeneratedRegex("\"((?:[^\"\\\\]|\\\\.)*)\"")]
    private static partial Regex Literal();

    [GeneratedRegex(@"\{[^{}]*(\}|$)|^[^{}]*\}")]
    private static partial Regex Filled();
}
