using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class PlumbWidthShortTests
{
    private static readonly PlumbWidthShort Check = new();

    public static Example Finds => new(() => Leaning(), j => j.SayOf("Roller", CoveringKindFacts.DeductionInside, "1/8\""));

    public static Example Passes => new(() => Leaning(), j => j.SayOf("Roller", CoveringKindFacts.DeductionInside, "3/8\""));

    // 36 x 60 in, its top 1/4 in to one side (cosine rule): 35 3/4 in hang plumb.
    [Fact]
    public void WhatTheMakerTakesOffCoversALeanOfAsMuch() => Leaning().SayOf("Roller", CoveringKindFacts.DeductionInside, "6.351 mm").Fine(Check, "W01");

    [Fact]
    public void JustLessIsAStop()
    {
        var found = Leaning().SayOf("Roller", CoveringKindFacts.DeductionInside, "3/16").Fault(Check, "W01");
        Assert.Equal("Ordered 36\" wide it is made 35 13/16\" wide; 35 3/4\" hang plumb between these jambs.", found.Message);
        Assert.Equal("Order 35 7/8\", shim the trim, or mount it outside.", found.Mend);
        found = Leaning().SayOf("Roller", CoveringKindFacts.DeductionInside, "3/16").Say("W01", UnitFacts.OrderedOn, "2026-05-01").Fault(Check, "W01");
        Assert.StartsWith("Call the maker today", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheMendSaysMends() =>
        Leaning().SayOf("Roller", CoveringKindFacts.DeductionInside, "3/16").Say("W01", UnitFacts.OrderWidth, "35 7/8").Fine(Check, "W01");

    [Fact]
    public void AMadeWidthHasNothingTakenOff() =>
        Assert.StartsWith("Ordered 36\" wide it is made 36\" wide",
            Leaning().SayOf("Roller", CoveringKindFacts.OrderedInside, "made").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void OutsideNothingHasToHangBetweenJambs() => Leaning().Say("W01", WindowFacts.Mount, "outside").Silent(Check, "W01");

    [Fact]
    public void ASheetThatDoesNotSayWhatIsOrderedIsNotAPass() =>
        Leaning().SayOf("Roller", CoveringKindFacts.OrderedInside, "").Lacks(Check, "W01", "ordered width, inside of Roller in the kit");

    [Fact]
    public void ASheetThatDoesNotSayWhatComesOffIsNotAPass() =>
        Leaning().SayOf("Roller", CoveringKindFacts.DeductionInside, "").Lacks(Check, "W01", "deduction, inside of Roller in the kit");

    [Theory]
    [InlineData("-1/4", "A length can't be negative.")]
    [InlineData("3", "3\" is too long: the most that makes sense here is 2\". Did you mean 3 mm?")]
    public void AFigureThatNoSheetHasIsRefusedWithTheReason(string typed, string reason) =>
        Assert.Equal(reason, CoveringKindFacts.DeductionInside.ReadTyped(typed, Jobs.Measured().House).Reason);

    private static TestJob Leaning() => Jobs.Ordered().Say("W01", WindowFacts.DiagonalDown, "1780.538197 mm")
        .Say("W01", WindowFacts.DiagonalUp, "1774.004097 mm");

    [Fact]
    public void WhileADiagonalIsMisreadNothingIsWorkedOutOfIt()
    {
        var job = Jobs.Ordered().Say("W01", WindowFacts.DiagonalDown, "78\"");
        job.Fault(new Core.Checks.Measures.DiagonalsOffSides(), "W01");
        job.Lacks(Check, "W01", "diagonal, top left");
        job.Lacks(new OrderOffMeasures(), "W01", "diagonal, top left");
    }

    [Fact]
    public void InASquareOpeningItsWholeWidthHangsPlumb()
    {
        Jobs.Ordered().SayOf("Roller", CoveringKindFacts.OrderedInside, "made").Fine(Check, "W01");
        Leaning().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).SayOf("Roller", CoveringKindFacts.DeductionInside, "0").Silent(Check, "W01A");
    }

    [Fact]
    public void WidthsAreAskedForBeforeDiagonals()
    {
        var job = Jobs.Walked().Say("W01", UnitFacts.OrderWidth, "36");
        job.Lacks(Check, "W01", "width, top");
        Jobs.Ordered().Forget("W01", WindowFacts.DiagonalUp).Lacks(Check, "W01", "diagonal, top left");
    }

    [Theory]
    [InlineData("made", "the made width")]
    [InlineData("opening", "the opening")]
    public void TheWorkingTellsWhatIsOrdered(string ordered, string told) => Assert.Contains(("ordered width is", told),
        Leaning().SayOf("Roller", CoveringKindFacts.OrderedInside, ordered).SayOf("Roller", CoveringKindFacts.DeductionInside, "3/16")
            .Fault(Check, "W01").Working!.Inputs);
}
