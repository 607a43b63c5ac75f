using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class RemoveItemsTests
{
    [Theory]
    [InlineData(ItemKind.CoveringKind, "Roller", ", used by 2: W01, W02")]
    [InlineData(ItemKind.CoveringKind, "Wood blind", "")]
    [InlineData(ItemKind.CableType, "16/2", ", used by 1: W01")]
    public void WhatUsesAPartIsTold(ItemKind kind, string name, string told)
    {
        var job = Used();
        var part = job.Part(kind, name);
        Assert.Equal(told, RemoveItems.UsedBy(job.House, part));
        Assert.Equal($"Removed {name}{told}", RemoveItems.Remove(job.House, part).Value.What);
    }

    [Fact]
    public void OfManyEightAreNamed()
    {
        var job = new TestJob();
        for (var n = 1; n <= 10; n++)
            job.Window($"W{n}").Say($"W{n}", UnitFacts.Kind, "Roller");
        Assert.Equal(", used by 10: W1, W2, W3, W4, W5, W6, W7, W8 and 2 more", RemoveItems.UsedBy(job.House, job.Part(ItemKind.CoveringKind, "Roller")));
    }

    /// <summary>A unit whose part is gone lacks it, and says which one it was; brought back, it has it again.</summary>
    [Fact]
    public void AUnitSaysThatItsPartIsGone()
    {
        var job = Used();
        var part = job.Part(ItemKind.CoveringKind, "Roller");
        job.Do(RemoveItems.Remove(job.House, part));
        Assert.Null(job.Unit("W01").Kind);
        Assert.Equal("Roller (removed)", job.Unit("W01").Show(UnitFacts.Kind));
        Assert.Contains(job.Report.Missing, m => m.Subject.Id == job.Unit("W01").Id && m.NotChecked.Missing.In(job.House) == "kind, for Roller was removed");
        job.Do(RemoveItems.BringBack(job.House, job.House.Find(part.Id)!));
        Assert.Equal("Roller", job.Unit("W01").Show(UnitFacts.Kind));
        Assert.DoesNotContain(job.Report.Missing, m => m.NotChecked.Missing.In(job.House).Contains("removed", StringComparison.Ordinal));
    }

    private static TestJob Used() => new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.Kind, "Roller").Say("W02", UnitFacts.Kind, "Roller")
        .Say("W01", RunFacts.Cable, "16/2");
}
