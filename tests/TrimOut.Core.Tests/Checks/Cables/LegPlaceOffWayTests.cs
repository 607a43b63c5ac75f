using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class LegPlaceOffWayTests
{
    private static readonly LegPlaceOffWay Check = new();

    public static Example Finds => new(() => Way("through-floor"), j => j.Say("W01", RunFacts.Note, "Up the stairwell."));

    public static Example Passes => new(() => Way("through-floor"),
        j => j.Do(SetFact.Typed(j.House, j.Run("W01").Legs[0].Item, LegFacts.Place, "between-floors")));

    [Fact]
    public void ALegThroughAFloorIsInNoWall() => Assert.Equal("A leg goes through a floor and is said to be inside a wall: that is between floors.",
        Way("through-floor").Fault(Check, "W01").Message);

    [Fact]
    public void ALegAcrossSaysNothing() => Way("across").Silent(Check, "W01");

    [Fact]
    public void APlaceThatIsNotSaidIsNotAPass()
    {
        var job = Way("through-floor");
        job.Do(SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.Place, "")).Lacks(Check, "W01", "place");
    }

    [Fact]
    public void AllThatGoThroughAFloorAndSayTheirPlaceAreFine()
    {
        var job = Jobs.Roughed().Legs("W01", ("10 ft", CablePlace.BetweenFloors));
        job.Do(SetFact.Typed(job.House, job.Run("W01").Legs[1].Item, LegFacts.Direction, "through-floor")).Fine(Check, "W01");
    }

    [Fact]
    public void ARunFromAFloorFromWhichOthersGoThroughOneIsToGoThroughOneToo()
    {
        var job = new TestJob().Room("Loft", "Upper").WithPanel();
        Jobs.Roughed("W01", job);
        Jobs.Roughed("W02", job);
        foreach (var tag in (string[])["W01", "W02"])
            job.Say(tag, WindowFacts.Room, "Loft").Say(tag, RunFacts.Panel, "P1");
        Turn("W01", "through-floor").Do(SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.Place, "between-floors")).Silent(Check, "W02");
        var found = Turn("W02", "up").Fault(Check, "W02");
        Assert.Equal("No leg of it goes through a floor; other cables from Upper to the same panel go through one.", found.Message);
        Assert.Equal("direction", found.Mends.Field);
        job.Forget("W02", RunFacts.FirstLoop).Silent(Check, "W02");
        job.Pulled("W02").Fault(Check, "W02");
        job.Room("Hall", "Main").Say("W02", WindowFacts.Room, "Hall").Silent(Check, "W02");

        // One leg of which nobody said which way it goes may be the one through the floor.
        job.Say("W02", WindowFacts.Room, "Loft").Fault(Check, "W02");
        job.Legs("W02", ("4 ft", CablePlace.InWall)).Silent(Check, "W02");

        TestJob Turn(string tag, string way) => job.Do(SetFact.Typed(job.House, job.Run(tag).Legs[0].Item, LegFacts.Direction, way));
    }

    private static TestJob Way(string direction)
    {
        var job = Jobs.Roughed();
        return job.Do(SetFact.Typed(job.House, job.Run("W01").Legs[0].Item, LegFacts.Direction, direction));
    }
}
