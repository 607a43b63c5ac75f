using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class PanelsTests
{
    private static TerminalUser At()
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Panel, "A").SayOf("A", Core.Facts.PanelFacts.Type, "Invented supply");
        job.Do(Core.Decisions.Landing.Land(job.Run("W02"), job.House.Panels[0], 3)).Mark("W02", "spliced");
        return new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
    }

    [Fact]
    public void ARunThatIsLandedIsNotThrownOffWithoutAQuestion()
    {
        using var user = At();
        user.Press("3", "end", "t").Type("A 3").Sees("W02 is on A output 3, spliced.").Sees("W01 takes its place and W02 is on no output");
        user.Press("x").Sees("Nothing was done.");
        Assert.Equal(3, user.House.FindUnit(user.House.Units[1].Id)!.Run!.Output);
        user.Press("t").Type("A 3").Press("y");
        Assert.Equal((3, null), (user.House.Units[0].Run!.Output, user.House.Units[1].Run!.Output));
    }

    [Theory]
    [InlineData("A 5")]
    [InlineData("A A 5")]
    [InlineData("a 5")]
    public void APanelThatStandsInTheLineAlreadyMayBeTypedAgain(string typed)
    {
        using var user = At();
        user.Press("3", "end", "t").Type(typed);
        Assert.Equal(5, user.House.Units[0].Run!.Output);
    }
}
