using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class MainsTooNearTests
{
    private static readonly MainsTooNear Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.MainsDistance, "1\"").Say("W01", RunFacts.MainsSheathed, "no"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.MainsDistance, "1\"").Say("W01", RunFacts.MainsSheathed, "yes"));

    // 50 mm (2 in): NFPA 70-2017, 725.136(I).
    [Fact]
    public void FiftyMillimetresAreFine() => Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "50 mm").Fine(Check, "W01");

    [Fact]
    public void ALittleLessBesideOpenMainsIsACaution() =>
        Assert.Equal("The cable comes within 1 15/16\" of mains wiring that is not sheathed; 2 in (50 mm) are asked for.",
            Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "49.999999 mm").Say("W01", RunFacts.MainsSheathed, "no").Fault(Check, "W01").Message);

    [Fact]
    public void ACableThatTouchesIsAnotherChecks() =>
        Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "0").Say("W01", RunFacts.MainsSheathed, "no").Silent(Check, "W01");

    // 725.136(I): sheathed power cable beside it needs no distance, a frequent false alarm.
    [Fact]
    public void BesideSheathedMainsNoDistanceIsAskedFor() =>
        Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "0").Say("W01", RunFacts.MainsSheathed, "yes").Fine(Check, "W01");

    [Fact]
    public void NearMainsThatMayOrMayNotBeSheathedIsNotAPass() => Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "1").Lacks(Check, "W01", "mains sheathed");

    [Fact]
    public void AnUnknownDistanceIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.MainsDistance).Lacks(Check, "W01", "from mains");

    [Fact]
    public void TheCableIsMovedOnlyWhileTheWallIsOpen()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "1").Say("W01", RunFacts.MainsSheathed, "no");
        Assert.StartsWith("Move the cable away", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("The wall is closed", job.Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }
}
