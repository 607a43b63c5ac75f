using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Tests.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Copies;

public class ValuesDisagreeTests
{
    public static Example Finds => new(() => Jobs.Walked(),
        j => Copies.Merged(j, a => a.Say("W01", WindowFacts.RoughWidth, "45 1/2\""), b => b.Say("W01", WindowFacts.RoughWidth, "45 5/8\"")));

    public static Example Passes => new(() => Jobs.Walked(),
        j => Copies.Merged(j, a => a.Say("W01", WindowFacts.RoughWidth, "45 1/2\""), b => b.Say("W01", WindowFacts.RoughHeight, "70\"")));

    private readonly TwoLaptops _laptops = new("ada", "bo");

    [Fact]
    public void TwoLaptopsWithDifferentKeptValuesAreACaution()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        _laptops.Take("bo", "ada");
        var found = Assert.IsType<Outcome.Found>(Assert.Single(new ValuesDisagree().Run(_laptops["bo"].House)).Outcome);
        Assert.Equal("Rough width: 45 1/2\" by Ada on 2026-03-03 08:00, or 45 5/8\" by Bo on 2026-03-03 08:00. The last is shown.",
            found.Message.In(_laptops["bo"].House));
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        Assert.Empty(new ValuesDisagree().Run(_laptops["bo"].House));
    }

    [Fact]
    public void AValueThatOneTookAwayIsSaidToBeNothing()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Take("bo", "ada");
        _laptops.Type("ada", WindowFacts.RoughWidth, "");
        _laptops.Type("bo", WindowFacts.RoughWidth, "45 5/8");
        _laptops.Take("bo", "ada");
        var found = Assert.IsType<Outcome.Found>(Assert.Single(new ValuesDisagree().Run(_laptops["bo"].House)).Outcome);
        Assert.Contains("nothing by Ada on 2026-03-03 08:00", found.Message.In(_laptops["bo"].House), StringComparison.Ordinal);
    }

    [Fact]
    public void OneLaptopAloneNeverDisagrees()
    {
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 1/2");
        _laptops.Type("ada", WindowFacts.RoughWidth, "45 5/8");
        Assert.Empty(new ValuesDisagree().Run(_laptops["ada"].House));
    }

    // Whether a remote moves this unit and whether it moves that one are two things: letting one pass lets not the other pass.
    [Fact]
    public void WhatIsKeptForEachUnitIsToldForEachUnit()
    {
        var job = Jobs.Walked("W02", Jobs.Walked()).Add(ItemKind.Remote, "R1");
        var units = new[] { job.Unit("W01").Id, job.Unit("W02").Id };
        TestJob Moves(TestJob on, string? yes) => on.Do(new Draft("moves").PutStored(on.House.Remotes[0].Id, RemoteFacts.Moves.Field(units[0]), yes)
            .PutStored(on.House.Remotes[0].Id, RemoteFacts.Moves.Field(units[1]), yes));
        var merged = Copies.Merged(job, a => Moves(a, "yes"), b => Moves(b, "no"));
        var found = new ValuesDisagree().Run(merged.House).Select(r => (Outcome.Found)r.Outcome).ToList();
        Assert.Equal(units.Select(u => RemoteFacts.Moves.Field(u)).Order(), found.Select(f => f.Mends.Field).Order());
        Assert.Equal(found[0].Message.In(merged.House), found[1].Message.In(merged.House));
        Assert.NotEqual(found[0].Message.Figures, found[1].Message.Figures);
    }

    [Fact]
    public void ThreeLaptopsAreAllTold()
    {
        var laptops = new TwoLaptops("ada", "bo", "cy");
        laptops.Type("ada", WindowFacts.RoughWidth, "45");
        laptops.Type("bo", WindowFacts.RoughWidth, "46");
        laptops.Type("cy", WindowFacts.RoughWidth, "47");
        laptops.Take("ada", "bo");
        laptops.Take("ada", "cy");
        var found = Assert.IsType<Outcome.Found>(Assert.Single(new ValuesDisagree().Run(laptops["ada"].House)).Outcome);
        Assert.StartsWith("Rough width: 45\" by Ada on 2026-03-03 08:00, or 46\" by Bo on 2026-03-03 08:00, or 47\" by Cy",
            found.Message.In(laptops["ada"].House), StringComparison.Ordinal);
    }
}
