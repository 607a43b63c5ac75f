using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Tests.Writing;

/// <summary>Numbers as people type them; what is dialled by RFC 3966 (digits, a plus sign before a country code) and ITU-T E.164 (15 digits at most).</summary>
public class PhoneNumberTests
{
    [Theory]
    [InlineData("Crew North, 555 0101", "Crew North", "[555 0101](tel:5550101)")]
    [InlineData("Office (030) 555-0117 after six", "Office", "[(030) 555-0117](tel:0305550117) after six")]
    [InlineData("+49 (0)30 5550117", "", "[+49 (0)30 5550117](tel:+49305550117)")]
    [InlineData("Anna, +1 201.555.0123 or 555 0124", "Anna", "[+1 201.555.0123](tel:+12015550123) or 555 0124")]
    public void ANumberIsFoundAndCanBeCalled(string typed, string who, string number)
    {
        var (name, call) = PhoneNumber.Part(typed);
        Assert.Equal(who, name);
        Assert.Equal(number, call!.Markdown(Words.English));
    }

    [Theory]
    [InlineData("Jon, license E-3071822")]
    [InlineData("since 2026-09-30")]
    [InlineData("since 30.09.2026")]
    [InlineData("Circuit 10")]
    [InlineData("Crew North")]
    public void WhatIsNoNumberIsNotCalled(string typed) => Assert.Equal((typed, null), PhoneNumber.Part(typed));

    [Theory]
    [InlineData("tel:5550101", true)]
    [InlineData("tel:+4930555", true)]
    [InlineData("tel:1", false)]
    [InlineData("tel:5550101;x=1", false)]
    [InlineData("https://example.com", false)]
    [InlineData(null, false)]
    public void OnlyALinkThatLeadsToANumberIsOne(string? url, bool isOne) => Assert.Equal(isOne, PhoneNumber.IsLink(url));
}
