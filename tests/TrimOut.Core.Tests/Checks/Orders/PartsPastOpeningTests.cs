using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class PartsPastOpeningTests
{
    private static readonly PartsPastOpening Check = new();

    public static Example Finds => new(() => Parts("18", "18"), j => j.Say("W01B", UnitFacts.PartWidth, "18 1/4\""));

    public static Example Passes => new(() => Parts("18", "18"), j => j.Say("W01B", UnitFacts.PartWidth, "17 3/4\""));

    // 36 in, the generic gap of 1/8 in and no end allowance (common practice, no published source): 35 7/8 in for both.
    [Fact]
    public void PartsThatFillTheOpeningWithTheGapBetweenThemAreFine() => Assert.IsType<Outcome.Fine>(Parts("18", "17 7/8").Of(Check, "W01"));

    [Fact]
    public void ASixtyFourthLessThanTheGapIsAStopAsSoonAsThePartsAreThere()
    {
        Parts("18", "17 57/64").FaultOf(Check, "W01");
        Assert.Equal("The parts make 35 15/16\" together, and 36 1/16\" with what the sheets ask for between them and at the ends; "
            + "the opening is 36\" at its narrowest.", Parts("18", "17 15/16").FaultOf(Check, "W01").Message);
        Assert.Equal((Severity.Stop, Core.Phases.Phase.Measure), (Check.Info.Severity, Check.Info.Phase));
    }

    // 36 in and 35 in fill 71 in, and no gap is left: rough as well as finished.
    [Fact]
    public void PartsThatFillTheOpeningLeaveNoGapRoughOrMeasured()
    {
        var job = Rough("36", "35").Say("W01", WindowFacts.RoughWidth, "71");
        Assert.Equal("The parts that are known make 71\" together, and 71 1/8\" with what the sheets ask for between them and at the ends; "
            + "the opening is 71\" wide at the most.", job.FaultOf(Check, "W01").Message);
        foreach (var fact in (Fact[])[WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom])
            job.Say("W01", fact, "71");
        var found = job.FaultOf(Check, "W01");
        Assert.Equal("The parts make 71\" together, and 71 1/8\" with what the sheets ask for between them and at the ends; "
            + "the opening is 71\" at its narrowest.", found.Message);
        Assert.Equal("Take 1/8\" or more off the parts.", found.Mend);
        Assert.IsType<Outcome.Fine>(job.Say("W01B", UnitFacts.PartWidth, "34 7/8").Of(Check, "W01"));
    }

    [Fact]
    public void EndsThatStayClearOfTheJambsTakeTheirPart()
    {
        var job = Parts("18", "17 1/2").SayOf("Roller", CoveringKindFacts.EndAllowance, "3/16");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "W01"));
        Assert.IsType<Outcome.Found>(job.SayOf("Roller", CoveringKindFacts.EndAllowance, "13/64").Of(Check, "W01"));
    }

    [Theory]
    [InlineData("gap-between", "gap between units of Roller in the kit")]
    [InlineData("end-allowance", "end allowance of Roller in the kit")]
    public void ASheetThatSaysNothingOfTheGapIsNotAPassAndHidesNothing(string blank, string missing)
    {
        var job = Parts("18", "17 3/4").SayOf("Roller", FactTable.Find(Core.Houses.ItemKind.CoveringKind, blank)!, "");
        Assert.Equal(missing, job.MissingOf(Check, "W01"));
        job.Say("W01B", UnitFacts.PartWidth, "18 1/64").FaultOf(Check, "W01");
    }

    /// <summary>What is ordered is held to the gap by its own rule, and is no second stop here.</summary>
    [Fact]
    public void OnceAllAreOrderedTheGapIsThatOfTheOrders()
    {
        var job = Parts("18", "18");
        job.FaultOf(Check, "W01");
        Assert.IsType<Outcome.Fine>(job.Say("W01A", UnitFacts.OrderWidth, "17 7/8").Of(Check, "W01"));
        Assert.IsType<Outcome.Fine>(job.Say("W01A", UnitFacts.OrderWidth, "18").Say("W01B", UnitFacts.OrderWidth, "18").Of(Check, "W01"));
        job.FaultOf(new GapBetweenUnitsTooSmall(), "W01");
    }

    [Fact]
    public void ALittleMoreIsAStop() =>
        Assert.Equal("The parts make 36 1/64\" together; the opening is 36\" at its narrowest.", Parts("18", "18 1/64").FaultOf(Check, "W01").Message);

    // Plane geometry: diagonals of 70 5/16 and 69 11/16 in over 36 in are a lean of about 5/8 in, which two straight units together must not pass.
    [Fact]
    public void InAnOpeningThatLeansWhatHangsPlumbIsWhatTheyShare()
    {
        var job = Parts("17 7/8", "17 7/8");
        job.Of(Check, "W01");
        job.Say("W01", WindowFacts.DiagonalDown, "70 5/16").Say("W01", WindowFacts.DiagonalUp, "69 11/16");
        Assert.Matches("^The parts make 35 3/4\" together; 35 [0-9/]+\" hang plumb in the opening.$", job.FaultOf(Check, "W01").Message);
        Assert.Equal("The parts make 35 5/16\" together, and 35 7/16\" with what the sheets ask for between them and at the ends; "
            + "35 3/8\" hang plumb in the opening.",
            job.Say("W01A", UnitFacts.PartWidth, "17 7/16").FaultOf(Check, "W01").Message);
        Assert.IsType<Outcome.Fine>(job.Say("W01A", UnitFacts.PartWidth, "17 1/4").Of(Check, "W01"));
    }

    [Fact]
    public void AUnitOfUnknownPartIsNotAPass() =>
        Assert.Equal("part of the opening of W01B", Parts("18", "18").Forget("W01B", UnitFacts.PartWidth).MissingOf(Check, "W01"));

    // No plaster makes a rough opening wider: what is past it at framing is past it for good.
    [Fact]
    public void AtFramingTheRoughWidthIsTheMostThatThePartsMayMake()
    {
        var job = Rough("30", "6").SayOf("Roller", CoveringKindFacts.GapBetween, "0");
        Assert.Equal("width, top", job.MissingOf(Check, "W01"));
        var found = job.Say("W01B", UnitFacts.PartWidth, "6 1/64").FaultOf(Check, "W01");
        Assert.Equal("The parts that are known make 36 1/64\" together; the opening is 36\" wide at the most.", found.Message);
        Assert.StartsWith("Put right the part that was mistyped", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void OnePartThatIsWiderThanTheOpeningDoesNotWaitForTheOther() =>
        Rough("37", "").FaultOf(Check, "W01");

    [Fact]
    public void AWidthThatIsMeasuredCountsBeforeTheOthersAre()
    {
        var job = Rough("20", "15 3/8");
        job.Say("W01", WindowFacts.WidthMiddle, "35 1/2");
        Assert.Equal("width, top", job.MissingOf(Check, "W01"));
        job.Say("W01", WindowFacts.WidthMiddle, "35 31/64").FaultOf(Check, "W01");
    }

    [Fact]
    public void NothingIsWorkedOutOfPartsThatCanNotBe()
    {
        var job = Rough("30", "18");
        Assert.Equal(Length.FromInches(18), job.Unit("W01A").PartWidth);
        job.Say("W01A", UnitFacts.PartWidth, "17");
        Assert.Equal(Length.FromInches(17), job.Unit("W01A").PartWidth);
    }

    private static TestJob Rough(string left, string right)
    {
        var job = Jobs.Walked();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01A", UnitFacts.PartWidth, left);
        return right.Length == 0 ? job : job.Say("W01B", UnitFacts.PartWidth, right);
    }

    [Fact]
    public void ASingleUnitHasNoParts() => Assert.Empty(Check.Run(Jobs.Measured().House));

    private static TestJob Parts(string left, string right)
    {
        var job = Jobs.Measured();
        return job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id)).Say("W01A", UnitFacts.PartWidth, left).Say("W01B", UnitFacts.PartWidth, right);
    }

    [Fact]
    public void WhatIsTooWideIsTold()
    {
        Assert.Equal("Take 3/8\" or more off the parts.", Parts("18", "18 1/4").FaultOf(Check, "W01").Mend);
        Assert.Equal("Put right the part that was mistyped, or take 3/8\" or more off the parts.", Rough("30", "6 1/4").FaultOf(Check, "W01").Mend);
    }

    [Fact]
    public void TheWorkingTellsEachPart() => Assert.Equal(
        "W01A 18\", W01B 18 1/4\", sum 36 1/4\", gaps and ends 1/8\", opening 36\"",
        string.Join(", ", Parts("18", "18 1/4").FaultOf(Check, "W01").Working!.Inputs.Select(i => $"{i.Name} {i.Value}")));

    // 36 in were measured: one part alone that is wider is one too much, whatever the other one is.
    [Fact]
    public void InAMeasuredOpeningOnePartAloneMayBeTooWide()
    {
        var job = Parts("37", "18").Forget("W01B", UnitFacts.PartWidth);
        var found = job.FaultOf(Check, "W01");
        Assert.Equal("The parts that are known make 37\" together; the opening is 36\" wide at the most.", found.Message);
        Assert.Equal(FieldRef.To(job.Unit("W01A").Item, UnitFacts.PartWidth), found.Mends);
    }

    [Fact]
    public void WithoutAnyWidthNothingIsKnownOfTheParts() =>
        Assert.Equal("width, top", Rough("90", "90").SayOf("W01", WindowFacts.RoughWidth, "").MissingOf(Check, "W01"));

    [Fact]
    public void OutsideThereIsWallToBothSides() => Assert.Empty(Check.Run(Parts("30", "30").SayOf("W01", WindowFacts.Mount, "outside").House));
}
