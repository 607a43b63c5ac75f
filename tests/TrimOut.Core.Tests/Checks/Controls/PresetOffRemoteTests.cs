using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class PresetOffRemoteTests
{
    private static readonly PresetOffRemote Check = new();

    public static Example Finds => new(() => Moving("W01"), j => Sends(j, "W02"));

    public static Example Passes => new(() => Moving("W01", "W02"), j => Sends(j, "W02"));

    [Fact]
    public void APresetOfWhatItsRemoteMovesIsFine() => Assert.IsType<Outcome.Fine>(Sends(Moving("W01"), "W01").Of(Check, "R1"));

    [Fact]
    public void AUnitThatItsRemoteDoesNotMoveIsAStop()
    {
        var found = Sends(Sends(Moving("W01"), "W01"), "W02").FaultOf(Check, "R1");
        Assert.Equal("Evening on R1 is to move W02, which R1 does not move.", found.Message);
        Assert.Equal("Pair W02 with R1 and say so, or take it out of Evening.", found.Mend);
    }

    [Fact]
    public void ARemoteThatMovesNothingYetIsNotAPass() => Assert.Equal("units that it moves", Sends(Moving(), "W01").MissingOf(Check, "R1"));

    [Fact]
    public void ARemoteWithoutPresetsHasNothingToCompare() => Assert.Empty(Check.Run(Moving("W01").House));

    private static TestJob Moving(params string[] units)
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Remote, "R1");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Evening"));
        foreach (var unit in units)
            job.Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[0], job.Unit(unit)));
        return job;
    }

    private static TestJob Sends(TestJob job, string unit) => job.SayOf("Evening", PresetFacts.Position, "40", job.Unit(unit).Id);
}
