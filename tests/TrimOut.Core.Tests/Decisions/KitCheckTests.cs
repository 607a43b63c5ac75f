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
