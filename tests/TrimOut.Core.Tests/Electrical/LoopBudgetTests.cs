using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Electrical;

public class LoopBudgetTests
{
    // IEC 60228: 1.5 mm2 solid has 12.1 ohm per km at 20 C. 2 V at 1 A over 0.0242 ohm per metre of way is 82.64 m.
    [Fact]
    public void TheLongestRunIsTheDropOverTheCurrentAndTheLoopOfAMetre() =>
        Assert.Equal(82.64m, Math.Round(new LoopBudget(new Voltage(2), new Current(1)).Longest(0.0121m).Metres, 2));

    [Fact]
    public void ABudgetThatIsNotStatedWholeGivesNoLimit()
    {
        var job = new TestJob().SayOf("Test house", HouseFacts.DropAllowed, "1.5");
        Assert.Null(LoopBudget.Of(job.House));
        var cable = new CableType(job.House, job.House.ItemsOf(ItemKind.CableType).First());
        Assert.Null(LoopBudget.LongestOf(cable));
        job.SayOf("Test house", HouseFacts.BudgetCurrent, "0.5");
        Assert.NotNull(Longest(job));
        Assert.Null(Longest(job.SayOf("Test house", HouseFacts.DropAllowed, "")));
    }

    // NFPA 70-2017 chapter 9 table 8: 16 AWG stranded has 4.99 ohm per 1000 ft at 75 C. 1.5 V at 0.5 A over 9.98 ohm per 1000 ft of way is 300.6 ft.
    [Fact]
    public void TheLongestRunOfACableIsByItsCopperAtTheHousesTemperature()
    {
        var job = Stated();
        Assert.InRange((double)Longest(job)!.Value.Feet, 300.6 * 0.996, 300.6 * 1.004);
        Assert.Null(Longest(Stated().SayOf("Test house", HouseFacts.ConductorTemperature, "")));
        Assert.Null(Longest(Stated().SayOf("16/2", CableTypeFacts.Stranding, "")));
        Assert.Null(Longest(Stated().SayOf("16/2", CableTypeFacts.Conductor, "")));
    }

    private static TestJob Stated() => new TestJob().SayOf("Test house", HouseFacts.DropAllowed, "1.5").SayOf("Test house", HouseFacts.BudgetCurrent, "0.5")
        .SayOf("Test house", HouseFacts.ConductorTemperature, "75").SayOf("16/2", CableTypeFacts.Stranding, "stranded");

    private static Length? Longest(TestJob job) => LoopBudget.LongestOf(new CableType(job.House, job.House.ItemsOf(ItemKind.CableType).First()));
}
