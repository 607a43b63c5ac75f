using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Facts;
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

    [Fact]
    public void SoIsTheMount() =>
        Assert.Equal("Written after the maker acknowledged it: mount, now outside.",
            Acknowledged().Say("W01", WindowFacts.Mount, "outside").Fault(Check, "W01").Message);

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
    public void WithoutAnAcknowledgementNothingIsKnown() => Jobs.Ordered().Lacks(Check, "W01", "acknowledgement");

    private static TestJob Acknowledged() => Jobs.Ordered().Say("W01", UnitFacts.Fabric, "Weave").Say("W01", UnitFacts.Colour, "Stone")
        .Say("W01", UnitFacts.OrderedOn, "2026-03-02").Say("W01", UnitFacts.Acknowledgement, "N-1");
}
