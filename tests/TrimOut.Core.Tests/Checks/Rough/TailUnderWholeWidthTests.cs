using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class TailUnderWholeWidthTests
{
    private static readonly TailUnderWholeWidth Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "30\""));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "36\""));

    [Fact]
    public void ATailAsLongAsTheWindowIsFine() => Jobs.Roughed().Fine(Check, "W01");

    [Fact]
    public void ATailALittleShorterIsACaution() =>
        Assert.Equal("The tail is 35 63/64\"; the width is 36\".", Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "35 63/64").Fault(Check, "W01").Message);

    [Fact]
    public void HalfTheWindowIsStillThisCautionAndLessIsTheOther()
    {
        Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "18").Fault(Check, "W01");
        Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "17").Silent(Check, "W01");
    }

    [Fact]
    public void AnUnknownTailIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.TailAtWindow).Lacks(Check, "W01", "tail at window");
}
