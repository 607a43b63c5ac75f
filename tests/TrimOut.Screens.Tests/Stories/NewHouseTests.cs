using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;

namespace TrimOut.Screens.Tests.Stories;

public class NewHouseTests
{
    [Fact]
    public void FromNothingToTheFirstWindow()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()));
        user.Sees("Corner house").Press("n").Type("Mill cottage").Press("enter");
        user.Sees("Press n and type one line");
        user.Press("n").Type("W01 roller left 36x60 SW floor inside panel @Kitchen");
        user.Press("esc").Sees("Kitchen").Sees("W01");
        var unit = Assert.Single(user.House.Units);
        Assert.Equal("36\"", unit.Window.Show(WindowFacts.RoughWidth));
        Assert.Equal(Side.Left, unit.LeadSide);
    }

    [Fact]
    public void ATagThatIsTakenIsRefusedAndTheTextStays()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()));
        user.Press("n").Type("Mill cottage").Press("enter", "n").Type("W01 roller @Kitchen");
        user.Type("w01").Sees("Tag W01 is taken").Sees("w01");
        Assert.Single(user.House.Windows);
    }
}
