using TrimOut.Core.Decisions;

namespace TrimOut.Core.Tests.Decisions;

public class NearNamesTests
{
    // Common practice, no published source: what was typed wrong in rooms of houses, and what was meant to differ.
    [Theory]
    [InlineData("Kichen", "Kitchen")]
    [InlineData("Kitchne", "Kitchen")]
    [InlineData("kitchenn", "Kitchen")]
    [InlineData("Uper", "Upper")]
    [InlineData("Bed room", "Bedroom")]
    [InlineData("Dining rom", "Dining room")]
    [InlineData("Mastre bedrom", null)]
    [InlineData("Breakfsat", "Breakfast")]
    [InlineData("Bath 2", null)]
    [InlineData("Bath2", null)]
    [InlineData("Closet S", null)]
    [InlineData("South bath", null)]
    [InlineData("Den", null)]
    public void ASlipOfThePenIsNearAndAnotherNameIsNot(string typed, string? near) =>
        Assert.Equal(near, NearNames.Of(typed, ["Kitchen", "Upper", "Bedroom", "Dining room", "Master bedroom", "Breakfast", "Bath 1", "Bath1", "Closet N",
            "North bath"]));

    [Fact]
    public void ANameThatIsThereIsNearNothing() => Assert.Null(NearNames.Of("hall", ["Hill", "Hall"]));
}
