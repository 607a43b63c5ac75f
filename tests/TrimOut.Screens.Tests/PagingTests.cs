using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Tests;

public class PagingTests
{
    [Theory]
    [InlineData(5, 0, "")]
    [InlineData(6, 0, "2 more below")]
    [InlineData(30, 0, "26 more below")]
    [InlineData(30, 9, "18 more below, 8 above")]
    [InlineData(30, 29, "28 more above")]
    public void AListThatGoesOnBeyondItsEdgeSaysHowFar(int count, int selected, string says)
    {
        var frame = new Frame(30, 5);
        var rows = Paging.Rows(frame.All, count, selected);
        Assert.Contains(rows, r => r.At == selected);
        Assert.Equal(says, frame.ToText().Split('\n')[4].Trim());
        Assert.DoesNotContain(rows, r => says.Length > 0 && r.Y == 4);
    }

    [Fact]
    public void AnEmptyListHasNoRows() => Assert.Empty(Paging.Rows(new Frame(10, 3).All, 0, 0));
}
