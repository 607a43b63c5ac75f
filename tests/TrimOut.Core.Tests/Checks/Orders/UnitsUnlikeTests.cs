using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class UnitsUnlikeTests
{
    private static readonly UnitsUnlike Check = new();

    public static Example Finds => new(() => Two(), j => j.Say("W01B", UnitFacts.Fabric, "Basket weave"));

    public static Example Passes => new(() => Two(), j => j.Say("W01B", UnitFacts.Fabric, "Linen weave"));

    [Fact]
    public void UnitsThatAreAlikeAreFineHoweverTheirFabricIsWritten() => Two().Say("W01B", UnitFacts.Fabric, "LINEN WEAVE").Fine(Check, "W01A");

    [Theory]
    [InlineData("fabric", "Twill", "Side by side, and not of one fabric: W01A Linen weave, W01B Twill.")]
    [InlineData("colour", "Slate", "Side by side, and not of one color: W01A Chalk, W01B Slate.")]
    [InlineData("opacity", "blackout", "Side by side, and not of one opacity: W01A sheer, W01B blackout.")]
    [InlineData("head-cover", "Valance", "Side by side, and not of one head cover: W01A None, W01B Valance.")]
    [InlineData("kind", "Cellular", "Side by side, and not of one kind: W01A Roller, W01B Cellular.")]
    public void WhatDiffersSideBySideIsACaution(string fact, string other, string message) => Assert.Equal(message,
        Two().Say("W01B", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!, other).Fault(Check, "W01A").Message);

    [Fact]
    public void EachThingThatDiffersIsAFindingOfItsOwn() => Assert.Equal(2,
        Check.Run(Two().Say("W01B", UnitFacts.Fabric, "Twill").Say("W01B", UnitFacts.Colour, "Slate").House).Count(r => r.Outcome is Outcome.Found));

    [Fact]
    public void WhatDiffersIsToldBeforeAllOfItIsChosen() => Two().Forget("W01A", UnitFacts.Colour).Say("W01B", UnitFacts.Kind, "Cellular").Fault(Check, "W01A");

    [Fact]
    public void WhatIsNotChosenYetIsNotAPass() => Two().Forget("W01B", UnitFacts.Colour).Lacks(Check, "W01A", "color");

    [Fact]
    public void TwoAtOnePlaceDoNotHangSideBySide() =>
        Two().Say("W01B", UnitFacts.Opacity, "blackout").Say("W01B", UnitFacts.Position, "1").Fine(Check, "W01A");

    [Fact]
    public void OneFabricInOneColorHasOneOpacityInTheWholeHouse()
    {
        var job = Two().Window("W02");
        job.Say("W02", UnitFacts.Fabric, "linen  weave").Say("W02", UnitFacts.Colour, "chalk").Say("W02", UnitFacts.Opacity, "sheer").Silent(Check, "W02");
        Assert.Equal("linen  weave in chalk is blackout at W02 and sheer at W01A: one fabric has one opacity.",
            job.Say("W02", UnitFacts.Opacity, "blackout").Fault(Check, "W02").Message);
        Assert.Equal(3, Check.Run(job.House).Count(r => r.Outcome is Outcome.Found));
        job.Say("W02", UnitFacts.Colour, "Slate").Silent(Check, "W02");
        job.Say("W02", UnitFacts.Colour, "Chalk").Say("W02", UnitFacts.Fabric, "Linen weave, blackout").Silent(Check, "W02");
    }

    [Fact]
    public void OneUnitAloneHasNoNeighbour() => Jobs.Walked().Silent(Check, "W01");

    [Fact]
    public void OnceItIsOrderedTheMakerIsCalled()
    {
        var job = Two().Say("W01B", UnitFacts.Fabric, "Twill");
        Assert.StartsWith("Choose one for all units of W01;", job.Fault(Check, "W01A").Mend, StringComparison.Ordinal);
        Assert.Contains("call the maker today", job.Say("W01A", UnitFacts.OrderedOn, "2026-03-02").Fault(Check, "W01A").Mend, StringComparison.Ordinal);
    }

    private static TestJob Two()
    {
        var job = Jobs.Walked().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.Kind, "Roller");
        foreach (var tag in new[] { "W01A", "W01B" })
        {
            job.Say(tag, UnitFacts.Fabric, "Linen weave").Say(tag, UnitFacts.Colour, "Chalk").Say(tag, UnitFacts.Opacity, "sheer")
                .Say(tag, UnitFacts.HeadCover, "None");
        }
        return job;
    }

    [Fact]
    public void TheOneThatDiffersIsWhatToChange()
    {
        var job = Two().Say("W01B", UnitFacts.Fabric, "Twill");
        Assert.Equal(Core.Checks.FieldRef.To(job.Unit("W01B").Item, UnitFacts.Fabric), job.Fault(Check, "W01A").Mends);
    }

    [Fact]
    public void OfSeveralBlanksTheFirstIsAskedForAndOfTheUnitThatHasIt()
    {
        var job = Two().Forget("W01B", UnitFacts.Colour).Forget("W01A", UnitFacts.HeadCover);
        job.Lacks(Check, "W01A", "color");
        Assert.Equal(Core.Checks.FieldRef.To(job.Unit("W01B").Item, UnitFacts.Colour),
            ((Outcome.NotChecked)job.Judge(Check, "W01A")).FillIn);
    }

    [Theory]
    [InlineData("label")]
    [InlineData("hung")]
    public void OnceOneOfThemIsThereTheOwnerAgreesOrItIsOrderedAgain(string by)
    {
        var job = Two().Say("W01B", UnitFacts.Fabric, "Twill").Say("W01A", UnitFacts.OrderedOn, "2026-03-02");
        job = by == "hung" ? job.Mark("W01B", "clicked-in") : job.Say("W01B", UnitFacts.BoxLabel, "W01B");
        Assert.StartsWith("Have the owner agree", job.Fault(Check, "W01A").Mend, StringComparison.Ordinal);
    }
}
