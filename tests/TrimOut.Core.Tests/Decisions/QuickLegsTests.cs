using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class QuickLegsTests
{
    [Theory]
    [InlineData("up 8", LegDirection.Up, 96, null)]
    [InlineData("Up 8 1/2 ft", LegDirection.Up, 102, null)]
    [InlineData("up 8.5' wall", LegDirection.Up, 102, CablePlace.InWall)]
    [InlineData("across 46 in wall", LegDirection.Across, 552, CablePlace.InWall)]
    [InlineData("across 46 in", LegDirection.Across, 46, null)]
    [InlineData("across 46 in in wall", LegDirection.Across, 46, CablePlace.InWall)]
    [InlineData("d 3 between floors", LegDirection.Down, 36, CablePlace.BetweenFloors)]
    [InlineData("through floor 1", LegDirection.ThroughFloor, 12, null)]
    [InlineData("through 1", LegDirection.ThroughFloor, 12, null)]
    [InlineData("across 12'-6\" air-handling space", LegDirection.Across, 150, CablePlace.AirHandlingSpace)]
    public void ALegIsItsDirectionItsLengthAndWhatIsAroundIt(string line, LegDirection way, int inches, CablePlace? place)
    {
        var leg = Assert.Single(QuickLegs.Read(line, new TestJob().House).Value);
        Assert.Equal((way, Length.FromInches(inches), place), (leg.Direction, leg.Length, leg.Place));
    }

    [Fact]
    public void InMetresABareLengthIsMetres() =>
        Assert.Equal(Length.FromMillimetres(2400), QuickLegs.Read("up 2.4", new TestJob(DisplayUnits.Millimetres).House).Value[0].Length);

    [Theory]
    [InlineData("", "from the panel on")]
    [InlineData("up 8, left 3", "Leg 2: \"left\" is none of: up")]
    [InlineData("up 8, across", "Leg 2: say how long it is")]
    [InlineData("up eight", "Leg 1: \"eight\" is no length")]
    [InlineData("up 9000", "too long")]
    [InlineData("up 2.4 m, across 46 in wall", "One leg is 2.4 m, and 46 has no unit: write 46 m or 46 ft.")]
    public void WhatIsNotUnderstoodIsRefusedWithItsLeg(string line, string why) =>
        Assert.Contains(why, QuickLegs.Read(line, new TestJob().House).Reason, StringComparison.Ordinal);

    [Fact]
    public void InMetresALegInFeetMakesOneWithoutAUnitAQuestion()
    {
        var house = new TestJob(DisplayUnits.Millimetres).House;
        Assert.Equal("One leg is 8 ft, and 3 has no unit: write 3 m or 3 ft.", QuickLegs.Read("up 8 ft, across 2.4 m, down 3", house).Reason);
        Assert.True(QuickLegs.Read("up 8 ft, across 2.4 m, down 3 m", house).Ok);
        Assert.True(QuickLegs.Read("up 2.4 m, down 3", house).Ok);
    }

    [Fact]
    public void TheLineOfARunReadsTheSame()
    {
        var job = new TestJob().Window("W01").Window("W02");
        job.Do(QuickLegs.Add(job.Run("W01"), "up 8 1/2 ft, across 46 in wall, through 1, down 3'-0 1/16\" between floors"));
        var line = Assert.Single(QuickLegs.OfNeighbours(job.Run("W02")));
        job.Do(QuickLegs.Add(job.Run("W02"), line));
        Assert.Equal(job.Run("W01").Legs.Select(l => (l.Direction, l.Length, l.Place)), job.Run("W02").Legs.Select(l => (l.Direction, l.Length, l.Place)));
        Assert.Contains("4 legs of W02: up 8'-6\"", job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
    }

    [Fact]
    public void APlaceAloneAtTheEndIsThatOfEveryLegThatHasNone()
    {
        var legs = QuickLegs.Read("up 8, across 46 between floors, down 3, in wall", new TestJob().House).Value;
        Assert.Equal([CablePlace.InWall, CablePlace.BetweenFloors, CablePlace.InWall], legs.Select(l => l.Place));
        Assert.Contains("Leg 1: \"in\" is none of", QuickLegs.Read("in wall", new TestJob().House).Reason, StringComparison.Ordinal);
        Assert.Contains("Leg 2: \"in\" is none of", QuickLegs.Read("up 8, in wall, down 3", new TestJob().House).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void APlaceAloneIsSaidOfTheLegsThatARunHas()
    {
        var job = new TestJob().Window("W01");
        job.Do(QuickLegs.Add(job.Run("W01"), "up 8, across 46 between floors, down 3"));
        Assert.Equal("In wall: around 2 legs of which nothing is said", QuickLegs.Echo(job.Run("W01"), "in wall").Value, ignoreCase: true);
        job.Do(QuickLegs.Add(job.Run("W01"), "in wall"));
        Assert.Equal([CablePlace.InWall, CablePlace.BetweenFloors, CablePlace.InWall], job.Run("W01").Legs.Select(l => l.Place));
        Assert.False(QuickLegs.Add(job.Run("W01"), "between floors").Ok);
    }

    [Fact]
    public void ARunWithABlankLegIsNotOfferedToOthers()
    {
        var job = new TestJob().Window("W01").Window("W02");
        job.Do(QuickLegs.Add(job.Run("W01"), "up 8")).Do(AddItems.Leg(job.Run("W01")));
        Assert.Empty(QuickLegs.OfNeighbours(job.Run("W02")));
    }

    [Fact]
    public void TheRunsOfTheSameRoomAreOfferedFirst()
    {
        var job = new TestJob().Window("W01", "Study").Window("W02", "Kitchen").Window("W03", "Study");
        job.Do(QuickLegs.Add(job.Run("W01"), "up 1")).Do(QuickLegs.Add(job.Run("W02"), "up 2"));
        Assert.Equal(["up 1'-0\"", "up 2'-0\""], QuickLegs.OfNeighbours(job.Run("W03")));
    }
}
