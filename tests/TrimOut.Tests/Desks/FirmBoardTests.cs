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

    [Fact]
    public void HousesThatComeAreShownAndThoseThatGoAwayAreNot()
    {
        Directory.CreateDirectory(_run.In("houses"));
        var board = FirmBoard.Of([_run.In("houses")]);
        try
        {
            Assert.Empty(board.Rows);
            foreach (var name in new[] { "elm", "oak" })
                Assert.Equal(0, _run.Run("new", "houses/" + name, "--name", name, "--by", "Ada").Code);
            Shows(board, "elm", "oak");
            File.Move(_run.In("houses/elm.trimout"), _run.In("elm.trimout"));
            Shows(board, "oak");
        }
        finally
        {
            board.Stop();
        }
    }

    [Fact]
    public void AFileThatBecomesAHouseIsReadAgain()
    {
        File.WriteAllText(_run.In("elm.trimout"), "no house");
        var board = FirmBoard.Of([_run.In("elm.trimout")]);
        try
        {
            Assert.True(SpinWait.SpinUntil(() => board.Left == 0 && board.Rows[0].Why is not null, TimeSpan.FromSeconds(60)));
            File.Delete(_run.In("elm.trimout"));
            Assert.Equal(0, _run.Run("new", "elm", "--name", "elm", "--by", "Ada").Code);
            Assert.True(SpinWait.SpinUntil(() => board.Rows is [{ Why: null, Summary.Name: "elm" }], TimeSpan.FromSeconds(60)));
        }
        finally
        {
            board.Stop();
        }
    }

    private static void Shows(FirmBoard board, params string[] names) =>
        Assert.True(SpinWait.SpinUntil(() => board.Rows.Select(r => r.Summary?.Name).SequenceEqual(names), TimeSpan.FromSeconds(60)));
}
