using TrimOut.Core.History;

namespace TrimOut.Core.Tests.History;

/// <summary>A device numbers its changes from 1 without a gap, as docs/house-file.md says.</summary>
public class NumberGapsTests
{
    private static Change By(string device, long number, params ChangeId[] over) =>
        new(new ChangeId(device, number), 1, default, "b", "w", [new Edit.Put("w", "tag", "W01", [.. over])]);

    private static IEnumerable<string> Which(params Change[] changes) => NumberGaps.In(changes).Select(g => g.Which);

    [Fact]
    public void NumbersThatFollowOnOneAnotherHaveNoGapInWhateverOrderTheyCome() =>
        Assert.Empty(NumberGaps.In([By("a", 2), By("b", 1), By("a", 1), By("a", 3)]));

    [Fact]
    public void OneThatIsMissingIsNamed()
    {
        var gap = Assert.Single(NumberGaps.In([By("a", 1), By("a", 3)]));
        Assert.Equal(new NumberGap("a", 2, 2), gap);
        Assert.Equal((1, "a:2", "change a:2 is missing."), (gap.Count, gap.Which, gap.Sentence));
    }

    [Fact]
    public void SeveralThatAreMissingAreNamedFromTheFirstToTheLast()
    {
        var gap = Assert.Single(NumberGaps.In([By("a", 5), By("a", 1)]));
        Assert.Equal((3, "a:2 to a:4", "changes a:2 to a:4 are missing."), (gap.Count, gap.Which, gap.Sentence));
    }

    [Fact]
    public void ADeviceThatDoesNotBeginWithOneLacksItsFirst() => Assert.Equal(["a:1", "b:1 to b:2"], Which(By("b", 3), By("a", 2)));

    [Fact]
    public void WhatAnotherChangeNamesIsMissingUpToThere()
    {
        Assert.Equal(["a:3 to a:7"], Which(By("a", 1), By("a", 2), By("b", 1, new ChangeId("a", 7), new ChangeId("a", 4))));
        Assert.Equal(["a:2", "z:1 to z:2"], Which(By("a", 1), By("a", 3), By("b", 1, new ChangeId("z", 2), new ChangeId("a", 2))));
        Assert.Empty(Which(By("a", 1), By("b", 1, new ChangeId("a", 1))));
    }

    [Fact]
    public void EachGapOfADeviceIsToldByItself() => Assert.Equal(["a:2", "a:4 to a:5", "a:7"],
        Which(By("a", 1), By("a", 3), By("a", 6), By("b", 1, new ChangeId("a", 7))));
}
