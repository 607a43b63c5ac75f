using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class TailLongerThanLeftTests
{
    private static readonly TailLongerThanLeft Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailFound, "52\""));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailFound, "35\""));

    // 36 in were left: 914.4 mm.
    [Fact]
    public void TwentyFiveMillimetresMoreAreTheTapes() => Jobs.Roughed().Say("W01", RunFacts.TailFound, "939.4 mm").Fine(Check, "W01");

    [Fact]
    public void AMillimetreMoreIsACaution() => Assert.Contains("36\" was left: it is another cable",
        Jobs.Roughed().Say("W01", RunFacts.TailFound, "940.4 mm").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void ATailThatNobodyFoundIsNotAPass() => Jobs.Roughed().Lacks(Check, "W01", "tail found");

    [Fact]
    public void ATailThatNobodyLeftIsNotAPass() =>
        Jobs.Roughed().Forget("W01", RunFacts.TailAtWindow).Say("W01", RunFacts.TailFound, "36\"").Lacks(Check, "W01", "tail at window");
}
