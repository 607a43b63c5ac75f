using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Punch;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Several notes that are alike are waived with one reason: a waiver for each, one change, one undo.</summary>
public class WaivingTests
{
    private const string Check = "kit-unchecked";

    private static TestJob Job() => new TestJob().Window("W01").Window("W02", kind: "Cellular").Window("W03", kind: "Wood blind");

    private static TerminalUser AtFirst(TestJob job, string check)
    {
        var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe, width: 120, height: 40);
        user.Press("6");
        while (((PunchScreen)user.Shell.Screen).Current(user.Shell.Context)!.Finding?.Check.Id != check)
            user.Press("down");
        return user;
    }

    private static int Open(TerminalUser user, string check) => user.Shell.Context.Report.Findings.Count(f => f.Open && f.Check.Id == check);

    [Fact]
    public void AllOfOneCheckAreWaivedWithOneReasonAndOneUndoOpensThemAll()
    {
        using var user = AtFirst(Job(), Check);
        var (before, changes) = (Open(user, Check), user.Shell.Context.Log.Changes.Count);
        Assert.True(before >= 3);
        user.Press("&").Sees($"{before} findings picked. a waives them with one reason").Press("a").Sees($"one for all {before}");
        user.Type("the sheets come with the boxes").Type("TO").Sees("Waived kit-unchecked of ");
        Assert.Equal(0, Open(user, Check));
        Assert.Equal(before, user.House.Waivers.Count(w => w.Check == Check));
        Assert.Equal(changes + 1, user.Shell.Context.Log.Changes.Count);
        Assert.Empty(((PunchScreen)user.Shell.Screen).Picked);
        user.Press("u", "u");
        Assert.Equal(before, Open(user, Check));
    }

    [Fact]
    public void WhatWasPickedByHandIsWaivedAndNothingElse()
    {
        using var user = AtFirst(Job(), Check);
        var before = Open(user, Check);
        user.Press("v", "v").Sees("2 findings picked").Press("v", "up", "v").Sees("2 findings picked").Press("a").Type("seen on site").Type("TO");
        Assert.Equal(before - 2, Open(user, Check));
    }

    [Fact]
    public void AWaiverOfSeveralHoldsForTheFiguresOfEach()
    {
        using var user = AtFirst(Job(), Check);
        var before = Open(user, Check);
        user.Press("&", "a").Type("the sheets come with the boxes").Type("TO");
        var job = user.House.ItemsOf(ItemKind.CoveringKind).First();
        Assert.True(Core.Decisions.KitCheck.Toggle(user.House, job, CoveringKindFacts.MotorVolts).Then(user.Shell.Open!.Record).Ok);
        Assert.Equal(1, Core.Checks.CheckReport.Of(user.Shell.Open!.House).Findings.Count(f => f.Open && f.Check.Id == Check));
        Assert.True(before > 1);
    }

    [Fact]
    public void AFilterByTheCheckAndOneKeyPicksAllThatIsShown()
    {
        using var user = AtFirst(Job(), Check);
        user.Press("/").Type(Check).Press("V").Sees($"{Open(user, Check)} findings picked").Press("V").DoesNotSee("picked");
    }

    [Fact]
    public void AWrittenItemIsNotPicked()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), Job().Scribe);
        user.Press("6", "n").Type("W01: scratched").Press("home");
        while (((PunchScreen)user.Shell.Screen).Current(user.Shell.Context)!.Item is null)
            user.Press("down");
        user.Press("v").Sees("Only an open finding is picked");
    }
}
