using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class SheetValueUnusualTests
{
    private static readonly SheetValueUnusual Check = new();

    public static Example Finds => new(() => new TestJob(), j => j.SayOf("Roller", CoveringKindFacts.PairHold, "70"));

    public static Example Passes => new(() => new TestJob(), j => j.SayOf("Roller", CoveringKindFacts.PairHold, "11"));

    /// <summary>By value: the limit, and the nearest that is past it.</summary>
    /// <remarks>8 A is what NFPA 70-2017 chapter 9 table 11(B) leaves one output up to 30 V; the others are common practice, no published source.</remarks>
    [Theory]
    [InlineData("starting-current", "8", "8.001")]
    [InlineData("running-current", "0.05", "0.049")]
    [InlineData("pair-hold", "30", "30.001")]
    [InlineData("setback", "6", "6 1/64")]
    [InlineData("deduction-inside", "1", "1 1/64")]
    [InlineData("motor-volts", "48", "48.001")]
    [InlineData("least-volts", "2", "1.999")]
    [InlineData("tube", "1/2", "31/64")]
    [InlineData("stack-share", "0.4", "0.401")]
    public void AValueOnTheLimitIsFineAndPastItACaution(string fact, string usual, string unusual)
    {
        var said = FactTable.Of(ItemKind.CoveringKind).Single(f => f.Name == fact);
        Assert.IsType<Outcome.Fine>(new TestJob().SayOf("Roller", said, usual).Of(Check, "Roller"));
        Assert.IsType<Outcome.Found>(new TestJob().SayOf("Roller", said, unusual).Of(Check, "Roller"));
    }

    /// <summary>Common practice, no published source: low-voltage cable is 22 to 12 AWG, and its metric neighbours.</summary>
    [Theory]
    [InlineData("0", false)]
    [InlineData("2 AWG", false)]
    [InlineData("11", false)]
    [InlineData("12", true)]
    [InlineData("22", true)]
    [InlineData("23", false)]
    [InlineData("0.25 mm2", false)]
    [InlineData("0.5 mm2", true)]
    [InlineData("4 mm2", true)]
    [InlineData("6 mm2", false)]
    public void AConductorThatNoSuchCableHasIsACaution(string size, bool fine) =>
        Assert.Equal(fine, new TestJob().SayOf("16/2", CableTypeFacts.Conductor, size).Of(Check, "16/2") is Outcome.Fine);

    [Fact]
    public void OneValueIsSaidWithWhatIsUsual() => Assert.Equal("Hold to pair: 70 s. Usual is 0 s to 30 s.",
        new TestJob().SayOf("Roller", CoveringKindFacts.PairHold, "70").FaultOf(Check, "Roller").Message);

    [Fact]
    public void SeveralAreAllNamedSoThatAWaiverOfOneIsNoneOfTheOther()
    {
        var found = new TestJob().SayOf("Roller", CoveringKindFacts.PairHold, "70").SayOf("Roller", CoveringKindFacts.Setback, "15")
            .FaultOf(Check, "Roller");
        Assert.Equal("2 values are far from usual: bracket setback 15\", hold to pair 70 s.", found.Message);
    }

    [Theory]
    [InlineData("middle-screw")]
    [InlineData("centre-from")]
    public void WhatAKindDoesNotHaveIsNothingUnusual(string fact) =>
        Assert.IsType<Outcome.Fine>(new TestJob().SayOf("Roller", FactTable.Find(ItemKind.CoveringKind, fact)!, "none").Of(Check, "Roller"));

    [Fact]
    public void APartOfBlanksIsNotJudged() => Assert.DoesNotContain(Check.Run(Decisions.BlankHouse.With().House), r => r.Subject.Kind == ItemKind.HubType);

    [Fact]
    public void WhatIsUsualCanBeTyped() => Assert.All(UsualValues.All, usual => Assert.All(new[] { usual.Least, usual.Most }, value =>
    {
        Assert.True(usual.Holds(value));
        Assert.True(usual.Fact.DecodeAny(usual.Fact.WriteAny(value)).Ok, usual.Fact.Label);
    }));

    /// <summary>What can't be at all is refused where it is typed, and does not count where it comes with a file.</summary>
    [Theory]
    [InlineData(ItemKind.PanelType, "supply", "2400")]
    [InlineData(ItemKind.PanelType, "outputs", "-3")]
    [InlineData(ItemKind.CoveringKind, "deduction-inside", "3000 mm")]
    [InlineData(ItemKind.CoveringKind, "setback", "-10 mm")]
    [InlineData(ItemKind.CoveringKind, "pair-hold", "9000")]
    [InlineData(ItemKind.CableType, "longest-run", "900000 mm")]
    [InlineData(ItemKind.HeadCover, "depth", "4000 mm")]
    public void WhatCanNotBeIsRefused(ItemKind kind, string fact, string value)
    {
        var said = FactTable.Of(kind).Single(f => f.Name == fact);
        Assert.False(said.ReadTyped(value, House.Empty).Ok);
        Assert.False(said.DecodeAny(value).Ok);
        Assert.False(PartText.Read($"trimout-part: 1\nkind: {KebabCase.Of(kind)}\nname: P\n{fact}: {value}\n").Ok);
        var draft = new Draft("From a file").New(kind, House.RootId, out var id).PutStored(id, fact, value);
        var house = HouseLog.Preview(House.Empty, draft);
        Assert.Null(house.Find(id)!.Latest(said)?.Value);
    }
}
