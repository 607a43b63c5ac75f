using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class DateTextTests
{
    /// <summary>A Wednesday, by any calendar.</summary>
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Theory]
    [InlineData("2026-03-14", 2026, 3, 14)]
    [InlineData("today", 2026, 11, 25)]
    [InlineData("Tomorrow", 2026, 11, 26)]
    [InlineData("yesterday", 2026, 11, 24)]
    [InlineData("+3", 2026, 11, 28)]
    [InlineData("-1", 2026, 11, 24)]
    [InlineData("+2w", 2026, 12, 9)]
    [InlineData("fri", 2026, 11, 27)]
    [InlineData("Tuesday", 2026, 12, 1)]
    [InlineData("13/1/26", 2026, 1, 13)]
    [InlineData("1/13/2026", 2026, 1, 13)]
    [InlineData("5/5/26", 2026, 5, 5)]
    [InlineData("1.12.26", 2026, 12, 1)]
    [InlineData("14 mar 2026", 2026, 3, 14)]
    [InlineData("March 14, 2026", 2026, 3, 14)]
    [InlineData("29 feb 28", 2028, 2, 29)]
    public void ADayIsReadAsPeopleWriteIt(string typed, int year, int month, int day) =>
        Assert.Equal(new DateOnly(year, month, day), DateText.Read(typed, Today).Value);

    [Theory]
    [InlineData("12/1/26", "type 2026-12-01 or 2026-01-12")]
    [InlineData("wed", "Today is a Wednesday")]
    [InlineData("29 feb 27", "is no day")]
    [InlineData("13/13/26", "is no day")]
    [InlineData("31.4.26", "is no day")]
    [InlineData("mar 14", "is no date")]
    [InlineData("12/1", "is no date")]
    [InlineData("soon", "is no date")]
    [InlineData("+99999", "too far away")]
    [InlineData("fr", "is no date")]
    public void WhatCanBeTwoDaysOrNoneIsRefusedAndNotGuessed(string typed, string why) =>
        Assert.Contains(why, DateText.Read(typed, Today).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("today")]
    [InlineData("+3")]
    [InlineData("fri")]
    public void WhereNobodyKnowsTheDayNoneIsReckonedFromIt(string typed) =>
        Assert.Contains("is not known here", DateText.Read(typed).Reason, StringComparison.Ordinal);

    [Fact]
    public void TheWeekdayIsShownToWhoeverTypedIt() => Assert.Equal("Wednesday, 2026-11-25", DateText.WithWeekday(Today));
}
