using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Testing;

/// <summary>A kit with every value filled in, for tests that ask about something else.</summary>
/// <remarks>
/// Values are common practice without a published source, and stand together nowhere but here: no house starts from them. Hold times and cues are
/// invented.
/// </remarks>
public static class CommonPracticeKit
{
    /// <summary>A new house with this kit in place of blanks.</summary>
    public static Result<Draft> NewHouse(string name, DisplayUnits units) =>
        Core.Decisions.NewHouse.WithoutKit(name, units).Then<Draft>(d => d.WithCommonPracticeKit(units));

    /// <summary>Adds the kit to a draft, in whole figures of the units of the house.</summary>
    public static Draft WithCommonPracticeKit(this Draft draft, DisplayUnits units)
    {
        draft = Kind(draft, units, "Roller", MotorEnd.Left, RaisedForm.Roll, out var roller)
            .Put(roller, CoveringKindFacts.Tube, Inches(1.5m, units))
            .Put(roller, CoveringKindFacts.FabricThickness, Length.FromMillimetres(0.5m))
            .Put(roller, CoveringKindFacts.ExtraFabric, Inches(12, units))
            .Put(roller, CoveringKindFacts.PartsPerUnit, Parts("2 end brackets, 4 screws"))
            .Put(roller, CoveringKindFacts.EndBracket, Inches(0.75m, units))
            .Put(roller, CoveringKindFacts.EndBracketBack, Inches(2.5m, units))
            .Put(roller, CoveringKindFacts.EndBracketDown, Inches(2.5m, units))
            .Put(roller, CoveringKindFacts.CentreBracket, Inches(1.5m, units))
            .Put(roller, CoveringKindFacts.CentreFrom, Inches(108, units))
            .Put(roller, CoveringKindFacts.DepthNeeded, Inches(2.5m, units))
            .Put(roller, CoveringKindFacts.DepthFlush, Inches(4, units));
        draft = Kind(draft, units, "Cellular", MotorEnd.Left, RaisedForm.Stack, out var cellular)
            .Put(cellular, CoveringKindFacts.StackFixed, Inches(2.5m, units))
            .Put(cellular, CoveringKindFacts.StackShare, 0.04m)
            .Put(cellular, CoveringKindFacts.PartsPerUnit, Parts("2 end brackets, 4 screws"))
            .Put(cellular, CoveringKindFacts.EndBracket, Inches(1.25m, units))
            .Put(cellular, CoveringKindFacts.EndBracketBack, Inches(2, units))
            .Put(cellular, CoveringKindFacts.EndBracketDown, Inches(2, units))
            .Put(cellular, CoveringKindFacts.CentreBracket, Inches(1.25m, units))
            .Put(cellular, CoveringKindFacts.CentreFrom, Inches(72, units))
            .Put(cellular, CoveringKindFacts.DepthNeeded, Inches(1.5m, units))
            .Put(cellular, CoveringKindFacts.DepthFlush, Inches(2.75m, units));
        draft = Kind(draft, units, "Wood blind", MotorEnd.Left, RaisedForm.Stack, out var blind)
            .Put(blind, CoveringKindFacts.StackFixed, Inches(3, units))
            .Put(blind, CoveringKindFacts.StackShare, 0.08m)
            .Put(blind, CoveringKindFacts.PartsPerUnit, Parts("2 end brackets, 4 screws, 1 middle screw"))
            .Put(blind, CoveringKindFacts.EndBracket, Inches(1.5m, units))
            .Put(blind, CoveringKindFacts.EndBracketBack, Inches(2.5m, units))
            .Put(blind, CoveringKindFacts.EndBracketDown, Inches(2.5m, units))
            .Put(blind, CoveringKindFacts.CentreBracket, Inches(2, units))
            .Put(blind, CoveringKindFacts.CentreFrom, Inches(60, units))
            .Put(blind, CoveringKindFacts.MiddleScrew, Inches(2, units))
            .Put(blind, CoveringKindFacts.DepthNeeded, Inches(2.5m, units))
            .Put(blind, CoveringKindFacts.DepthFlush, Inches(3.5m, units));
        draft = Cable(draft, units, "16/2", 16, 200);
        draft = Cable(draft, units, "18/2", 18, 120);
        draft = Cable(draft, units, "20/2", 20, 75);
        draft = Cover(draft, units, "None", null, null);
        draft = Cover(draft, units, "Fascia 3 in", 2.75m, 3);
        draft = Cover(draft, units, "Fascia 4 in", 3.75m, 4);
        draft = Cover(draft, units, "Valance", 3.25m, 3.5m);
        return draft
            .New(ItemKind.PanelType, House.RootId, out var panel)
            .Put(panel, PanelTypeFacts.Name, "Invented supply")
            .Put(panel, PanelTypeFacts.Outputs, 10)
            .Put(panel, PanelTypeFacts.Supply, new Voltage(12))
            .Put(panel, PanelTypeFacts.OutputCurrent, new Current(2.5m))
            .Put(panel, PanelTypeFacts.TotalCurrent, new Current(15))
            .Put(panel, PanelTypeFacts.UnitsPerOutput, 1)
            .New(ItemKind.HubType, House.RootId, out var hub)
            .Put(hub, HubTypeFacts.Name, "Hub")
            .Put(hub, HubTypeFacts.Devices, 75)
            .New(ItemKind.RemoteType, House.RootId, out var handheld)
            .Put(handheld, RemoteTypeFacts.Name, "Handheld")
            .Put(handheld, RemoteTypeFacts.Units, 10)
            .Put(handheld, RemoteTypeFacts.Gangs, 0)
            .New(ItemKind.RemoteType, House.RootId, out var wall)
            .Put(wall, RemoteTypeFacts.Name, "Wall remote")
            .Put(wall, RemoteTypeFacts.Units, 10)
            .Put(wall, RemoteTypeFacts.Gangs, 1);
    }

    private static Draft Kind(Draft draft, DisplayUnits units, string name, MotorEnd end, RaisedForm form, out string id) => draft
        .New(ItemKind.CoveringKind, House.RootId, out id)
        .Put(id, CoveringKindFacts.Name, name)
        .Put(id, CoveringKindFacts.MotorEnd, end)
        .Put(id, CoveringKindFacts.RaisedForm, form)
        .Put(id, CoveringKindFacts.MotorVolts, new Voltage(12))
        .Put(id, CoveringKindFacts.LeastVolts, new Voltage(10.2m))
        .Put(id, CoveringKindFacts.RunningCurrent, new Current(0.8m))
        .Put(id, CoveringKindFacts.StartingCurrent, new Current(1.0m))
        .Put(id, CoveringKindFacts.Widest, Inches(144, units))
        .Put(id, CoveringKindFacts.Highest, Inches(144, units))
        .Put(id, CoveringKindFacts.GapBetween, Inches(0.125m, units))
        .Put(id, CoveringKindFacts.GapMost, Inches(0.5m, units))
        .Put(id, CoveringKindFacts.EndAllowance, Length.Zero)
        .Put(id, CoveringKindFacts.OrderedInside, OrderedWidth.Opening)
        .Put(id, CoveringKindFacts.DeductionInside, Inches(0.25m, units))
        .Put(id, CoveringKindFacts.OrderedOutside, OrderedWidth.Made)
        .Put(id, CoveringKindFacts.DeductionOutside, Length.Zero)
        .Put(id, CoveringKindFacts.Setback, Inches(1.5m, units))
        .Put(id, CoveringKindFacts.LeadBehind, Inches(6, units))
        .Put(id, CoveringKindFacts.RoundTo, units == DisplayUnits.Inches ? Length.FromInches(0, 1, 8) : TapeMark.Millimetre)
        .Put(id, CoveringKindFacts.PairHold, TimeSpan.FromSeconds(7))
        .Put(id, CoveringKindFacts.PairCue, "it beeps twice")
        .Put(id, CoveringKindFacts.PresetHold, TimeSpan.FromSeconds(5))
        .Put(id, CoveringKindFacts.PresetCue, "the bar dips once")
        .Put(id, CoveringKindFacts.LimitsHow, "Send it to the place, then hold the limit key until the bar dips.");

    private static Draft Cable(Draft draft, DisplayUnits units, string name, int gauge, decimal longestFeet) => draft
        .New(ItemKind.CableType, House.RootId, out var id)
        .Put(id, CableTypeFacts.Name, name)
        .Put(id, CableTypeFacts.Conductor, new ConductorSize.Gauge(gauge))
        .Put(id, CableTypeFacts.Stranding, Stranding.Stranded)
        .Put(id, CableTypeFacts.Listing, CableListing.Cl2)
        .Put(id, CableTypeFacts.LongestRun, Feet(longestFeet, units))
        .Put(id, CableTypeFacts.BoxLength, Feet(500, units))
        .Put(id, CableTypeFacts.PartsPerRun, Parts("2 splice connectors"));

    private static Draft Cover(Draft draft, DisplayUnits units, string name, decimal? room, decimal? depth)
    {
        draft = draft.New(ItemKind.HeadCover, House.RootId, out var id).Put(id, HeadCoverFacts.Name, name);
        return room is null || depth is null ? draft
            : draft.Put(id, HeadCoverFacts.RoomInside, Inches(room.Value, units)).Put(id, HeadCoverFacts.Depth, Inches(depth.Value, units));
    }

    private static PartCounts Parts(string text) => PartCounts.Read(text).Value;

    private static Length Inches(decimal inches, DisplayUnits units) => TapeMark.Whole(Length.FromInches(inches), units);

    private static Length Feet(decimal feet, DisplayUnits units) =>
        units == DisplayUnits.Inches ? Length.FromFeet(feet) : Length.FromFeet(feet).RoundDown(Length.FromMetres(1));
}
