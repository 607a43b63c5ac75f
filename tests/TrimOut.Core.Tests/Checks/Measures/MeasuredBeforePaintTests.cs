using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Measures;

public class MeasuredBeforePaintTests
{
    private static readonly MeasuredBeforePaint Check = new();

    public static Example Finds => new(() => Jobs.Measured(), j => j.SayOf("Test house", HouseFacts.PaintedOn, "2026-03-14"));

    public static Example Passes => new(() => Jobs.Measured(), j => j.SayOf("Test house", HouseFacts.PaintedOn, "2026-02-27"));

    // The clock of the test stands at 2026-03-02.
    [Fact]
    public void OnTheDayOfThePaintItIsFine() => Jobs.Measured().SayOf("Test house", HouseFacts.PaintedOn, "2026-03-02").Fine(Check, "W01");

    [Fact]
    public void ADayBeforeThePaintIsACaution() => Assert.Equal("It was measured on 2026-03-02; the painter is done on 2026-03-03.",
        Jobs.Measured().SayOf("Test house", HouseFacts.PaintedOn, "2026-03-03").Fault(Check, "W01").Message);

    [Fact]
    public void AnUnknownDayIsNotAPass() => Jobs.Measured().Lacks(Check, "W01", "painted of the house");

    [Fact]
    public void AnUnmeasuredWindowIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "width, top");

    // One of them is measured again a day later, when the paint is done: the others are as old as before.
    [Fact]
    public void TheFirstMeasureCounts()
    {
        var job = Jobs.Measured();
        job.Clock.Advance(TimeSpan.FromDays(1));
        var found = job.Say("W01", WindowFacts.WidthTop, "36 1/16").SayOf("Test house", HouseFacts.PaintedOn, "2026-03-03").Fault(Check, "W01");
        Assert.StartsWith("It was measured on 2026-03-02;", found.Message, StringComparison.Ordinal);
        Assert.Equal("width-middle", found.Mends.Field);
    }

    [Theory]
    [InlineData("width-top")]
    [InlineData("width-middle")]
    [InlineData("width-bottom")]
    [InlineData("height-left")]
    [InlineData("height-middle")]
    [InlineData("height-right")]
    public void WhicheverMeasureIsOfBeforeThePaintIsTheOneToTakeAgain(string measure)
    {
        var job = Jobs.Walked().Say("W01", FactTable.Find(Core.Houses.ItemKind.Window, measure)!, "36");
        Assert.Equal(measure, job.SayOf("Test house", HouseFacts.PaintedOn, "2026-03-03").Fault(Check, "W01").Mends.Field);
    }
}
