using System.Collections.Immutable;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class PartTextTests
{
    private const string Panel = "trimout-part: 1\nkind: panel-type\nname: Panel\nsheet: Sheet of the panel\nedition: B\nheld-by: Ash\nheld-on: 2026-03-02\n\n"
        + "outputs: 7\n? supply: 21 V\n";

    [Fact]
    public void APartReadsAsItWasWritten() => Assert.All(new TestJob().House.Items.Values.Where(i => FactTable.IsKit(i.Kind)), item =>
    {
        var house = new TestJob().House;
        var part = PartSheet.Of(house, house.Find(item.Id)!);
        var read = PartText.Read(PartText.Write(part)).Value;
        Assert.Equal((part.Kind, part.Name), (read.Kind, read.Name));
        Assert.Equal(part.Values.Select(v => (v.Fact.Name, v.Stored, v.Held)), read.Values.Select(v => (v.Fact.Name, v.Stored, v.Held)));
        Assert.Equal(part.About, read.About);
    });

    [Fact]
    public void AValueThatNobodyHeldStaysOneThatNobodyHeld()
    {
        var part = PartText.Read(Panel).Value;
        Assert.Equal(["outputs", "? supply"], part.Values.Select(v => v.Held ? v.Fact.Name : "? " + v.Fact.Name));
        var job = BlankHouse.With();
        job.Do(TakePart.Into(job.House, part));
        Assert.Equal(PanelTypeFacts.Supply, Assert.Single(SheetValues.NotHeldIn(job.Part(ItemKind.PanelType, "Panel"))));
        Assert.Single(job.House.ItemsOf(ItemKind.PanelType));
    }

    [Theory]
    [InlineData("kind: panel-type", "Line 1")]
    [InlineData("trimout-part: 1\nkind: window", "Line 2")]
    [InlineData("trimout-part: 1\nkind: panel-type\nname: P\noutputs: many", "Line 4")]
    [InlineData("trimout-part: 1\nkind: panel-type\nname: P\ntube: 1 in", "Line 4")]
    [InlineData("trimout-part: 1\nkind: covering-kind\nname: K\ntube: 40", "no unit")]
    [InlineData("trimout-part: 1\nkind: hub-type\nname: H\ndevices: 4\ndevices: 5", "twice")]
    [InlineData("trimout-part: 1\nkind: hub-type\ndevices: 4", "no name")]
    public void WhatCanNotBeReadIsRefusedByItsLine(string text, string said) => Assert.Contains(said, PartText.Read(text).Reason!, StringComparison.Ordinal);

    [Fact]
    public void ANewerEditionShowsWhatItChangesAndWhatTheChecksThenSay()
    {
        var job = new TestJob().Add(ItemKind.Panel, "A").Window("W01").Say("W01", UnitFacts.Power, "panel").Say("W01", RunFacts.Panel, "A")
            .Say("W01", RunFacts.Output, "9");
        var type = job.House.ItemsOf(ItemKind.PanelType).Single();
        var newer = PartText.Read(PartText.Write(PartSheet.Of(job.House, type)).Replace("outputs: 10", "outputs: 8", StringComparison.Ordinal)).Value;
        var change = Assert.Single(TakePart.Changes(job.House, newer));
        Assert.Equal((PanelTypeFacts.Outputs, "10", "8"), (change.Fact, change.Was, change.Becomes));
        var (come, _) = TakePart.Effect(job.Report, TakePart.Into(job.House, newer).Value);
        Assert.Equal("output-past-panel", Assert.Single(come).Check.Id);
        // Nothing was taken yet, and a blank of the file takes nothing away.
        Assert.Equal("10", job.House.ItemsOf(ItemKind.PanelType).Single().Latest(PanelTypeFacts.Outputs)!.Stored);
        Assert.Equal(type.Id, newer.In(job.House)!.Id);
    }

    [Fact]
    public void AHouseThatBeginsWithAKeptPartHasBlanksOfTheOtherSorts()
    {
        var job = new TestJob(store: new MemoryStore("laptop", Begun(PartText.Read(Panel).Value)));
        Assert.Equal("7", Assert.Single(job.House.ItemsOf(ItemKind.PanelType)).Latest(PanelTypeFacts.Outputs)!.Stored);
        Assert.NotEmpty(SheetValues.BlankIn(job.House.ItemsOf(ItemKind.HubType).Single()));
    }

    private static ImmutableList<Change> Begun(PartSheet part)
    {
        var scribe = new Scribe(new MemoryStore(), TimeProvider.System, "Ash");
        Assert.True(NewHouse.Begin("Kept", DisplayUnits.Inches, [part]).Then(scribe.Record).Ok);
        return scribe.Log.Changes;
    }
}
