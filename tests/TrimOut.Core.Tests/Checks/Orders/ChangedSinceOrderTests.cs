using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class ChangedSinceOrderTests
{
    private static readonly ChangedSinceOrder Check = new();

    public static Example Finds => new(() => Acknowledged(), j => j.Say("W01", UnitFacts.Colour, "Slate"));

    public static Example Passes => new(() => Jobs.Ordered(), j => j.Say("W01", UnitFacts.Acknowledgement, "N-1"));

    [Fact]
    public void WhatWasWrittenBeforeTheAcknowledgementIsFine() => Acknowledged().Fine(Check, "W01");

    [Theory]
    [InlineData("fabric", "Plain weave", "fabric, now Plain weave")]
    [InlineData("colour", "Slate", "color, now Slate")]
    [InlineData("opacity", "blackout", "opacity, now blackout")]
    [InlineData("power", "battery", "power, now battery")]
    [InlineData("kind", "Cellular", "kind, now Cellular")]
    [InlineData("lead-side", "right", "lead side, now right")]
    [InlineData("order-width", "35\"", "order width, now 35\"")]
    [InlineData("colour", "", "color cleared")]
    public void WhateverTheOrderTellsIsFoundWhenItChanges(string fact, string typed, string said)
    {
        var found = Acknowledged().Say("W01", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!, typed).Fault(Check, "W01");
        Assert.Equal($"Written after the maker acknowledged it: {said}.", found.Message);
        Assert.StartsWith("Call the maker today", found.Mend, StringComparison.Ordinal);
    }

    /// <summary>It was ordered again as it stood then; what is changed after that is changed again.</summary>
    [Fact]
    public void WhatWasOrderedAgainIsAgreedAnew()
    {
        var job = Acknowledged().Say("W01", UnitFacts.OrderWidth, "35\"").Say("W01", UnitFacts.ReorderedOn, "2026-03-02");
        job.Fine(Check, "W01");
        Assert.Contains("order width, now 34", job.Say("W01", UnitFacts.OrderWidth, "34\"").Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SoIsTheMount() =>
        Assert.Equal("Written after the maker acknowledged it: mount, now outside.",
            Acknowledged().Say("W01", WindowFacts.Mount, "outside").Fault(Check, "W01").Message);

    [Theory]
    [InlineData("order-width", "35\"", "order width, now 35\"")]
    [InlineData("colour", "Slate", "color, now Slate")]
    [InlineData("fabric", "", "fabric cleared")]
    public void WhatChangesBeforeTheAcknowledgementIsFoundAtOnce(string fact, string typed, string said)
    {
        var found = Sent().Say("W01", FactTable.Find(Core.Houses.ItemKind.Unit, fact)!, typed).Fault(Check, "W01");
        Assert.Equal($"Changed after the order was sent: {said}.", found.Message);
        Assert.StartsWith("Call the maker today: until it is cut it can be changed. Write the day of the order once more", found.Mend,
            StringComparison.Ordinal);
    }

    [Fact]
    public void TheFirstAcknowledgementAnswersWhatWasSentAndNotWhatWasChangedSince() =>
        Assert.Equal("Changed after the order was sent: order width, now 35\".",
            Sent().Say("W01", UnitFacts.OrderWidth, "35\"").Say("W01", UnitFacts.Acknowledgement, "N-1").Fault(Check, "W01").Message);

    [Fact]
    public void WhatChangedBeforeTheAcknowledgementAndAfterItAreTwoFindings()
    {
        var job = Sent().Say("W01", UnitFacts.OrderWidth, "35\"").Say("W01", UnitFacts.Acknowledgement, "N-1").Say("W01", UnitFacts.Colour, "Slate");
        Assert.Equal(["Changed after the order was sent: order width, now 35\".", "Written after the maker acknowledged it: color, now Slate."],
            Check.Run(job.House).Select(r => Assert.IsType<Outcome.Found>(r.Outcome).Message.In(job.House)));
    }

    [Fact]
    public void AnAcknowledgementOfBeforeTheSheetWasFrozenAgainAnswersNothingOfIt()
    {
        var again = Acknowledged().Say("W01", UnitFacts.OrderedOn, "2026-03-03").Say("W01", UnitFacts.Colour, "Slate");
        Assert.Equal("Written after the maker acknowledged it: color, now Slate.", again.Fault(Check, "W01").Message);
        Assert.Equal("Changed after the order was sent: color, now Slate.", again.Say("W01", UnitFacts.Acknowledgement, "N-2").Fault(Check, "W01").Message);
        again.Say("W01", UnitFacts.Acknowledgement, "N-3").Fine(Check, "W01");
    }

    [Fact]
    public void AnAcknowledgementThatIsWrittenWithTheDayOfTheSheetIsItsFirst()
    {
        var job = Finished(Jobs.Ordered());
        var both = job.Do(SetFact.Typed(job.House, job.Unit("W01").Item, UnitFacts.OrderedOn, "2026-03-02")
            .Then<Draft>(d => d.And(SetFact.Typed(job.House, job.Unit("W01").Item, UnitFacts.Acknowledgement, "N-1").Value)))
            .Say("W01", UnitFacts.Colour, "Slate");
        Assert.Equal("Written after the maker acknowledged it: color, now Slate.", both.Fault(Check, "W01").Message);
        both.Say("W01", UnitFacts.Acknowledgement, "N-2").Fine(Check, "W01");
    }

    [Fact]
    public void WhatIsPutBackByHandIsNoChange()
    {
        Sent().Say("W01", UnitFacts.Colour, "Slate").Say("W01", UnitFacts.Colour, "Stone").Fine(Check, "W01");
        Acknowledged().Say("W01", UnitFacts.Colour, "").Say("W01", UnitFacts.Colour, "Stone").Fine(Check, "W01");
        Acknowledged().Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.Mount, "inside").Fine(Check, "W01");
    }

    [Fact]
    public void ATakenAcknowledgementIsNone() => Assert.Equal("Changed after the order was sent: color, now Slate.",
        Acknowledged().Say("W01", UnitFacts.Colour, "Slate").Forget("W01", UnitFacts.Acknowledgement).Fault(Check, "W01").Message);

    [Fact]
    public void WhatAnotherLaptopHadChangedUnknownToWhoeverSentTheOrderIsFound()
    {
        var site = new TestJob(DisplayUnits.Inches, new MemoryStore("site"));
        Finished(Jobs.Ordered(job: site));
        var office = new TestJob(DisplayUnits.Inches, new MemoryStore("office", site.Scribe.Log.Changes));
        office.Clock.SetUtcNow(site.Clock.GetUtcNow());
        office.Say("W01", UnitFacts.Colour, "Slate");
        site.Clock.Advance(TimeSpan.FromHours(1));
        site.Say("W01", UnitFacts.OrderedOn, "2026-03-02");
        Assert.True(site.Scribe.TakeIn(Merge.Of(site.Scribe.Log, office.Scribe.Log).Value).Ok);
        Assert.Equal("Changed after the order was sent: color, now Slate.", site.Fault(Check, "W01").Message);
    }

    [Fact]
    public void ANewAcknowledgementCoversWhatWasChanged() =>
        Acknowledged().Say("W01", UnitFacts.Colour, "Slate").Say("W01", UnitFacts.Acknowledgement, "N-2").Fine(Check, "W01");

    [Fact]
    public void ASheetThatIsFrozenAgainCoversItToo() =>
        Acknowledged().Say("W01", UnitFacts.Colour, "Slate").Say("W01", UnitFacts.OrderedOn, "2026-03-03").Fine(Check, "W01");

    [Fact]
    public void WhatChangesAfterTheBoxCameIsComparedWithIt()
    {
        var job = Acknowledged().Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", UnitFacts.Colour, "Slate");
        Assert.StartsWith("See what came", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Write what hangs there", job.Mark("W01", "clicked-in").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutADayAndAnAcknowledgementNothingIsKnown() => Jobs.Ordered().Lacks(Check, "W01", "ordered on");

    [Fact]
    public void WithoutADayTheAcknowledgementTells() =>
        Assert.Equal("Written after the maker acknowledged it: color, now Slate.",
            Finished(Jobs.Ordered()).Say("W01", UnitFacts.Acknowledgement, "N-1").Say("W01", UnitFacts.Colour, "Slate").Fault(Check, "W01").Message);

    private static TestJob Acknowledged() => Sent().Say("W01", UnitFacts.Acknowledgement, "N-1");

    private static TestJob Sent() => Finished(Jobs.Ordered()).Say("W01", UnitFacts.OrderedOn, "2026-03-02");

    private static TestJob Finished(TestJob job) => job.Say("W01", UnitFacts.Fabric, "Weave").Say("W01", UnitFacts.Colour, "Stone");

    [Fact]
    public void WhatChangedIsToldInTheOrderOfTheSheet() => Assert.Equal("Written after the maker acknowledged it: color, now Slate, mount, now outside.",
        Acknowledged().Say("W01", WindowFacts.Mount, "outside").Say("W01", UnitFacts.Colour, "Slate").Fault(Check, "W01").Message);

    // The sheet was frozen again after N-1, and N-1 taken away since: N-2 is the first answer to what was sent then, and says nothing of the color.
    [Fact]
    public void AnAcknowledgementThatWasTakenAwayIsNoneThatIsAnsweredAnew() =>
        Assert.Equal("Changed after the order was sent: color, now Slate.", Acknowledged().Say("W01", UnitFacts.OrderedOn, "2026-03-03")
            .Say("W01", UnitFacts.Colour, "Slate").Forget("W01", UnitFacts.Acknowledgement).Say("W01", UnitFacts.Acknowledgement, "N-2")
            .Fault(Check, "W01").Message);
}
