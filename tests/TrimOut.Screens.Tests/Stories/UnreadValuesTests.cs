using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Screens.Sheets;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A stop goes away by a value that nobody read off a sheet: it waits, it is counted, and one key goes to the value.</summary>
public class UnreadValuesTests
{
    private static TestJob Job()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "150").Say("W01", WindowFacts.RoughHeight, "60");
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && SheetValues.NotHeldIn(i).Any()).ToList())
            job.Do(KitCheck.All(job.House, part));
        return job;
    }

    [Fact]
    public void WhatPassesByAnUnreadValueIsListedAmongWhatWaitsWithTheWayToTheValue()
    {
        var job = Job();
        var waited = job.Report.Waiting.Checks;
        job.SayOf("Roller", CoveringKindFacts.Widest, "200");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe, width: 120, height: 40);
        Assert.True(user.Shell.Context.Report.Waiting.Checks > waited);
        user.Press("m").Press("home").Sees("unread").Sees("Passes by a value nobody checked: Widest 200\"").Sees("this is no pass");
        user.Press("enter");
        Assert.Equal(CoveringKindFacts.Widest, ((SheetScreen)user.Shell.Screen).Current!.Fact);
        user.Press("c").Press("m").Press("home").DoesNotSee("Passes by a value nobody checked");
        Assert.Equal(waited, user.Shell.Context.Report.Waiting.Checks);
    }

    [Fact]
    public void TheCardOfTheUnitAndThePartSayIt()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), Job().SayOf("Roller", CoveringKindFacts.Widest, "200").Scribe, 140, 40);
        // No stop of the unit pushes it out: one line always stands.
        user.Sees("only by unchecked values (m)").Press("9").Sees("Widest: ");
        Assert.Contains("by values nobody checked", Shell.WaitingLine.Of(user.Shell.Context.Report, user.House.Units[0]), StringComparison.Ordinal);
    }

    /// <summary>A file says who checked its values, and none of them counts: its name stands beside none.</summary>
    [Fact]
    public void NoNameStandsAsTheOneWhoCheckedWhereNothingWasChecked()
    {
        var job = new TestJob().Window("W01");
        foreach (var (name, said) in new[] { (AboutSheet.HeldBy, "Bo Example"), (AboutSheet.HeldOn, "2026-01-05") })
            job.SayOf("16/2", AboutSheet.Of(ItemKind.CableType, name), said);
        var part = job.House.ItemsOf(ItemKind.CableType).Single(c => job.House.NameOf(c) == "16/2");
        string Shown() => SheetScreen.At(new OfItem(part.Id), job.House).Rows.Single(r => r.Fact?.Name == AboutSheet.HeldBy).Shown(job.House);
        Assert.Matches("^nobody: ([0-9]+) of \\1 not checked$", Shown());
        Assert.DoesNotContain("held-by", PartText.Write(PartSheet.Of(job.House, part)), StringComparison.Ordinal);
        job.Do(KitCheck.Toggle(job.House, part, CableTypeFacts.LongestRun));
        Assert.Matches("^Test crew; [0-9]+ of [0-9]+ not checked$", Shown());
    }
}
