using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class ClockTextTests
{
    [Theory]
    [InlineData("17:30", "17:30")]
    [InlineData("7:05", "07:05")]
    [InlineData("00:00", "00:00")]
    [InlineData("5:30 pm", "17:30")]
    [InlineData("5:30PM", "17:30")]
    [InlineData("7 am", "07:00")]
    [InlineData("12 am", "00:00")]
    [InlineData("12:15 p.m.", "12:15")]
    public void ATimeIsReadAsPeopleWriteIt(string typed, string shown) => Assert.Equal(shown, ClockText.Show(ClockText.Read(typed).Value));

    [Theory]
    [InlineData("24:00")]
    [InlineData("7")]
    [InlineData("7:5")]
    [InlineData("13 pm")]
    [InlineData("0:30 am")]
    [InlineData("7:60")]
    [InlineData("-7:00")]
    [InlineData("7:00:00")]
    [InlineData("noon")]
    [InlineData("")]
    public void WhatIsNoTimeIsRefused(string typed) => Assert.Contains("is no time of the clock", ClockText.Read(typed).Reason, StringComparison.Ordinal);
}
