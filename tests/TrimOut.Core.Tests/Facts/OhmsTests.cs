using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Facts;

public class OhmsTests
{
    // SI prefixes: M is a million, m a thousandth.
    [Theory]
    [InlineData("2000000", 2_000_000)]
    [InlineData("2M", 2_000_000)]
    [InlineData("2 Mohm", 2_000_000)]
    [InlineData("2 megohm", 2_000_000)]
    [InlineData("1000 M", 1_000_000_000)]
    [InlineData("3 k", 3_000)]
    public void ALeakOfMegohmsIsKept(string typed, long ohms) =>
        Assert.Equal((decimal)ohms, Jobs.Roughed().Say("W01", RunFacts.FirstToFrame, typed).Run("W01").Item.Get(RunFacts.FirstToFrame)!.Value.Ohms);

    [Fact]
    public void ThousandthsStayThousandths() =>
        Assert.Equal(0.002m, Jobs.Roughed().Say("W01", RunFacts.FirstToFrame, "2 mohm").Run("W01").Item.Get(RunFacts.FirstToFrame)!.Value.Ohms);
}
