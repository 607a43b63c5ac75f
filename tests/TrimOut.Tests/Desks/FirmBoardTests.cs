using System.Runtime.Versioning;
using TrimOut.Desks.Firm;
using TrimOut.Screens.Firm;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Desks;

/// <summary>A list of houses that stays open shows what became of their files: one was changed, brought, taken away, may be read again.</summary>
public sealed class FirmBoardTests : IDisposable
{
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(60);

    private readonly RunTrimOut _run = new();
    private FirmBoard? _board;

    public FirmBoardTests() => Directory.CreateDirectory(_run.In("houses"));

    public void Dispose()
    {
        _board?.Stop();
        _run.Dispose();
    }

    private string House(string file) => _run.In(Path.Combine("houses", file + ".trimout"));

    private void Begin(string file, string name) => Assert.Equal(0, _run.Run("new", $"houses/{file}", "--name", name, "--by", "Ada").Code);

    private FirmBoard Look() => _board = FirmBoard.Of(() => FirmHouses.Find([_run.In("houses")]));

    private static void Until(FirmBoard board, Func<FirmHousesNow, bool> seen) =>
        Assert.True(SpinWait.SpinUntil(() => board.Now is { Left: 0 } now && seen(now), Soon),
            string.Join(", ", board.Now.Rows.Select(r => $"{r.Name} {r.Why}")));

    private static Func<FirmHousesNow, bool> Names(params string[] names) => now => now.Rows.Select(r => r.Name).SequenceEqual(names);

    [Fact]
    public void AHouseThatIsChangedMeanwhileIsReadAgain()
    {
        Begin("elm", "Elm Street 12");
        var board = Look();
        Until(board, n => n.Rows[0].Summary is { Visits.IsEmpty: true });
        Assert.Equal(0, _run.RunWith("visit\tnew\t2026-09-07 Hang\n", "set", "houses/elm.trimout").Code);
        Until(board, n => n.Rows[0].Summary is { Visits.Length: 1 });
    }

    [Fact]
    public void AHouseThatComesHasARowAndOneThatGoesHasNone()
    {
        var board = Look();
        Assert.Empty(board.Now.Rows);
        Begin("oak", "Oak Lane 3");
        Until(board, Names("Oak Lane 3"));
        Begin("elm", "Elm Street 12");
        Until(board, Names("Elm Street 12", "Oak Lane 3"));
        File.Delete(House("oak"));
        Until(board, Names("Elm Street 12"));
        File.Move(House("elm"), House("elm-2"));
        Until(board, n => n.Rows is [{ Name: "Elm Street 12", Path: var path }] && path == House("elm-2"));
    }

    /// <summary>Nothing else than the rights changes: neither length nor time nor contents of the file.</summary>
    [LinuxFact]
    [UnsupportedOSPlatform("windows")]
    public void AHouseThatLosesItsRightsSaysSoAndIsBackWithThem()
    {
        Begin("elm", "Elm Street 12");
        Begin("oak", "Oak Lane 3");
        var rights = File.GetUnixFileMode(House("oak"));
        HeldBackThread.Run(() => Look());
        Until(_board!, Names("Elm Street 12", "Oak Lane 3"));
        File.SetUnixFileMode(House("oak"), UnixFileMode.None);
        Until(_board!, n => n.Rows is [{ Why: null }, { Why: not null }]);
        File.SetUnixFileMode(House("oak"), rights);
        Until(_board!, n => n.Rows is [{ Why: null }, { Why: null, Summary.Name: "Oak Lane 3" }]);
    }

    [Fact]
    public void NothingIsLookedAfterOnceNobodyLooks()
    {
        Begin("elm", "Elm Street 12");
        var board = Look();
        Until(board, Names("Elm Street 12"));
        board.Stop();
        Begin("oak", "Oak Lane 3");
        // Twice the beat and more: a board that went on would have found it.
        Thread.Sleep(TimeSpan.FromSeconds(5));
        Assert.True(Names("Elm Street 12")(board.Now));
    }
}
