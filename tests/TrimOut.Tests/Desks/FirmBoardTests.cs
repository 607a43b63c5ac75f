using TrimOut.Desks.Firm;

namespace TrimOut.Tests.Desks;

/// <summary>A list of houses that stays open shows what another program did to one of them.</summary>
public sealed class FirmBoardTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    [Fact]
    public void AHouseThatIsChangedMeanwhileIsReadAgain()
    {
        Assert.Equal(0, _run.Run("new", "elm", "--name", "Elm Street 12", "--by", "Ada").Code);
        var board = FirmBoard.Of([_run.In("elm.trimout")]);
        try
        {
            Assert.True(SpinWait.SpinUntil(() => board.Left == 0, TimeSpan.FromSeconds(60)));
            Assert.Null(board.Rows[0].Why);
            Assert.Empty(board.Rows[0].Summary!.Visits);
            Assert.Equal(0, _run.RunWith("visit\tnew\t2026-09-07 Hang\n", "set", "elm.trimout").Code);
            Assert.True(SpinWait.SpinUntil(() => board.Rows[0].Summary!.Visits.Length == 1, TimeSpan.FromSeconds(60)));
        }
        finally
        {
            board.Stop();
        }
        Assert.False(board.IsWatched);
    }
}
