using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.Tests;

public class CommandLineDocsTests
{
    private static string Page(string name) => File.ReadAllText(Path.Combine(Repository.Root, "docs", name));

    [Fact]
    public void EveryCommandIsOnThePage() =>
        Assert.All(CommandLine.Build().Subcommands, verb => Assert.Contains($"| `trimout {verb.Name}", Page("command-line.md")));

    [Fact]
    public void EveryExitCodeIsOnThePage() =>
        Assert.All(ExitCode.All, code => Assert.Contains($"| {code.Code} | {code.Meaning} |", Page("command-line.md")));

    [Fact]
    public void EveryFieldOfAScheduleIsOnThePage() =>
        Assert.All(ScheduleField.All, field => Assert.Matches($"\\| (\\w+, )?{field.Name}(, \\w+)? \\|", Page("import.md")));
}
