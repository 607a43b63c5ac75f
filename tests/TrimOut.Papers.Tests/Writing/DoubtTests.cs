using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Writing;

public class DoubtTests
{
    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void APaperOfAHouseWhoseLastSavesAreInDoubtSaysSoBelowItsTitle(string id)
    {
        var data = FinishedHouse.Data(new TestJob().Window("W01").Scribe.Log);
        var (sound, damaged) = (PaperList.Find(id)!.Write(data), PaperList.Find(id)!.Write(data with { InDoubt = 3 }));
        Assert.DoesNotContain("saves are missing", sound.Markdown, StringComparison.Ordinal);
        var lines = damaged.Markdown.Split('\n');
        Assert.StartsWith("# ", lines[0], StringComparison.Ordinal);
        Assert.Contains("at least 3 saves are missing here", string.Join(' ', lines[1..4]), StringComparison.Ordinal);
        Assert.Contains("at least 3 saves are missing here", damaged.ToHtml(), StringComparison.Ordinal);
    }
}
