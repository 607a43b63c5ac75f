using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Facts;

/// <summary>What can be typed can be read again: cable is stored in millimeters, and a house may have miles of it.</summary>
public class LongLengthsTests
{
    [Theory]
    [InlineData("on-hand", 4000)]
    [InlineData("on-hand", 100_000)]
    [InlineData("box-length", 10_000)]
    [InlineData("longest-run", 1000)]
    public void MilesOfCableAreKept(string fact, int feet)
    {
        var of = (Fact<Length>)FactTable.Find(ItemKind.CableType, fact)!;
        var job = new TestJob().SayOf("16/2", of, $"{feet} ft");
        Assert.Equal(Length.FromFeet(feet), job.House.ItemsOf(ItemKind.CableType).Single(i => job.House.NameOf(i) == "16/2").Get(of));
    }

    [Fact]
    public void MoreThanCanBeMeantIsRefusedWhereItIsTyped()
    {
        var job = new TestJob();
        var cable = job.House.ItemsOf(ItemKind.CableType).First();
        Assert.False(Core.Decisions.SetFact.Typed(job.House, cable, CableTypeFacts.OnHand, "100001 ft").Ok);
    }
}
