using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests;

/// <summary>One spelling is shown; what was written with the other one before keeps its meaning.</summary>
public class SpellingTests
{
    [Theory]
    [InlineData("millimetres")]
    [InlineData("Millimeters")]
    [InlineData("millime")]
    [InlineData("mm", false)]
    public void AUnitIsReadInBothSpellingsAndKeptAsBefore(string typed, bool read = true)
    {
        var units = HouseFacts.Units.ReadTyped(typed, House.Empty);
        Assert.Equal(read, units.Ok);
        if (read)
            Assert.Equal("millimetres", units.Value);
        Assert.Equal("millimeters", HouseFacts.Units.Show(DisplayUnits.Millimetres, House.Empty));
    }

    [Theory]
    [InlineData("Colour")]
    [InlineData("Color")]
    [InlineData("colour")]
    public void ADetailIsFoundByItsLabelInBothSpellings(string label)
    {
        var job = new TestJob().Window("W01");
        job.Do(SetLine.Read(job.House, $"W01\t{label}\tsand"));
        Assert.Equal("sand", job.House.Units[0].Item.Get(UnitFacts.Colour));
    }
}
