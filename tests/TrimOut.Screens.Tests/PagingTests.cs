using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Tests;

public class PagingTests
{
    [Theory]
    [InlineData(5, 0, "")]
    [InlineData(6, 0, "2 more below")]
    [InlineData(30, 0, "26 more below")]
    [InlineData(30, 9, "18 more below, 8 above")]
    [InlineData(30, 29, "26 more above")]
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

    public static TheoryData<int, int> Lists()
    {
        var data = new TheoryData<int, int>();
        foreach (var height in (int[])[5, 6, 8, 9, 12, 13, 20, 36])
        {
            foreach (var count in (int[])[1, 4, 5, 7, 13, 14, 40, 41, 97])
                data.Add(height, count);
        }
        return data;
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public void TheChosenRowIsNeverAtTheVeryEdgeWhileMoreFollowsAndNoPageIsHalfEmpty(int height, int count)
    {
        for (var selected = 0; selected < count; selected++)
        {
            var rows = Paging.Rows(new Frame(30, height).All, count, selected);
            Assert.Contains(rows, r => r.At == selected);
            Assert.Equal(Math.Min(count, count > height ? height - 1 : height), rows.Count);
            if (rows[0].At > 0)
                Assert.NotEqual(selected, rows[0].At);
            if (rows[^1].At < count - 1)
                Assert.NotEqual(selected, rows[^1].At);
        }
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public void MostMovesStayOnThePageSoThatTwoRowsChangeOnly(int height, int count)
    {
        var turns = Enumerable.Range(1, Math.Max(0, count - 1)).Count(at => Paging.Top(at, height, count) != Paging.Top(at - 1, height, count));
        Assert.InRange(turns, 0, count / Math.Max(1, height - 5) + 1);
    }
}
