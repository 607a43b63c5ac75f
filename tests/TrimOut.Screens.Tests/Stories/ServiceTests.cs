using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Sheets;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A house that was handed over: a unit fails and is replaced, a claim is made, all by keyboard, on a small terminal and on a large one.</summary>
public class ServiceTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 140, 40 } };

    private static readonly DateTimeOffset Now = new(2027, 3, 2, 9, 0, 0, TimeSpan.Zero);

    private static TerminalUser At(TestJob job, int width = 80, int height = 24) => new(new TestDesk(new FakeTimeProvider(Now)), job.Scribe, width, height);

    private static TestJob Accepted() => new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.Serial, "A-1").Say("W02", UnitFacts.Serial, "A-2")
        .Add(ItemKind.Remote, "Hall").SayOf("Test house", HouseFacts.AcceptedOn, "2026-10-01")
        .Mark("W01", "clicked-in").Mark("W01", "hub-paired").Mark("W01", "open-limit").Mark("W02", "hub-paired");

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AUnitIsReplacedByOneLineAndItsStepsAreAskedAgain(int width, int height)
    {
        using var user = At(Accepted(), width, height);
        user.Press("H").Sees("Nothing was done yet; n records what was done").Press("n").Sees("W01");
        user.Write("W01 replaced, serial B-7, claim C-17, motor grinds").Sees("asked again").Press("enter");
        user.Sees("W01 replaced").Sees("claim open").Sees("Serial put in: B-7").Sees("To be done again").Sees("Serial taken off: A-1");
        var unit = user.House.Units.Single(u => u.Tag == "W01");
        Assert.Equal(["clicked-in", "hub-paired", "open-limit"], AskedAgain.Waiting(user.House).Select(w => w.Step.Id));
        Assert.Equal("B-7", unit.Show(UnitFacts.Serial));
        user.Press("enter").Sees("Claim came to").Press("home", "down", "down", "down", "down", "down", "down", "down", "enter").Type("granted").Press("esc")
            .DoesNotSee("claim open");
        Assert.Equal(ClaimOutcome.Granted, Assert.Single(user.House.Services).Item.Get(ServiceFacts.Outcome));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void WhatIsDueAndWhatWasDoneLooksAsApproved(int width, int height)
    {
        using var user = At(Accepted().SayOf("Test house", HouseFacts.WarrantyTerm, "six months"), width, height);
        foreach (var line in new[] { "W01 replaced, serial B-7, claim C-17, motor grinds", "Hall battery changed 2027-02-01", "W02 repaired 2027-02-20 @Ash" })
            user.Press("H", "n").Type(line).Press("esc");
        user.Press("H");
        Approved.Match(user.Screen, $"in-service-{width}x{height}");
    }

    [Fact]
    public void WhatCanNotBeRecordedStaysInItsFieldWithTheReason()
    {
        using var user = At(Accepted());
        user.Press("H", "n").Write("W01 yearly visit").Press("enter").Sees("A yearly visit is of the house");
        Assert.Empty(user.House.Services);
    }

    [Fact]
    public void AProgramLeftOpenOvernightTakesWhatWasDoneToday()
    {
        var clock = new FakeTimeProvider(Now);
        using var user = new TerminalUser(new TestDesk(clock), Accepted().Scribe);
        user.Press("H", "n").Write("W01 repaired 2027-03-03").Press("enter").Sees("2027-03-03 is still to come").Press("esc");
        clock.Advance(TimeSpan.FromDays(1));
        user.Press("n").Type("W01 repaired 2027-03-03").Sees("W01 repaired");
        Assert.Single(user.House.Services);
    }

    [Fact]
    public void FromTheSheetOfARemoteTheLineBeginsWithIt()
    {
        using var user = At(Accepted());
        user.Press("5", "enter", "H", "n").Type("Hall battery changed yesterday");
        Assert.Equal("Hall battery changed 2027-03-01", Assert.Single(user.House.Services).Name);
        user.Sees("Hall battery changed").Press("esc").Sees("Hall");
        Assert.IsType<SheetScreen>(user.Shell.Screen);
    }

    /// <summary>The line begins with the unit already; whoever types it once more means it once.</summary>
    [Fact]
    public void TheTagThatStandsThereAndIsTypedOnceMoreIsTakenOnce()
    {
        using var user = At(Accepted());
        user.Press("H", "n").Write("W01 W01 replaced").Sees("W01 replaced on 2027-03-02").Press("enter");
        Assert.Equal("W01 replaced 2027-03-02", Assert.Single(user.House.Services).Name);
    }

    [Fact]
    public void EverythingThatIsDueIsReachedByTheArrowsHoweverMuchItIs()
    {
        var job = Accepted().SayOf("Test house", HouseFacts.WarrantyTerm, "six months");
        foreach (var tag in (string[])["W03", "W04", "W05", "W06", "W07", "W08", "W09"])
        {
            job.Window(tag).Say(tag, UnitFacts.Serial, $"A-{tag}").Mark(tag, "clicked-in");
            job.Do(QuickService.Read(job.House, $"{tag} replaced, serial B-{tag}", new DateOnly(2027, 3, 1)));
        }
        using var user = At(job);
        user.Press("H").Sees("Due: 8, first.").DoesNotSee("trimout service");
        user.Press("home").Sees("W03 replaced 2027-03-01, to be done again").Press("down", "down", "down", "down", "down", "down")
            .Sees("W09 replaced 2027-03-01, to be done again").Press("down").Sees("The crew's warranty ends on 2027-03-31");
        user.Press("enter").Sees("Move to something that was done first.");
    }

    [Fact]
    public void OneUndoBringsTheUnitBackAsItWas()
    {
        using var user = At(Accepted());
        user.Press("H", "n").Type("W01 replaced").Press("u", "u").Sees("Nothing was done yet");
        Assert.Equal("A-1", user.House.Units[0].Show(UnitFacts.Serial));
        Assert.NotNull(user.House.Units[0].MarkOf(StepList.Find("clicked-in")!));
    }

    [Fact]
    public void TheListIsNarrowedByWhatIsTypedAndARecordIsRemovedAfterAQuestion()
    {
        using var user = At(Accepted());
        user.Press("H", "n").Type("W01 repaired, loose bracket").Press("n").Type("Hall battery changed");
        user.Press("/").Type("bracket").Sees("W01 repaired").DoesNotSee("Hall battery").Press("X").Sees("Remove W01 repaired").Press("X");
        Assert.Equal("Hall battery changed 2027-03-02", Assert.Single(user.House.Services).Name);
    }

    [Fact]
    public void WhatIsDueStandsAboveWhatWasDone()
    {
        var job = Accepted().SayOf("Test house", HouseFacts.WarrantyTerm, "six months");
        job.Do(QuickService.Read(job.House, "W01 replaced, serial B-7", new DateOnly(2027, 3, 1)));
        using var user = At(job);
        user.Press("H").Sees("W01 replaced 2027-03-01, to be done again: ").Sees("The crew's warranty ends on 2027-03-31");
    }
}
