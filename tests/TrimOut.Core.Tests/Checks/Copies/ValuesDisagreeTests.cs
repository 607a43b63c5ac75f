using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
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
}
