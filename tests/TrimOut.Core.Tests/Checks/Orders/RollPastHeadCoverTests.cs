using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class RollPastHeadCoverTests
{
    private static readonly RollPastHeadCover Check = new();

    public static Example Finds => new(() => Room("65 mm"), j => j.SayOf("Fascia 3 in", HeadCoverFacts.RoomInside, "60 mm"));

    public static Example Passes => new(() => Room("65 mm"), j => j.SayOf("Fascia 3 in", HeadCoverFacts.RoomInside, "70 mm"));

    // Tube 50 mm, fabric 0.4 mm, 15 turns: 840 pi mm wound make 62 mm exactly, and two thicknesses more 62.8 mm.
    [Fact]
    public void ARollThatJustTurnsIsFine() => Room("62.800001 mm").Fine(Check, "W01");

    [Fact]
    public void ARollThatJustDoesNotIsAStop()
    {
        var found = Room("62 mm").Fault(Check, "W01");
        Assert.Equal("With 2639 mm wound on it the roll needs 63 mm; Fascia 3 in has 62 mm.", found.Message);
        Assert.Contains(("roll", "62 mm"), found.Working!.Inputs);
    }

    [Fact]
    public void TheOrderHeightCountsOverTheMeasuredOne() => Room("62.8 mm").Say("W01", UnitFacts.OrderHeight, "2700").Fault(Check, "W01");

    [Fact]
    public void WhatStacksHasNoRoll() => Room("10 mm").Say("W01", UnitFacts.Kind, "Cellular").Silent(Check, "W01");

    [Fact]
    public void WithoutACoverItTurnsInTheOpen() => Room("10 mm").Say("W01", UnitFacts.HeadCover, "None").Silent(Check, "W01");

    [Fact]
    public void AnUnknownFabricIsNotAPass() =>
        Room("70 mm").SayOf("Roller", CoveringKindFacts.FabricThickness, "").Lacks(Check, "W01", "fabric thickness of Roller in the kit");

    private static TestJob Room(string room) =>
        Jobs.Walked("W01", Jobs.Metric()).Say("W01", WindowFacts.RoughHeight, "2638.937829 mm").Say("W01", UnitFacts.HeadCover, "Fascia 3 in")
        .SayOf("Roller", CoveringKindFacts.Tube, "50").SayOf("Roller", CoveringKindFacts.FabricThickness, "0.4")
        .SayOf("Roller", CoveringKindFacts.ExtraFabric, "0")
        .SayOf("Fascia 3 in", HeadCoverFacts.RoomInside, room);

    [Fact]
    public void ACoverOfUnknownRoomIsNotAPass() =>
        Room("70 mm").SayOf("Fascia 3 in", HeadCoverFacts.RoomInside, "").Lacks(Check, "W01", "room inside of Fascia 3 in in the kit");

    [Fact]
    public void WhatTheDropWaitsForIsNamed()
    {
        var job = Room("70 mm").Say("W01", WindowFacts.Mount, "outside");
        job.Lacks(Check, "W01", "head above");
        job.Forget("W01", WindowFacts.RoughHeight).Lacks(Check, "W01", "rough height");
    }

    [Fact]
    public void OnceOrderedTheMakerIsAsked()
    {
        var job = Room("62 mm");
        Assert.StartsWith("Order a larger head cover", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Ask the maker", job.Say("W01", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }
}
