using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Parts;

public class SparePartsTests
{
    [Fact]
    public void WithoutAWordNothingIsSpare() => Assert.Empty(Spares(Jobs.Roughed()));

    // Two units of 6 screws each are 12 screws; a tenth of them is 1.2.
    [Fact]
    public void PercentAreOfWhatTheHouseTakesAndInNoOtherCount()
    {
        var job = With("10 % Screws", Screwed());
        Assert.Equal(("2", "10 % of 12, rounded up", Phase.Hang), Of(Spares(job).Single(), job));
        Assert.Equal(12, HouseParts.Of(job.House).Single(l => l.Part.In(job.House) == "Roller: screws").Count);
    }

    [Fact]
    public void PiecesAreAsManyAsWereTyped()
    {
        var job = With("3 splice connectors, 1 Invented supply", Jobs.Roughed().WithPanel("P1"));
        var lines = Spares(job);
        Assert.Equal(("3", "so many as were typed for this house, beside 2 that it takes", Phase.Power), Of(lines[0], job));
        Assert.Equal(("1", "so many as were typed for this house, beside 1 that it takes", Phase.Power), Of(lines[1], job));
        Assert.Equal("Spare: Invented supply", lines[1].Part.In(job.House));
    }

    /// <summary>What two kinds take of the same part is one lot of screws.</summary>
    [Fact]
    public void WhatSeveralLinesTakeIsTakenTogether()
    {
        var job = Screwed().Window("W03", kind: "Cellular").SayOf("Cellular", CoveringKindFacts.PartsPerUnit, "8 screws");
        Assert.Equal("10 % of 20, rounded up", With("10 % screws", job) is var with ? Spares(with).Single().CountedFrom.In(with.House) : "");
    }

    [Fact]
    public void WhatCannotBeCountedYetHasNoNumberOrAtLeastOne()
    {
        var none = With("10 % 16/2", new TestJob().Window("W01").Say("W01", RunFacts.Cable, "16/2"));
        Assert.Equal(("", "10 % of what the house takes, which can't be counted yet", Phase.RoughIn), Of(Spares(none).Single(), none));
        var some = With("10 % 16/2", Jobs.Roughed().Window("W02").Say("W02", RunFacts.Cable, "16/2"));
        Assert.Equal("at least 1", Spares(some).Single().Shown);
    }

    [Fact]
    public void WhatNoPartIsCalledIsSaidSo()
    {
        var job = With("2 Roller, 5 % fuses");
        Assert.All(Spares(job), l => Assert.Contains("no part of this list is called that", l.CountedFrom.In(job.House), StringComparison.Ordinal));
        Assert.Equal(["2", ""], Spares(job).Select(l => l.Shown));
    }

    private static TestJob Screwed() => Jobs.Roughed("W02", Jobs.Roughed()).SayOf("Roller", CoveringKindFacts.PartsPerUnit, "2 end brackets, 6 screws");

    private static TestJob With(string spares, TestJob? job = null) => (job ?? Jobs.Roughed()).SayOf("", HouseFacts.Spares, spares);

    private static List<PartLine> Spares(TestJob job) => [.. HouseParts.Of(job.House).Where(l => l.Group == PartGroup.Spares)];

    private static (string Shown, string From, Phase Needed) Of(PartLine line, TestJob job) => (line.Shown, line.CountedFrom.In(job.House), line.NeededIn);
}
