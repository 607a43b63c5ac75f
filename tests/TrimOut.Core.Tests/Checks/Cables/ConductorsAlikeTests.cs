using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class ConductorsAlikeTests
{
    private const string Cable = "16/2";
    private static readonly ConductorsAlike Check = new();

    public static Example Finds => new(() => Of("red, black", "red"), j => j.SayOf(Cable, CableTypeFacts.Colours, "white, white"));

    public static Example Passes => new(() => Of("white, white", "white"), j => j.SayOf(Cable, CableTypeFacts.Colours, "white, white with red tape"));

    [Theory]
    [InlineData("red, black", "red")]
    [InlineData("Red / Black", "red")]
    [InlineData("white, white with red stripe", "white with red stripe")]
    public void TwoColoursOfWhichOneIsPlusAreFine(string colours, string plus) => Assert.IsType<Outcome.Fine>(Of(colours, plus).Of(Check, Cable));

    [Fact]
    public void TwoConductorsOfOneColourAreACaution() =>
        Assert.Equal("16/2 has more than one conductor that is white.", Of("white, White", "white").FaultOf(Check, Cable).Message);

    [Fact]
    public void APlusThatIsNoneOfThemIsACaution() =>
        Assert.Equal("Plus is to be brown, and the conductors of 16/2 are red, black.", Of("red, black", "brown").FaultOf(Check, Cable).Message);

    [Fact]
    public void ColoursThatNobodyWroteAreNotAPass() => Assert.Equal("conductor colors of 16/2 in the kit", Jobs.Roughed().MissingOf(Check, Cable));

    [Fact]
    public void APlusThatNobodyWroteIsNotAPass() =>
        Assert.Equal("positive conductor of 16/2 in the kit", Jobs.Roughed().SayOf(Cable, CableTypeFacts.Colours, "red, black").MissingOf(Check, Cable));

    [Fact]
    public void ACableThatNoRunIsPulledInIsNotJudged() => Assert.Empty(Check.Run(Jobs.Walked().House));

    private static TestJob Of(string colours, string plus) =>
        Jobs.Roughed().SayOf(Cable, CableTypeFacts.Colours, colours).SayOf(Cable, CableTypeFacts.Plus, plus);
}
