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
    public void LessIsOffLikeMore()
    {
        Assert.True(LoopReading.Agrees(new Resistance(0.8m), new Resistance(1)));
        Assert.False(LoopReading.Agrees(new Resistance(0.7999m), new Resistance(1)));
        Assert.True(LoopReading.Agrees(new Resistance(0.95m), new Resistance(1), new Resistance(0.05m)));
        Assert.False(LoopReading.Agrees(new Resistance(0.9499m), new Resistance(1), new Resistance(0.05m)));
    }

    [Fact]
    public void OpenAgreesWithOpenOnly()
    {
        Assert.True(LoopReading.Agrees(LoopReading.Open, LoopReading.Open));
        Assert.False(LoopReading.Agrees(LoopReading.Open, new Resistance(1)));
        Assert.False(LoopReading.Agrees(new Resistance(1), LoopReading.Open));
    }
}
