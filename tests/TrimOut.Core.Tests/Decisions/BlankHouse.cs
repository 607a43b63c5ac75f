using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

/// <summary>A house as it is begun: with a blank kit.</summary>
internal static class BlankHouse
{
    /// <summary>A job in it, with one roller that a panel feeds for each tag.</summary>
    public static TestJob With(params string[] tags)
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", DisplayUnits.Inches).Then(scribe.Record).Ok);
        var begun = new TestJob(store: new MemoryStore("laptop", scribe.Log.Changes));
        return tags.Aggregate(begun, (job, tag) => job.Window(tag).Say(tag, UnitFacts.Power, "panel"));
    }

    /// <summary>The only type of panel in a house.</summary>
    public static Item Panel(this TestJob job) => job.House.ItemsOf(ItemKind.PanelType).Single();

    /// <summary>A part of its kit.</summary>
    public static Item Part(this TestJob job, ItemKind kind, string name) => job.House.ItemsOf(kind).Single(i => job.House.NameOf(i) == name);
}
