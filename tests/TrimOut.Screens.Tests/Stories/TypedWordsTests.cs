using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A word typed on a row of a sheet before its field was opened: its letters are keys, and none may be lost or do something else.</summary>
public class TypedWordsTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");
    private readonly FakeTimeProvider _clock = new();

    private TerminalUser On(Fact fact)
    {
        var user = new TerminalUser(new TestDesk(_clock), _job.Scribe);
        user.Press("enter");
        while (((SheetScreen)user.Shell.Screen).Current!.Fact != fact)
            user.Press("down");
        return user;
    }

    [Theory]
    [InlineData("east")]
    [InlineData("missing")]
    [InlineData("SW")]
    [InlineData("W07")]
    [InlineData("SE")]
    [InlineData("Sunroom side")]
    public void AWordTypedOnARowStandsInItsField(string word)
    {
        using var user = On(WindowFacts.Facing);
        var at = ((SheetScreen)user.Shell.Screen).Current!.Place;
        user.Press([.. word.Select(c => c == ' ' ? "space" : c.ToString())]);
        Assert.Equal(word, user.Shell.Typing!.Text);
        Assert.Equal(at, ((SheetScreen)user.Shell.Screen).Current!.Place);
    }

    [Fact]
    public void WhatIsTypedSoIsSavedWithEnter()
    {
        using var user = On(WindowFacts.Mount);
        user.Press("o", "u", "t", "s", "i", "d", "e", "enter");
        Assert.Equal("outside", user.House.Windows[0].Show(WindowFacts.Mount));
    }

    /// <summary>The first letter opens the line of the legs.</summary>
    [Fact]
    public void AWordOfTheListUnderTheCursorIsNoLineOfLegs()
    {
        using var user = On(UnitFacts.EntrySide);
        user.Press("l", "e");
        Assert.Equal("le", user.Shell.Typing!.Text);
        user.Press("f", "t", "enter");
        Assert.Equal("left", user.House.Units[0].Show(UnitFacts.EntrySide));
    }

    [Fact]
    public void ALineOfLegsIsNoWord()
    {
        using var user = On(UnitFacts.EntrySide);
        user.Press("l", "u", "p", "space", "8", "enter");
        Assert.Single(user.House.Units[0].Run!.Legs);
    }

    [Fact]
    public void AQuestionThatItsFirstLetterAskedIsGone()
    {
        using var user = On(WindowFacts.Facing);
        user.Press("q", "u", "i");
        Assert.Equal("qui", user.Shell.Typing!.Text);
        user.Press("esc", "down").DoesNotSee("Leave TrimOut?");
    }

    [Fact]
    public void TheLookThatItsFirstLetterChangedIsAsItWas()
    {
        using var user = On(WindowFacts.Facing);
        var look = user.Shell.Look;
        user.Press("L", "e", "e");
        Assert.Equal(look, user.Shell.Look);
        Assert.Equal("Lee", user.Shell.Typing!.Text);
    }

    [Fact]
    public void WhatComesAfterAPauseIsAKey()
    {
        using var user = On(WindowFacts.Facing);
        user.Press("e");
        _clock.Advance(TimeSpan.FromSeconds(1));
        user.Press("f");
        Assert.Null(user.Shell.Typing);
    }

    [Fact]
    public void AKeyThatIsHeldIsNoWord()
    {
        using var user = On(WindowFacts.Facing);
        user.Press("e", "e", "e");
        Assert.Null(user.Shell.Typing);
    }

    [Fact]
    public void WhatTheFirstLetterSavedStays()
    {
        _job.Say("W01", UnitFacts.BoxLabel, "W01");
        using var user = On(WindowFacts.Facing);
        user.Press("u", "u").Press("e");
        Assert.Equal("", user.House.Units[0].Show(UnitFacts.BoxLabel));
        Assert.Null(user.Shell.Typing);
    }

    [Fact]
    public void ALetterThatDoesNothingSaysWhichKeyOpensTheField()
    {
        using var user = On(WindowFacts.Facing);
        user.Press("i").Sees("i does nothing here. Enter opens what is under the cursor");
    }

    [Fact]
    public void WhereRowsAreNoValuesLettersStayKeys()
    {
        using var user = new TerminalUser(new TestDesk(_clock), _job.Scribe);
        user.Press("f", "o");
        Assert.Null(user.Shell.Typing);
    }
}
