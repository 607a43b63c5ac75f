using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class DeliveredSizeOffTests
{
    private static readonly DeliveredSizeOff Check = new();

    public static Example Finds => new(() => Jobs.Ordered(),
        j => j.Say("W01", UnitFacts.DeliveredWidth, "36 1/8\"").Say("W01", UnitFacts.DeliveredHeight, "60\""));

    public static Example Passes => new(() => Jobs.Ordered(),
        j => j.Say("W01", UnitFacts.DeliveredWidth, "36\"").Say("W01", UnitFacts.DeliveredHeight, "60\""));

    [Theory]
    [InlineData("36 1/16", "60")]
    [InlineData("36", "59 15/16")]
    public void ASixteenthIsFine(string width, string height) => Came(width, height).Fine(Check, "W01");

    [Theory]
    [InlineData("36 1/8", "60", "delivered-width")]
    [InlineData("36", "59 7/8", "delivered-height")]
    public void MoreIsAStop(string width, string height, string field)
    {
        var found = Came(width, height).Fault(Check, "W01");
        Assert.Equal($"36\" x 60\" was ordered; {width}\" x {height}\" came.", found.Message);
        Assert.Equal(field, found.Mends.Field);
    }

    [Fact]
    public void ABoxThatNobodyMeasuredIsNotAPass() => Jobs.Ordered().Lacks(Check, "W01", "delivered width");

    private static TestJob Came(string width, string height) =>
        Jobs.Ordered().Say("W01", UnitFacts.DeliveredWidth, width).Say("W01", UnitFacts.DeliveredHeight, height);
}
