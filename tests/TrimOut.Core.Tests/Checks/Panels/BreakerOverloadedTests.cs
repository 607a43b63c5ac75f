using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class BreakerOverloadedTests
{
    private static readonly BreakerOverloaded Check = new();

    public static Example Finds => new(Own, j => j.SayOf("P1", PanelFacts.ElseOnBreaker, "8.7"));

    public static Example Passes => new(Own, j => j.SayOf("P1", PanelFacts.ElseOnBreaker, "8.6"));

    [Fact]
    public void ABreakerThatIsFullIsFineAndATenthMoreIsACaution()
    {
        Assert.IsType<Outcome.Fine>(OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "13").Of(Check, "P1"));
        Assert.Equal("Breaker 14 is rated 15 A; the panels on it draw 2 A, all else 13.1 A.",
            OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "13.1").FaultOf(Check, "P1").Message);
    }

    [Fact]
    public void AnotherPanelOnTheSameBreakerCounts()
    {
        var job = OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "12").WithPanel("P2")
            .SayOf("P2", PanelFacts.Board, "a").SayOf("P2", PanelFacts.Breaker, "14");
        Assert.Equal("Breaker 14 is rated 15 A; the panels on it draw 4 A, all else 12 A.", job.FaultOf(Check, "P1").Message);
        Assert.IsType<Outcome.Fine>(job.SayOf("P2", PanelFacts.Board, "B").Of(Check, "P1"));
    }

    [Fact]
    public void ABreakerThatIsPastItsRatingAlreadyDoesNotWaitForAnotherPanel()
    {
        var job = OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "13").WithPanel("P2")
            .SayOf("P2", PanelFacts.Board, "a").SayOf("P2", PanelFacts.Breaker, "14").SayOf("P2", PanelFacts.Type, "");
        Assert.IsType<Outcome.NotChecked>(job.Of(Check, "P1"));
        Assert.IsType<Outcome.Found>(job.SayOf("P1", PanelFacts.ElseOnBreaker, "13.1").Of(Check, "P1"));
    }

    [Theory]
    [InlineData("breaker", "breaker")]
    [InlineData("breaker-rating", "breaker rating")]
    [InlineData("else-on-breaker", "other load on breaker")]
    public void WhatNobodyWroteOfTheBreakerIsNotAPass(string fact, string missing) => Assert.Equal(missing,
        OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").SayOf("P1", FactTable.Find(ItemKind.Panel, fact)!, "").MissingOf(Check, "P1"));

    [Fact]
    public void APanelWithoutAnInputCurrentIsNotAPass() => Assert.Equal("input current of Invented supply in the kit",
        OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").SayOf("Invented supply", PanelTypeFacts.InputCurrent, "").MissingOf(Check, "P1"));

    [Fact]
    public void ThePanelThatSaysNoBoardIsTheOneToBeFilledIn()
    {
        var job = OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").WithPanel("P2").SayOf("P2", PanelFacts.Breaker, "14")
            .SayOf("P2", PanelFacts.BreakerRating, "15").SayOf("P2", PanelFacts.ElseOnBreaker, "0");
        var second = FieldRef.To(job.House.Panels[1].Item, PanelFacts.Board);
        Assert.Equal(second, Assert.IsType<Outcome.NotChecked>(job.Of(Check, "P1")).FillIn);
        Assert.Equal(second, Assert.IsType<Outcome.NotChecked>(job.Of(Check, "P2")).FillIn);
    }

    [Fact]
    public void APanelOnABreakerOfAnotherNumberNeedSayNoBoard() => Assert.IsType<Outcome.Fine>(
        OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").WithPanel("P2").SayOf("P2", PanelFacts.Breaker, "15").Of(Check, "P1"));

    [Fact]
    public void ARatingThatNoSuchCircuitHasIsReadAgain()
    {
        Assert.IsType<Outcome.Fine>(OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").SayOf("P1", PanelFacts.BreakerRating, "63").Of(Check, "P1"));
        Assert.Equal("Breaker 14 is written with 100 A; a circuit that feeds a panel has 63 A at the most as a rule.",
            OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").SayOf("P1", PanelFacts.BreakerRating, "100").FaultOf(Check, "P1").Message);
    }

    [Fact]
    public void OneBreakerHasOneRating()
    {
        var job = OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").WithPanel("P2").SayOf("P2", PanelFacts.Board, "A")
            .SayOf("P2", PanelFacts.Breaker, "14").SayOf("P2", PanelFacts.BreakerRating, "15");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "P1"));
        Assert.Equal("Breaker 14 is written with 15 A at P1 and with 10 A at P2: one breaker has one rating.",
            job.SayOf("P2", PanelFacts.BreakerRating, "10").FaultOf(Check, "P1").Message);
        Assert.IsType<Outcome.Fine>(job.SayOf("P2", PanelFacts.Board, "B").Of(Check, "P1"));
    }

    private static TestJob OnBreaker() => new TestJob().WithPanel().SayOf("Invented supply", PanelTypeFacts.InputCurrent, "2")
        .SayOf("P1", PanelFacts.Board, "A").SayOf("P1", PanelFacts.Breaker, "14").SayOf("P1", PanelFacts.BreakerRating, "15");

    [Fact]
    public void TwoPanelsOnBreakersOfOneNumberOfWhichOneSaysNoBoardAreNotAPass()
    {
        var job = OnBreaker().SayOf("P1", PanelFacts.ElseOnBreaker, "0").WithPanel("P2").SayOf("P2", PanelFacts.Breaker, "14");
        Assert.Equal("board", job.MissingOf(Check, "P1"));
        Assert.IsType<Outcome.Fine>(job.SayOf("P2", PanelFacts.Board, "A").Of(Check, "P1"));
    }

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => new TestJob().WithPanel().Add(ItemKind.PanelType, "Cellar supply").SayOf("P1", PanelFacts.Type, "Cellar supply")
        .SayOf("Cellar supply", PanelTypeFacts.InputCurrent, "1.4").SayOf("P1", PanelFacts.Board, "Cellar").SayOf("P1", PanelFacts.Breaker, "3")
        .SayOf("P1", PanelFacts.BreakerRating, "10");
}
