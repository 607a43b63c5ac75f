using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Hours;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Hours are typed for a phase, stand beside what the marks show, and the houses before say what is likely.</summary>
public class HoursTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero));

    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 140, 40 } };

    /// <summary>Two units took 4 and 6 hours to hang elsewhere, 2 and 3 a unit: three units here are likely to take 7.5, from 6 to 9.</summary>
    [Theory]
    [MemberData(nameof(Sizes))]
    public void WhatOtherHousesTookSaysWhatIsLikely(int width, int height)
    {
        using var user = At(width, height, 4, 6);
        user.Press("P", "T").Sees("Likely").Sees("7.5 (6 to 9)").Press("end", "home").Press("down", "down", "down", "down", "down", "down")
            .Sees("By 2 other houses: 2.5 h a unit, 2 to 3.").Press("down").Sees("No other house that you opened is through this phase and has hours for it.");
    }

    [Fact]
    public void OneHouseAloneIsSaidSo()
    {
        using var user = At(80, 24, 4);
        user.Press("P", "T").Press("down", "down", "down", "down", "down", "down").Sees("By 1 other house alone: 2 h a unit.").DoesNotSee("to 6)");
    }

    [Fact]
    public void WithoutAnotherHouseItIsSaidThatNothingIsKnown()
    {
        using var user = At(80, 24);
        user.Press("P", "T").Sees("No other house that you opened has hours for a phase that it is through");
    }

    [Fact]
    public void HoursAreTypedWhereTheyAreSeen()
    {
        using var user = At(80, 24);
        user.Press("P", "T").Press("down", "down", "down", "down", "down", "down").Press("enter").Sees("Hours, hang").Type("12.5").Sees("12.5");
        Assert.Equal(12.5m, user.House.Job.Get(HouseFacts.HoursHang));
        user.Press("enter").Type("20000").Sees("10000");
    }

    private static TerminalUser At(int width, int height, params decimal[] hangElsewhere) => new(
        new TestDesk(Clock)
        {
            HoursElsewhere = [.. hangElsewhere.Select(h => (System.Collections.Immutable.ImmutableArray<PhaseHours>)
            [new PhaseHours(Phase.Hang, h, null, 0, 2, 2)])]
        },
        new TestJob().Window("W01").Window("W02").Window("W03").Scribe, width, height);
}
