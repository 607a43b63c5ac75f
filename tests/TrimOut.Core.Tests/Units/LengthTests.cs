using CsCheck;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class LengthTests
{
    // UnitsNet is an independent library of units.
    [Fact]
    public void ConversionsAgreeWithAnIndependentLibrary() => Gen.Int[0, 400 * 64].Sample(k =>
    {
        var (ours, theirs) = (Length.FromInches(0, k, 64), UnitsNet.Length.FromInches(k / 64.0));
        Assert.Equal(theirs.Millimeters, (double)ours.Millimetres, 1e-9);
        Assert.Equal(theirs.Meters, (double)ours.Metres, 1e-12);
        Assert.Equal(theirs.Feet, (double)ours.Feet, 1e-11);
        Assert.Equal(ours, Length.FromMillimetres(ours.Millimetres));
    });

    [Fact]
    public void ASixteenthIs127Eightieths() => Assert.Equal(127m / 80, Length.FromInches(0, 1, 16).Millimetres);

    [Fact]
    public void OnlyFractionsOfATapeAreMade() => Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(0, 1, 3));

    [Fact]
    public void RoundingDownFitsAndRoundingUpCovers() => Gen.Select(Gen.Long[-1_000_000_000, 10_000_000_000], Gen.Long[1, 100_000_000]).Sample((n, s) =>
    {
        var (length, step) = (Length.FromNanometres(n), Length.FromNanometres(s));
        var (down, up, near) = (length.RoundDown(step), length.RoundUp(step), length.RoundNearest(step));
        Assert.True(down <= length && length <= up && up - down <= step);
        Assert.True(near == down || near == up);
        Assert.Equal(0, down.Nanometres % s);
        Assert.True((near - length).Abs() * 2 <= step);
    });

    [Fact]
    public void AStepOfNothingIsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(1).RoundDown(Length.Zero));
}
