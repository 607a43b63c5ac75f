using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Core.Tests.Decisions;

public class KitCheckTests
{
    [Fact]
    public void AValueReadOffTheSheetIsHeldAgainstIt()
    {
        var job = BlankHouse.With();
        var hub = job.Part(ItemKind.HubType, "Hub");
        Assert.Equal(HubTypeFacts.Devices, Assert.Single(SheetValues.BlankIn(hub)));
        job.Do(KitCheck.ReadOff(job.House, hub, HubTypeFacts.Devices, "21"));
        Assert.Empty(SheetValues.NotHeldIn(job.Part(ItemKind.HubType, "Hub")));
        job.Do(KitCheck.ReadOff(job.House, job.Part(ItemKind.HubType, "Hub"), HubTypeFacts.Devices, "22"));
        Assert.Empty(SheetValues.NotHeldIn(job.Part(ItemKind.HubType, "Hub")));
    }

    /// <summary>What was read off an older edition waits to be checked against the newer one; the first that is named is the same, if it is said so.</summary>
    [Fact]
    public void AnotherEditionWaitsForEachValueThatWasCheckedAgainstTheOneBefore()
    {
        var edition = AboutSheet.Of(ItemKind.HubType, AboutSheet.Edition);
        var job = BlankHouse.With();
        job.Do(KitCheck.ReadOff(job.House, Hub(), HubTypeFacts.Devices, "21"));
        job.Do(KitCheck.SameSheet(job.House, Hub(), edition, "March"));
        Assert.Empty(SheetValues.NotHeldIn(Hub()));
        job.SayOf("Hub", edition, "May");
        Assert.EndsWith("Edition: May; 1 value waits to be checked against it", job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
        Assert.Equal(HubTypeFacts.Devices, Assert.Single(SheetValues.NotHeldIn(Hub())));
        Assert.Equal("March", SheetMark.OlderEdition(Hub(), HubTypeFacts.Devices));
        job.Do(KitCheck.Toggle(job.House, Hub(), HubTypeFacts.Devices));
        Assert.Empty(SheetValues.NotHeldIn(Hub()));
        job.SayOf("Hub", edition, "June");
        Assert.Equal("May", SheetMark.OlderEdition(Hub(), HubTypeFacts.Devices));
        job.SayOf("Hub", edition, "may ");
        Assert.Empty(SheetValues.NotHeldIn(Hub()));

        Item Hub() => job.Part(ItemKind.HubType, "Hub");
    }

    [Fact]
    public void AllHeldHoldsNoBlank()
    {
        var job = BlankHouse.With().SayOf("Panel", PanelTypeFacts.Outputs, "7");
        job.Do(KitCheck.All(job.House, job.Part(ItemKind.PanelType, "Panel")));
        var panel = job.Part(ItemKind.PanelType, "Panel");
        Assert.Equal("yes", panel.Latest(Companion.Checked(PanelTypeFacts.Outputs.Name))!.Stored);
        Assert.Null(panel.Latest(Companion.Checked(PanelTypeFacts.Supply.Name))?.Stored);
    }
}
