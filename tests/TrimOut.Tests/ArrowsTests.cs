using System.Reflection;

namespace TrimOut.Tests;

/// <summary>Who may know whom: the core knows nobody, files, papers and screens know only the core, the program knows all.</summary>
public class ArrowsTests
{
    [Theory]
    [InlineData("TrimOut.Core", "")]
    [InlineData("TrimOut.HouseFile", "TrimOut.Core")]
    [InlineData("TrimOut.Papers", "TrimOut.Core")]
    [InlineData("TrimOut.Screens", "TrimOut.Core")]
    [InlineData("TrimOut.Office", "TrimOut.Core")]
    [InlineData("trimout", "TrimOut.Core TrimOut.HouseFile TrimOut.Office TrimOut.Papers TrimOut.Screens")]
    public void APartKnowsOnlyWhatItMay(string part, string may) =>
        Assert.Subset(may.Split(' ').ToHashSet(), Known(part).Where(n => n.StartsWith("TrimOut", StringComparison.OrdinalIgnoreCase)).ToHashSet());

    [Theory]
    [InlineData("LiteDB", "TrimOut.HouseFile")]
    [InlineData("CsvHelper", "TrimOut.HouseFile")]
    [InlineData("Markdig", "TrimOut.Papers")]
    [InlineData("Npgsql", "TrimOut.Office")]
    [InlineData("Terminal.Gui", "TrimOut.Screens")]
    [InlineData("System.CommandLine", "trimout")]
    [InlineData("UglyToad.PdfPig", "trimout")]
    public void APackageIsKnownToOnePartOnly(string package, string part) =>
        Assert.Equal([part],
            ((string[])["TrimOut.Core", "TrimOut.HouseFile", "TrimOut.Office", "TrimOut.Papers", "TrimOut.Screens", "trimout"])
                .Where(p => Known(p).Contains(package)));

    private static HashSet<string> Known(string part) => [.. Assembly.Load(part).GetReferencedAssemblies().Select(a => a.Name!)];
}
