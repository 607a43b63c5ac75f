using System.Globalization;
using System.Text;
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

    private static string Line(string device, int number) =>
        $$"""{"v":1,"id":"{{device}}:{{number}}","stamp":{{number}},"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[]}""" + "\n";

    [Fact]
    public void TheHistoriesOfTwoHousesAreNotOne() =>
        Assert.Contains("are the histories of two houses", HistoryText.Read(Line("a", 1) + Line("a", 2) + Line("b", 1) + Line("b", 2)).Reason);

    [Fact]
    public void TheHistoryOfOneHouseOnTwoLaptopsIsOne() =>
        Assert.True(HistoryText.Read(Line("a", 1) + Line("a", 2) + Line("b", 1).Replace("\"stamp\":1", "\"stamp\":3", StringComparison.Ordinal)).Ok);

    [Fact]
    public void AHistoryOfMoreChangesThanAreHeldInMemoryIsRefusedWithTheNumberAndTheReason()
    {
        var text = new StringBuilder();
        for (var n = 1; n <= HistoryText.MostChanges + 1; n++)
            text.Append(CultureInfo.InvariantCulture,
                $$"""{"v":1,"id":"a:{{n}}","stamp":{{n}},"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[]}""").Append('\n');
        var read = HistoryText.Read(text.ToString());
        Assert.StartsWith("Line 300001: it is one more than 300000 changes.", read.Reason, StringComparison.Ordinal);
        Assert.Contains("held in memory", read.Reason, StringComparison.Ordinal);
    }
}
