using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class UnitOffRoomRemoteTests
{
    private static readonly UnitOffRoomRemote Check = new();

    public static Example Finds => new(() => Moved("Kitchen"), j => j.SayOf("R1", RemoteFacts.Room, "Den"));

    public static Example Passes => new(() => Moved("Den"), j => j.SayOf("R1", RemoteFacts.Room, "Kitchen"));

    [Fact]
    public void TheRemoteOfItsRoomIsFine() => Moved("Kitchen").Fine(Check, "W01");

    [Fact]
    public void ARemoteThatIsKeptNowhereInParticularIsFine() => Moved("").Fine(Check, "W01");

    [Fact]
    public void OnlyTheRemoteOfAnotherRoomIsACaution() =>
        Assert.Equal("R1 moves it, and none of them is kept in Kitchen.", Moved("Den").Fault(Check, "W01").Message);

    [Fact]
    public void SeveralRemotesOfOtherRoomsAreNamed()
    {
        var job = Moved("Den").Add(ItemKind.Remote, "R2").SayOf("R2", RemoteFacts.Room, "Den");
        var found = job.Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[1], job.Unit("W01"))).Fault(Check, "W01");
        Assert.Equal("R1, R2 move it, and none of them is kept in Kitchen.", found.Message);
        Assert.Equal("Pair it with a remote in Kitchen, or waive this and say why.", found.Mend);
    }

    [Fact]
    public void AUnitThatNothingMovesIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "a remote that moves it");

    private static TestJob Moved(string keptIn)
    {
        var job = Jobs.Walked().Room("Den").Add(ItemKind.Remote, "R1");
        if (keptIn.Length > 0)
            job.SayOf("R1", RemoteFacts.Room, keptIn);
        return job.Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[0], job.Unit("W01")));
    }
}
