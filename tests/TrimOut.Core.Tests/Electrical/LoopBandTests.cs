using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class LoopBandTests
{
    private static readonly LoopTest Fine = new(new Resistance(1.4m), new Resistance(0.2m), null, new Resistance(0.01m));

    // Worked out by hand for 1.4 ohm in hundredths, 0.2 of them the leads: 0.007 + 0.02 of the meter, half a step 0.005, copper 0.0125 x 1.2 = 0.015;
    // three legs of 40 m together at 0.02 ohm per metre: (0.4 m + 3 x 0.08 m) x 2 x 0.02 = 0.0256.
    [Fact]
    public void AgainstALengthTheMeterTheCopperAndTheLegsCount() =>
        Assert.Equal(new Resistance(0.047m + 0.0256m), LoopBand.AgainstLength(Fine, new Resistance(1.4m), Length.FromMetres(40), 3, 0.02m));

    [Fact]
    public void LessThanTheLeadsHasNoCopperInIt() =>
        Assert.Equal(new Resistance(0.0005m + 0.02m + 0.005m), LoopBand.AgainstLength(Fine, new Resistance(0.1m), Length.Zero, 0, 0.02m));

    // The second reading, 1.0 ohm in tenths without leads: 0.005 + 0.2, half a step 0.05, copper 0.0125.
    [Fact]
    public void BetweenTwoReadingsBothMetersCount() => Assert.Equal(new Resistance(0.047m + 0.2675m),
        LoopBand.Between(Fine, new LoopTest(new Resistance(1), null, null, new Resistance(0.1m))));

    // A tenth of what it is at 20 C and 0.1 ohm for the contacts.
    [Fact]
    public void WhereAStepIsNotKnownATenthAndTheContactsAreTolerated()
    {
        var unknown = new LoopTest(new Resistance(2), null, null);
        Assert.Equal(new Resistance(0.24m), LoopBand.AgainstLength(Fine with { Step = null }, new Resistance(1.4m), Length.FromMetres(40), 3, 0.02m));
        Assert.Equal(new Resistance(0.22m), LoopBand.Between(Fine, unknown));
        Assert.Equal(new Resistance(0.3m), LoopBand.Between(unknown, Fine));
    }
}
