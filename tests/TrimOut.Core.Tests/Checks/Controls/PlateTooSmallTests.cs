using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class PlateTooSmallTests
{
    private static readonly PlateTooSmall Check = new();

    public static Example Finds => new(() => Wall(), j => j.SayOf("Hall", RemoteFacts.Plate, "1-gang, alone"));

    public static Example Passes => new(() => Wall(), j => j.SayOf("Hall", RemoteFacts.Plate, "3-gang, left"));

    [Fact]
    public void AsManyGangsAsItTakesAreFine() =>
        Assert.IsType<Outcome.Fine>(Wall().SayOf("Hall", RemoteFacts.Plate, "2 gang").Of(Check, "Hall"));

    [Fact]
    public void OneFewerIsAStop()
    {
        var found = Wall().SayOf("Hall", RemoteFacts.Plate, "1-gang").FaultOf(Check, "Hall");
        Assert.Equal("It takes 2 gangs; its plate is \"1-gang\".", found.Message);
        Assert.Equal("Plan a plate and a box of 2 gangs, or choose a smaller remote.", found.Mend);
    }

    [Fact]
    public void AHandheldNeedsNoPlate() => Assert.DoesNotContain(
        Check.Run(Wall().SayOf("Wall remote", RemoteTypeFacts.Gangs, "0").House), r => r.Outcome is not Outcome.DoesNotApply);

    [Fact]
    public void AnUnknownPlateIsNotAPass() => Assert.Equal("wall plate", Wall().MissingOf(Check, "Hall"));

    [Fact]
    public void APlateThatSaysNothingOfGangsIsNotAPass() =>
        Assert.Equal("how many gangs the wall plate has", Wall().SayOf("Hall", RemoteFacts.Plate, "beside the door").MissingOf(Check, "Hall"));

    private static TestJob Wall() => new TestJob().Add(ItemKind.Remote, "Hall").SayOf("Hall", RemoteFacts.Type, "Wall remote")
        .SayOf("Wall remote", RemoteTypeFacts.Gangs, "2");
}
