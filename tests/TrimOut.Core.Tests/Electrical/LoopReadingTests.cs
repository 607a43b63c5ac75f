using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class LoopReadingTests
{
    [Fact]
    public void ATenthAndTheContactsAreTolerated()
    {
        Assert.True(LoopReading.Agrees(new Resistance(1.2m), new Resistance(1)));
        Assert.False(LoopReading.Agrees(new Resistance(1.2001m), new Resistance(1)));
    }

    [Fact]
    public void OpenAgreesWithOpenOnly()
    {
        Assert.True(LoopReading.Agrees(LoopReading.Open, LoopReading.Open));
        Assert.False(LoopReading.Agrees(LoopReading.Open, new Resistance(1)));
        Assert.False(LoopReading.Agrees(new Resistance(1), LoopReading.Open));
    }
}
