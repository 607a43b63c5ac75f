using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests;

/// <summary>One word in two spellings of Unicode. Source: UAX 15, figures 3 and 4, and UnicodeData.txt.</summary>
public sealed class ComposedTextTests
{
    [Theory]
    [InlineData("Ku\u0308che", "Küche")]
    [InlineData("Cafe\u0301", "Café")]
    [InlineData("Bibliothe\u0300que de l'e\u0301tage", "Bibliothèque de l'étage")]
    [InlineData("Ban\u0303o pequen\u0303o", "Baño pequeño")]
    [InlineData("A\u030a", "\u00c5")]
    [InlineData("s\u0323\u0307", "\u1e69")]
    [InlineData("e\u0302\u0301", "\u1ebf")]
    [InlineData("\u304b\u3099", "\u304c")]
    public void ALetterAndItsMarkAreOneCharacter(string apart, string composed) => Assert.Equal(composed, ComposedText.Of(apart));

    [Theory]
    [InlineData("\u0301")]
    [InlineData("x\u0301")]
    [InlineData("W07")]
    [InlineData("台所")]
    public void WhatDoesNotComposeStaysAsItIs(string text) => Assert.Equal(text, ComposedText.Of(text));

    [Fact]
    public void TwoSpellingsAreOneName()
    {
        Assert.Equal("Küche", "Ku\u0308che", SameName.Comparer);
        Assert.Equal(SameName.Comparer.GetHashCode("küche"), SameName.Comparer.GetHashCode("KU\u0308CHE"));
    }

    [Fact]
    public void WhatIsTypedIsKeptComposed() =>
        Assert.Equal("Küche", RoomFacts.Name.ReadTyped("Ku\u0308che", new TestJob().House).Value);
}
