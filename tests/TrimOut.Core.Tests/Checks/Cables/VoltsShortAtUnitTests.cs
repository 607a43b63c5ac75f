using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class VoltsShortAtUnitTests
{
    private static readonly VoltsShortAtUnit Check = new();

    public static Example Finds => new(Own, j => j.Legs("W01", ("410 ft", CablePlace.InWall)));

    public static Example Passes => new(Own, j => j.Legs("W01", ("290 ft", CablePlace.InWall)));

    [Fact]
    public void AShortRunIsFineAndShowsItsFigures()
    {
        var fine = Assert.IsType<Outcome.Fine>(Jobs.Roughed().Judge(Check, "W01"));
        Assert.Contains(("supply", "12 V"), fine.Working!.Inputs);
        Assert.Contains(("length, one way", "69'-0\""), fine.Working.Inputs);
    }

    // With the largest resistance of IEC 60228 the figures come out even: 1 mm2 solid has 0.0181 ohm per metre at 20 C,
    // 50 m out and back 1.81 ohm, and 1 A leaves 12 - 1.81 = 10.19 V.
    [Fact]
    public void ExactlyEnoughIsFine() => Metric("10.19").Fine(Check, "W01");

    [Fact]
    public void AMillivoltLessIsAStop()
    {
        var found = Metric("10.191").Fault(Check, "W01");
        Assert.Equal("10.55 V arrive while it runs and 10.190 V while it starts; it needs 10.191 V. The kit's table gives no length; voltage drop ends it " +
            "at 49.97 m.", found.Message);
        Assert.Contains(("margin", "-0.001 V, -0.03 m"), found.Working!.Inputs);
    }

    // 0.19 V short needs no third decimal.
    [Fact]
    public void FiguresThatLieApartAreRounded() => Assert.StartsWith("10.55 V arrive while it runs and 10.19 V while it starts; it needs 10.38 V.",
        Metric("10.38").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void TheKitsTableIsShownBesideTheVoltage() =>
        Assert.EndsWith("The kit's table ends at 200 ft, voltage drop at 210.8 ft: the table governs.", Jobs.Roughed().Legs("W01", ("150", CablePlace.InWall))
            .Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void ALowSupplyIsMendedByNoCable()
    {
        var found = Jobs.Roughed().SayOf("Invented supply", PanelTypeFacts.Supply, "10.2").Fault(Check, "W01");
        Assert.Equal("The supply gives 10.2 V, and it needs 10.2 V: no cable helps.", found.Message);
        Assert.StartsWith("Compare both sheets", found.Mend, StringComparison.Ordinal);
    }

    // 48 m of legs, and the tails that are planned: the 914.4 mm of the window and 1085.6 mm at the panel are 2 m.
    [Fact]
    public void PlannedTailsThatCostTooMuchAreFoundBeforeItIsPulled()
    {
        var job = Metric("10.191").SayOf("Test house", HouseFacts.PanelTail, "1085.6 mm").Forget("W01", RunFacts.TailAtWindow)
            .Forget("W01", RunFacts.TailAtPanel);
        Assert.StartsWith("With the tails that are planned 10.55 V arrive while it runs", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
        job.SayOf("Roller", CoveringKindFacts.LeastVolts, "10.19").Lacks(Check, "W01", "tail at window");
    }

    [Fact]
    public void AnUnknownCurrentIsNotAPass() =>
        Jobs.Roughed().SayOf("Roller", CoveringKindFacts.StartingCurrent, "").Lacks(Check, "W01", "starting current of Roller in the kit");

    [Fact]
    public void AnUnknownConductorIsNotAPass() =>
        Jobs.Roughed().SayOf("16/2", CableTypeFacts.Conductor, "").Lacks(Check, "W01", "conductor of 16/2 in the kit");

    [Fact]
    public void AMetricSizeThatIsInNoTableIsNamed() =>
        Jobs.Roughed().SayOf("16/2", CableTypeFacts.Conductor, "1.2 mm2")
            .Lacks(Check, "W01", "Conductor: 1.2 mm2 is not in the table. Known are 0.5, 0.75, 1, 1.5, 2.5 mm2.");

    private static TestJob Metric(string least) => Jobs.Walked("W01", Jobs.Metric().SayOf("Roller", CoveringKindFacts.LeastVolts, least))
        .SayOf("16/2", CableTypeFacts.Conductor, "1 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid").SayOf("16/2", CableTypeFacts.LongestRun, "")
        .SayOf("", HouseFacts.ConductorTemperature, "20").Say("W01", RunFacts.Cable, "16/2").Legs("W01", ("48 m", CablePlace.InWall))
        .Say("W01", RunFacts.TailAtWindow, "1000 mm").Say("W01", RunFacts.TailAtPanel, "1000 mm");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Jobs.Roughed().SayOf("Invented supply", PanelTypeFacts.Supply, "18").SayOf("Roller", CoveringKindFacts.LeastVolts, "15")
        .SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.6").SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.75")
        .SayOf("16/2", CableTypeFacts.LongestRun, "520 ft");

    [Theory]
    [InlineData("least-volts", "minimum volts of Roller in the kit")]
    [InlineData("running-current", "running current of Roller in the kit")]
    [InlineData("stranding", "stranding of 16/2 in the kit")]
    [InlineData("supply", "supply of Invented supply in the kit")]
    public void WhatASheetLeavesOpenIsNamed(string fact, string missing)
    {
        var (part, kind) = fact switch
        {
            "stranding" => ("16/2", ItemKind.CableType),
            "supply" => ("Invented supply", ItemKind.PanelType),
            _ => ("Roller", ItemKind.CoveringKind),
        };
        Jobs.Roughed().SayOf(part, FactTable.Find(kind, fact)!, "").Lacks(Check, "W01", missing);
    }

    [Fact]
    public void WhatIsNotChosenIsNamed()
    {
        Jobs.Roughed().Forget("W01", UnitFacts.Kind).Lacks(Check, "W01", "kind");
        Jobs.Roughed().Forget("W01", RunFacts.Cable).Lacks(Check, "W01", "cable");
        Jobs.Roughed().SayOf("", HouseFacts.ConductorTemperature, "").Lacks(Check, "W01",
            $"{HouseFacts.ConductorTemperature.Label.ToLowerInvariant()} of the house");
        Jobs.Roughed().WithPanel().Say("W01", RunFacts.Panel, "P1").SayOf("P1", PanelFacts.Type, "").Lacks(Check, "W01", "type");
        Jobs.Roughed().WithPanel().Say("W01", RunFacts.Panel, "P1").SayOf("Invented supply", PanelTypeFacts.Supply, "")
            .Lacks(Check, "W01", "supply of Invented supply in the kit");
    }

    // 1 mm2 solid out and back: 10.191 V are wanted where 10.19 arrive.
    [Fact]
    public void TheWorkingTellsWhatItIsReckonedFrom()
    {
        var worked = Metric("10.191").Fault(Check, "W01").Working!.Inputs;
        Assert.Equal(["supply", "length, one way", "ohms per meter", "running", "starting", "minimum volts", "margin"], worked.Select(i => i.Name));
        Assert.Equal(["12 V", "50 m", "0.0181", "0.8 A: 10.552 V arrive", "1 A: 10.19 V arrive", "10.191 V"], worked.Take(6).Select(i => i.Value));
    }
}
