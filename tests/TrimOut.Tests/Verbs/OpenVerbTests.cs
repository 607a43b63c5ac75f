namespace TrimOut.Tests.Verbs;

public sealed class OpenVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void WithoutATerminalNothingIsOpenedAndNothingIsMade()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        Directory.CreateDirectory(_run.In("sample"));
        File.WriteAllText(_run.In("sample/history.jsonl"), _run.Run("history", "elm.trimout").Output);
        var before = File.ReadAllBytes(_run.In("elm.trimout"));
        foreach (var arguments in new string[][] { [], ["open", "elm.trimout"], ["open", "sample"], ["open", "nothing.trimout"] })
        {
            var ended = _run.Run(arguments);
            Assert.Equal(69, ended.Code);
            Assert.Contains("need a terminal", ended.Error);
            Assert.Empty(ended.Output);
        }
        Assert.Equal(before, File.ReadAllBytes(_run.In("elm.trimout")));
        Assert.Equal(["elm.trimout"], Directory.GetFiles(_run.Folder).Select(f => Path.GetFileName(f)));
        Assert.False(Directory.Exists(_run.In("data")));
    }

    [Fact]
    public void AHouseWithoutAVerbIsToldHowItIsOpened()
    {
        var ended = _run.Run("my houses/elm.trimout");
        Assert.Equal(64, ended.Code);
        Assert.Contains("To open a house: trimout open 'my houses/elm.trimout'", ended.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("To open a house", _run.Run("nonsense").Error, StringComparison.Ordinal);
    }
}
