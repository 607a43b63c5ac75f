using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class HubPastDevicesTests
{
    private static readonly HubPastDevices Check = new();

    public static Example Finds => new(() => Paired(2), j => j.Window("W4").Say("W4", UnitFacts.Hub, "Hub 1"));

    public static Example Passes => new(() => Paired(1), j => j.Window("W4").Say("W4", UnitFacts.Hub, "Hub 1"));

    // One hub takes up to 75 devices and remotes count: common practice, no published source. Here the sheet says 3.
    [Fact]
    public void AsManyAsItTakesAreFine() => Assert.IsType<Outcome.Fine>(Paired(2).Of(Check, "Hub 1"));

    [Fact]
    public void ARemoteCountsToo() =>
        Assert.Equal("Hub 1 has 3 units and 1 remotes, 4 devices; it takes 3.", Paired(3).FaultOf(Check, "Hub 1").Message);

    [Fact]
    public void AHubOfUnknownSizeIsNotAPass() =>
        Assert.Equal("devices of Hub in the kit", Paired(1).SayOf("Hub", HubTypeFacts.Devices, "").MissingOf(Check, "Hub 1"));

    private static TestJob Paired(int units)
    {
        var job = new TestJob().Add(ItemKind.Hub, "Hub 1").SayOf("Hub", HubTypeFacts.Devices, "3").Add(ItemKind.Remote, "R1")
            .SayOf("R1", RemoteFacts.Hub, "Hub 1");
        return Enumerable.Range(1, units).Aggregate(job, (j, n) => j.Window($"W{n}").Say($"W{n}", UnitFacts.Hub, "Hub 1"));
    }
}
