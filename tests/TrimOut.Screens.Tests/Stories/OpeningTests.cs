using Microsoft.Extensions.Time.Testing;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>What somebody sees who opens a house that is not as it was left, or that can't be worked on.</summary>
public class OpeningTests
{
    private readonly TestDesk _desk = new(new FakeTimeProvider());

    [Fact]
    public void ASaveThatNeverEndedIsSaidFirstAndStaysUntilItWasSeen()
    {
        _desk.Notices = ["The program or the power stopped in the middle of a save. The bytes are kept in elm.trimout.unread-20260302-080000."];
        using var user = new TerminalUser(_desk);
        user.Press("enter").Sees("Before you begin").Sees("stopped in the middle of a save").Sees("unread-20260302-080000");
        user.Press("z").Sees("stopped in the middle of a save");
        user.Press("enter").Sees("Job sheet").DoesNotSee("stopped in the middle of a save");
    }

    [Fact]
    public void ItIsSaidToSomebodyWhoNamedTheHouseOnTheCommandLineToo()
    {
        _desk.Notices = ["The bytes are kept."];
        using var user = new TerminalUser(_desk, new TestJob().Window("W01").Scribe);
        user.Sees("The bytes are kept.").Press("esc").Sees("Job sheet").Press("6").Sees("Punch list");
    }

    [Fact]
    public void AHouseThatAnotherProgramHasOpenCanBeLookedAt()
    {
        _desk.HeldBy = "ash on laptop, since 08:00";
        using var user = new TerminalUser(_desk);
        user.Press("enter").Sees("is open in another program: ash on laptop, since 08:00").Press("enter").Sees("ash on laptop");
        user.Press("O").Sees("Job sheet").Sees("READING ONLY").Sees("Opened for reading only");
        foreach (var key in "1234567890")
            user.Press(key.ToString()).Sees("READING ONLY");
    }

    [Fact]
    public void WhenTheOtherProgramHasClosedItTheHouseIsOpenedToWorkOnIt()
    {
        _desk.HeldBy = "ash";
        using var user = new TerminalUser(_desk);
        user.Press("enter").Sees("another program");
        _desk.HeldBy = null;
        user.Press("enter").Sees("Job sheet").DoesNotSee("READING ONLY");
    }

    [Fact]
    public void ALongReasonIsReadToItsEnd()
    {
        var store = new MemoryStore
        {
            FailWith = "Not saved: the disk that /media/somebody/a stick with a long name/houses of this year/elm street.trimout is on is full. " +
            "Make room and try again, or save a copy somewhere else."
        };
        using var user = new TerminalUser(_desk, new Core.History.Scribe(store, _desk.Clock, "Ash"));
        user.Press("0", "enter").Type("Elm").Sees("is on is full.").Sees("copy somewhere else. F2 writes all to a new file and goes on there.");
    }
}
