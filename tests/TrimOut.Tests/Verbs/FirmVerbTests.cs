using System.Runtime.Versioning;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Verbs;

/// <summary>
/// All houses of a folder, by the summaries that are kept beside them; a stale or damaged one is made anew, and one bad house keeps none back.
/// </summary>
public sealed class FirmVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    private void Begin(string file, string name)
    {
        Directory.CreateDirectory(_run.In("houses"));
        Assert.Equal(0, _run.Run("new", $"houses/{file}", "--name", name, "--by", "Ada").Code);
    }

    private static string[] Lines(string text) => text.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private string Summary(string file) => _run.In(Path.Combine("houses", file + ".trimout.summary"));

    [Fact]
    public void EveryHouseIsListedAndOpenedAgainOnlyWhenItChanged()
    {
        Begin("elm", "Elm Street 12");
        Begin("oak", "Oak Lane 3");
        var first = _run.Run("firm", "houses");
        Assert.Equal((0, "2 houses to be read."), (first.Code, first.Error.Trim()));
        Assert.Equal(["Elm Street 12", "Oak Lane 3"], Lines(first.Output).Select(l => l.Split('\t')[2]));
        var again = _run.Run("firm", "houses");
        Assert.Equal((first.Output, ""), (again.Output, again.Error));
        Assert.Equal("1\n2\n", _run.RunWith("contact\tnew\tAsh\nvisit\tnew\t2026-09-07 Hang @Ash\n", "set", "houses/elm.trimout")
            .Output.ReplaceLineEndings("\n"));
        var stale = _run.Run("firm", "houses", "--kept", "--list", "due", "--date", "2026-09-01");
        Assert.Equal(("", "1 house changed since the summary was made."), (stale.Output, stale.Error.Trim()));
        var due = _run.Run("firm", "houses", "--list", "due", "--date", "2026-09-01");
        Assert.Contains("due\t", due.Output);
        Assert.Contains("Elm Street 12\t2026-09-07 visit: Hang", due.Output);
        Assert.Contains("1 house to be read.", due.Error);
        Assert.DoesNotContain("visit: Hang", _run.Run("firm", "houses", "--list", "due", "--date", "2026-08-31").Output);
        Assert.Contains("2026-09-07 visit: Hang (late)", _run.Run("firm", "houses", "--list", "due", "--date", "2026-09-08").Output);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("{\"program\":\"x\",\"stamp\":\"x\",\"summary\":{\"name\":\"Other\"}}")]
    [InlineData("\u0000\u0001 no summary")]
    public void ASummaryThatIsDamagedIsMadeAnew(string damaged)
    {
        Begin("elm", "Elm Street 12");
        var first = _run.Run("firm", "houses");
        File.WriteAllText(Summary("elm"), damaged);
        var again = _run.Run("firm", "houses");
        Assert.Equal((first.Output, "1 house to be read."), (again.Output, again.Error.Trim()));
        Assert.Equal("", _run.Run("firm", "houses").Error);
    }

    [Fact]
    public void AHouseThatCanNotBeOpenedIsNamedAndTheOthersGoOn()
    {
        Begin("elm", "Elm Street 12");
        File.WriteAllText(_run.In("houses/bad.trimout"), "no house");
        var listed = _run.Run("firm", "houses");
        Assert.Equal(2, listed.Code);
        Assert.Contains("bad.trimout", listed.Error);
        Assert.Equal(["Elm Street 12"], Lines(listed.Output).Select(l => l.Split('\t')[2]));
    }

    [Fact]
    public void AnotherHouseUnderTheSameNameIsNotTakenForTheOneBefore()
    {
        Begin("elm", "Elm Street 12");
        Begin("oak", "Oak Lane 3");
        _run.Run("firm", "houses");
        var time = File.GetLastWriteTimeUtc(_run.In("houses/elm.trimout"));
        File.Move(_run.In("houses/oak.trimout"), _run.In("houses/elm.trimout"), overwrite: true);
        File.SetLastWriteTimeUtc(_run.In("houses/elm.trimout"), time);
        Assert.Equal(["Oak Lane 3"], Lines(_run.Run("firm", "houses").Output).Select(l => l.Split('\t')[2]));
    }

    [Fact]
    public void AFolderThatIsNotThereAndAListThatThereIsNotAreRefused()
    {
        Assert.Equal(66, _run.Run("firm", "nowhere").Code);
        Begin("elm", "Elm Street 12");
        var list = _run.Run("firm", "houses", "--list", "everything");
        Assert.Equal(64, list.Code);
        Assert.Contains("stops, conflicts, waiting, due, orders, boxes, warranties", list.Error);
    }

    [Fact]
    public void CopiesOfOneHouseCountOnceByTheOneWithMoreChangesAndTheOtherIsNamed()
    {
        Begin("elm", "Elm Street 12");
        File.Copy(_run.In("houses/elm.trimout"), _run.In("houses/a-copy.trimout"));
        Assert.Equal(0, _run.RunWith("visit\tnew\t2026-09-07 Hang\n", "set", "houses/elm.trimout").Code);
        var listed = _run.Run("firm", "houses");
        Assert.EndsWith("elm.trimout", Assert.Single(Lines(listed.Output)).Split('\t')[1]);
        Assert.Matches("a-copy.trimout: a copy of .*elm.trimout", listed.Error);
        var paper = _run.Run("firm-paper", "week-plan", "houses", "--date", "2026-09-07");
        Assert.Equal(0, paper.Code);
        var text = File.ReadAllText(_run.In("week-plan-2026-09-07.md"));
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(text, "2026-09-07 .*Elm Street 12"));
        Assert.Contains("Copies of these houses, counted once: a-copy.trimout.", text);
    }

    [Fact]
    public void AHouseOfWhichNothingIsKeptIsNamedAndNotPassedOver()
    {
        Begin("elm", "Elm Street 12");
        var kept = _run.Run("firm", "houses", "--kept");
        Assert.Equal((2, ""), (kept.Code, kept.Output));
        Assert.Contains("elm.trimout: nothing is kept of it", kept.Error);
    }

    [LinuxFact]
    [UnsupportedOSPlatform("windows")]
    public void AHouseOrAFolderWithoutRightsIsNamedAndTheOthersGoOn()
    {
        Begin("elm", "Elm Street 12");
        Begin("oak", "Oak Lane 3");
        _run.Run("firm", "houses");
        File.SetUnixFileMode(_run.In("houses/oak.trimout"), UnixFileMode.None);
        foreach (var listed in new[] { _run.RunHeldBack("firm", "houses"), _run.RunHeldBack("firm", "houses", "--kept") })
        {
            Assert.Equal(2, listed.Code);
            Assert.Contains("oak.trimout", listed.Error);
            Assert.Equal(["", "stale"], Lines(listed.Output).Select(l => l.Split('\t')[^1]));
        }
        File.SetUnixFileMode(_run.In("houses"), UnixFileMode.None);
        var closed = _run.RunHeldBack("firm", "houses");
        File.SetUnixFileMode(_run.In("houses"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Assert.Equal((77, ""), (closed.Code, closed.Output));
        Assert.Contains("houses", closed.Error);
    }

    [Fact]
    public void WhoIsInTwoHousesOnOneDayIsSaidAtTheVisit()
    {
        Begin("elm", "Elm Street 12");
        Begin("oak", "Oak Lane 3");
        Assert.Equal(0, _run.RunWith("contact\tnew\tAsh\nvisit\tnew\t2026-09-07 08:00-12:00 Hang @Ash\n", "set", "houses/elm.trimout").Code);
        Assert.Equal(0, _run.RunWith("contact\tnew\tash\nvisit\tnew\t2026-09-07 13:00 Pair @ash\n", "set", "houses/oak.trimout").Code);
        var due = Lines(_run.Run("firm", "houses", "--list", "due", "--date", "2026-09-07").Output);
        Assert.Equal(["2026-09-07 visit: Hang (Ash also at Oak Lane 3 13:00)", "2026-09-07 visit: Pair (ash also at Elm Street 12 08:00)"],
            due.Select(l => l.Split('\t')[^1]).Where(l => l.Contains("visit", StringComparison.Ordinal)));
    }

    [Fact]
    public void AFolderOfOnesOwnThatIsNotThereYetHasNoHouse()
    {
        var none = _run.Run("firm");
        Assert.Equal((0, ""), (none.Code, none.Output));
        Assert.Contains("There is no house in ", none.Error);
        Assert.DoesNotContain("Could not find", none.Error);
    }
}
