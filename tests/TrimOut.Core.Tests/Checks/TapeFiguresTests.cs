using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>Sentences show no more of a length than a tape of the house has.</summary>
public class TapeFiguresTests
{
    private static readonly Message One = new("It is {0}.");
    private static readonly Message Two = new("It is {0}, and {1} are asked for.");

    [Theory]
    [InlineData(DisplayUnits.Inches, 10.0, "It is 3/8\".")]
    [InlineData(DisplayUnits.Millimetres, 9.525, "It is 10 mm.")]
    [InlineData(DisplayUnits.Inches, 0.3, "It is 1/16\".")]
    [InlineData(DisplayUnits.Millimetres, 0.0, "It is 0 mm.")]
    public void ALengthReadsToTheNearestMarkAndWhatIsThereIsNeverNothing(DisplayUnits units, decimal millimetres, string words) =>
        Assert.Equal(words, One.With(Length.FromMillimetres(millimetres)).In(new TestJob(units).House));

    [Theory]
    [InlineData(DisplayUnits.Inches, "It is 7/16\".", "It is 3/8\".")]
    [InlineData(DisplayUnits.Millimetres, "It is 11 mm.", "It is 10 mm.")]
    public void WhatMustBeReachedGoesUpAndWhatMustNotBePassedGoesDown(DisplayUnits units, string up, string down)
    {
        var (house, length) = (new TestJob(units).House, Length.FromMillimetres(10.2m));
        Assert.Equal(up, One.With(Arg.AtLeast(length)).In(house));
        Assert.Equal(down, One.With(Arg.AtMost(length)).In(house));
    }

    [Fact]
    public void TwoLengthsThatDifferByLessThanAMarkAreToldExactly() => Assert.Equal("It is 2 31/64\", and 2 1/2\" are asked for.",
        Two.With(Length.FromInches(2, 31, 64), Length.FromInches(2, 1, 2)).In(new TestJob().House));

    [Fact]
    public void AHouseInMillimetresBeginsWithWholeOnes()
    {
        var house = new TestJob(DisplayUnits.Millimetres).House;
        var lengths = house.Items.Values.SelectMany(i => FactTable.Of(i.Kind).OfType<Fact<Length>>().Select(f => (Fact: f, Length: i.Get(f))))
            .Where(l => l.Length is not null && l.Fact != CoveringKindFacts.FabricThickness).ToList();
        Assert.NotEmpty(lengths);
        Assert.All(lengths, l => Assert.Equal(l.Length!.Value.RoundNearest(TapeMark.Millimetre), l.Length));
    }
}
