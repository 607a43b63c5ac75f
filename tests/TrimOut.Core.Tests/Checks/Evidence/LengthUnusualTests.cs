using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

/// <summary>What lengths of a house usually are: common practice, no published source.</summary>
public class LengthUnusualTests
{
    private static readonly LengthUnusual Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", WindowFacts.Depth, "3 ft"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", WindowFacts.Depth, "3 in"));

    /// <summary>A length that nothing holds between two others passes in silence whatever is typed: a new one gets its line.</summary>
    [Fact]
    public void EveryLengthThatThereIsHasWhatIsUsualOfIt()
    {
        var known = UsualLengths.All.Select(u => (Fact)u.Fact).Concat(UsualValues.All.Select(u => u.Fact)).ToList();
        Assert.Empty(FactTable.All.OfType<Fact<Length>>().Except(known).Select(f => $"{f.Subject} {f.Name}"));
        Assert.Equal(known.Count, known.Distinct().Count());
    }

    [Fact]
    public void WhatIsUsualCanBeTypedAndWhyItIsUsualIsSaid() => Assert.All(UsualLengths.All, usual =>
    {
        Assert.True(usual.Least < usual.Most, usual.Fact.Name);
        Assert.True(usual.Fact.ReadTyped(usual.Fact.Show(usual.Most, House.Empty), House.Empty).Ok, usual.Fact.Name);
        Assert.True(usual.Fact.ReadTyped(usual.Fact.Show(usual.Least, House.Empty), House.Empty).Ok, usual.Fact.Name);
        Assert.NotEmpty(usual.Why.English);
    });

    [Theory]
    [InlineData("24", true)]
    [InlineData("24 1/16", false)]
    [InlineData("1/2", true)]
    [InlineData("7/16", false)]
    [InlineData("0", false)]
    [InlineData("3 ft", false)]
    public void ADepthThatNoWallHasIsACaution(string depth, bool usual) =>
        Assert.Equal(usual, Found(Jobs.Walked().Say("W01", WindowFacts.Depth, depth)).Length == 0);

    [Fact]
    public void WithoutARevealAnOutsideMountHasNoDepth() =>
        Assert.Empty(Found(Jobs.Walked().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.Depth, "0")));

    [Fact]
    public void ItIsSaidWithWhatIsUsualAndWhy() => Assert.Equal(["Depth: 36\". Usual is 1/2\" to 24\": walls with their finish are so thick."],
        Found(Jobs.Walked().Say("W01", WindowFacts.Depth, "3 ft")));

    [Fact]
    public void ALegIsNamedByItsNumber() => Assert.Equal(["Leg 1, length: 360'-0\". Usual is 0'-3\" to 300'-0\": there is so much of it in a house."],
        Found(Jobs.Walked().Legs("W01", ("360 ft", CablePlace.InWall))));

    [Fact]
    public void LengthsOfTheHouseOfTheRunAndOfTheUnitAreHeldToo()
    {
        var job = Jobs.Walked().SayOf("Test house", HouseFacts.SpreadLimit, "2").Say("W01", RunFacts.MainsDistance, "30 ft")
            .Say("W01", UnitFacts.Setback, "20");
        Assert.Equal(["3 measures may differ by: 2\"", "Bracket setback: 20\"", "From mains: 360\""], Found(job).Select(f => f.Split('.')[0]));
    }

    [Fact]
    public void EachIsReportedInThePhaseOfItsLength() => Assert.Equal(Phase.Measure,
        Assert.Single(Check.Run(Jobs.Walked().Say("W01", WindowFacts.Depth, "3 ft").House), r => r.Outcome is Outcome.Found).Check.Phase);

    [Fact]
    public void WhatIsNotMeasuredYetIsNotUnusual() => Assert.Empty(Found(new TestJob().Window("W01")));

    [Fact]
    public void AWindowThatIsLeftOutIsNotAsked() => Assert.Empty(
        Found(Jobs.Walked().Say("W01", WindowFacts.Depth, "3 ft").Say("W01", WindowFacts.Covered, "no")));

    private static string[] Found(TestJob job) =>
        [.. Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Select(f => f.Message.In(job.House))];

    [Fact]
    public void WhatIsUsualIsFine() => Jobs.Walked().Fine(Check, "W01");

    // 20,000 ft are usual at the most.
    [Theory]
    [InlineData("20000 ft", 0)]
    [InlineData("20001 ft", 1)]
    public void TheCableOnHandIsHeldToo(string onHand, int found) =>
        Assert.Equal(found, Found(new TestJob().SayOf("16/2", CableTypeFacts.OnHand, onHand)).Length);

    [Fact]
    public void EachLeadsToItsOwnFieldAndSaysWhatToDo()
    {
        var job = Jobs.Walked().Legs("W01", ("60 ft", CablePlace.InWall), ("360 ft", CablePlace.InWall)).Say("W01", WindowFacts.Depth, "3 ft");
        var found = Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().ToList();
        Assert.Equal([FieldRef.To(job.House.FindTag("W01")!.Item, WindowFacts.Depth), FieldRef.To(job.Run("W01").Legs[1].Item, LegFacts.Length)],
            found.Select(f => f.Mends));
        Assert.StartsWith("Leg 2, length: 360'-0\"", found[1].Message.In(job.House), StringComparison.Ordinal);
        Assert.All(found, f => Assert.StartsWith("Measure it again.", f.Mend.In(job.House), StringComparison.Ordinal));
    }

    // 2,500 ft are usual at the most.
    [Theory]
    [InlineData("2500 ft", 0)]
    [InlineData("2501 ft", 1)]
    public void WhatIsLeftInABoxIsHeldToo(string left, int found) =>
        Assert.Equal(found, Found(new TestJob().Add(ItemKind.Box, "A").SayOf("A", BoxFacts.Left, left)).Length);
}
