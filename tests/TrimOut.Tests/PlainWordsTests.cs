using System.Text.RegularExpressions;
using TrimOut.Testing;

namespace TrimOut.Tests;

/// <summary>What is said is said in one English with the words of the trade. Names in code, in files and of ids are another matter.</summary>
public partial class PlainWordsTests
{
    // One spelling for all houses, that of the trade's own words here: drywall, jamb, breaker, inch.
    private static readonly string[] OtherSpelling =
    [
        @"colou?r(?<=our)\w*", @"grey", @"centre[sd]?", @"aluminium", @"neighbour\w*", @"labell(ed|ing)", @"levell(ed|ing)", @"mouldings?", @"cancelled",
        @"\w*metres?", @"licences?", @"motoris\w+", @"judgements?", @"plasterboard", @"reveals?",
        @"sockets?", @"(recogn|organ|real|minim)is(e|ed|es|ing|ation)",
    ];

    // What people type in either spelling, and the sort of file that programs talk over, which is no outlet in a wall.
    private static readonly string[] Others = ["no licence", "a socket"];

    // Words that readers stumbled over, with what is said in their place in docs/changes.md.
    private static readonly string[] Retired =
    [
        .. OtherSpelling,
        @"held against", @"frozen", @"mend(s|ed|ing)?", @"least volts", @"tak(e|es|en) away", @"anew", @"reckoned", @"farther by", @"facts?",
    ];

    [Fact]
    public void NoSentenceOfTheProgramHasAWordThatWasRetired() => Assert.Empty(
        from path in Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
        where !path.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin")
        from line in File.ReadLines(path).Index()
        where !line.Item.TrimStart().StartsWith("//", StringComparison.Ordinal)
        from said in Said(line.Item)
        where Sees(said) && !Others.Contains(said)
        select $"{Path.GetFileName(path)}:{line.Index + 1}: {said}");

    /// <summary>A detail, a check or a file keeps the name that it has in old houses: such names stand in backticks or have hyphens.</summary>
    [Fact]
    public void NoPageAndNoTemplateHasTheOtherSpelling() => Assert.Empty(
        from path in Pages()
        from line in File.ReadLines(path).Index()
        let said = Code().Replace(line.Item, "")
        where !said.Contains("pipe", StringComparison.OrdinalIgnoreCase)
        from word in OtherSpelling
        where Regex.IsMatch(said, $@"(?<![\w-]){word}(?![\w-])", RegexOptions.IgnoreCase)
        select $"{Path.GetFileName(path)}:{line.Index + 1}: {said}");

    [Theory]
    [InlineData("the **colour** of it", true)]
    [InlineData("2 metres of it", true)]
    [InlineData("`colour` and centre-support, a meter and a color", false)]
    public void TheOtherSpellingIsSeenInWordsAndNotInNames(string text, bool seen) => Assert.Equal(seen,
        OtherSpelling.Any(word => Regex.IsMatch(Code().Replace(text, ""), $@"(?<![\w-]){word}(?![\w-])", RegexOptions.IgnoreCase)));

    private static IEnumerable<string> Pages() =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories),
        Path.Combine(Repository.Root, "README.md"),
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "sample-jobs"), "README.md", SearchOption.AllDirectories),
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src", "TrimOut.Papers", "Templates"), "*.txt"),
    ];

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

    [GeneratedRegex("`[^`]*`|\\]\\([^)]*\\)")]
    private static partial Regex Code();

    [GeneratedRegex("\"((?:[^\"\\\\]|\\\\.)*)\"")]
    private static partial Regex Literal();

    [GeneratedRegex(@"\{[^{}]*(\}|$)|^[^{}]*\}")]
    private static partial Regex Filled();
}
