using Microsoft.Extensions.Time.Testing;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Several lines that are pasted into the line for new windows: each is taken in turn, and none is dropped without a word.</summary>
public class PastedLinesTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));

    private static TerminalUser At() => new(new TestDesk(Clock), new TestJob().Window("W01").Scribe);

    private static string Tags(TerminalUser user) => string.Join(' ', user.House.Windows.Select(w => w.Tag));

    [Fact]
    public void ThirtyLinesAreThirtyWindows()
    {
        using var user = At();
        user.Press("n").Paste(string.Join('\n', Enumerable.Range(2, 30).Select(n => $"W{n:00} roller left 30x40 @Kitchen")) + "\n");
        Assert.Equal(31, user.House.Windows.Length);
        Assert.Equal("W31", user.House.Windows.MaxBy(w => w.Item.Place)!.Tag);
        user.Sees("30 pasted lines taken, each saved by itself.");
    }

    [Fact]
    public void TheFirstLineThatIsRefusedStandsInTheFieldAndTheOthersWaitForIt()
    {
        using var user = At();
        user.Press("n").Paste("W02 30x40\r\nW01 30x40\r\nW04 30x40\r\nW05 30x40");
        Assert.Equal("W01 W02", Tags(user));
        user.Sees("2 pasted lines wait behind this one");
        user.Press("ctrl+u").Write("W03 30x40").Press("enter");
        Assert.Equal("W01 W02 W03 W04 W05", Tags(user));
    }

    [Fact]
    public void LinesThatAreLeftAreSaid()
    {
        using var user = At();
        user.Press("n").Paste("W01 30x40\nW02 30x40\nW03 30x40").Press("esc");
        Assert.Equal("W01", Tags(user));
        user.Sees("3 pasted lines were not taken.");
        user.Press("n").Type("W09 30x40");
        Assert.Equal("W01 W09", Tags(user));
    }
}
