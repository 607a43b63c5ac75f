using Microsoft.Extensions.Time.Testing;

namespace TrimOut.Screens.Tests;

public class FaultTests
{
    [Fact]
    public void AFaultIsNotedWithoutWhatSomebodyTyped()
    {
        var desk = new TestDesk(new FakeTimeProvider());
        var said = OpenScreens.Guarded(desk, () => throw new InvalidOperationException("14 Ridge Lane"));
        Assert.Contains("Every change that the screen called saved is saved.", said, StringComparison.Ordinal);
        Assert.Contains("fault.txt", said, StringComparison.Ordinal);
        Assert.Contains(nameof(AFaultIsNotedWithoutWhatSomebodyTyped), desk.FaultNoted, StringComparison.Ordinal);
        Assert.DoesNotContain("Ridge", desk.FaultNoted, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutAFaultThereIsNoNote()
    {
        var desk = new TestDesk(new FakeTimeProvider());
        Assert.Null(OpenScreens.Guarded(desk, () => { }));
        Assert.Null(desk.FaultNoted);
    }
}
