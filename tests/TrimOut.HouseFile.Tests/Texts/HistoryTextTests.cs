using TrimOut.Core.Facts;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Texts;

public class HistoryTextTests
{
    private static string Text() =>
        HistoryText.Write(new TestJob().Window("W01").Say("W01", WindowFacts.Note, "„Ünusual” – 3'-9 1/2\" \\ {tab}").Scribe.Log);

    [Fact]
    public void AHistoryComesBackToTheLetter() => Assert.Equal(Text(), HistoryText.Write(HistoryText.Read(Text()).Value));

    [Fact]
    public void AByteOrderMarkAndWindowsLineEndsDoNoHarm() =>
        Assert.Equal(Text(), HistoryText.Write(HistoryText.Read("\ufeff" + Text().Replace("\n", "\r\n", StringComparison.Ordinal)).Value));

    [Fact]
    public void ABrokenLineIsNamed() => Assert.StartsWith("Line 2: The line is no change", HistoryText.Read(Text().Split('\n')[0] + "\n{\"v\":1,").Reason);

    [Fact]
    public void AnEmptyTextIsNoHistory() => Assert.False(HistoryText.Read("\n\n").Ok);

    [Fact]
    public void TwoChangesOfOneNameAreNotPickedFrom()
    {
        var line = Text().Split('\n')[0];
        Assert.Contains("twice with different contents",
            HistoryText.Read(line + "\n" + line.Replace("Test crew", "Somebody", StringComparison.Ordinal)).Reason);
    }
}
