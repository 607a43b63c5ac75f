using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Truth;
using static TrimOut.TrueHouse.Tests.Recording.Installer;

namespace TrimOut.TrueHouse.Tests.Recording.Pages;

/// <summary>The makers' sheets, typed into the kit line by line, and what is known of the house from its papers.</summary>
internal static class SheetsPage
{
    public static void Write(Installer installer)
    {
        var (house, book, tape) = (installer.Truth, installer.Book, installer.Tape);
        book.Put(Book.JobItself,
            (HouseFacts.Dwelling, Word(house.Dwelling)), (HouseFacts.CodeInForce, "As adopted here"), (HouseFacts.Client, "The owner"),
            (HouseFacts.Address, "1 Test Lane"),
            (HouseFacts.ConductorTemperature, Number(house.WarmestCable)), (HouseFacts.PanelTail, tape.Exactly(house.PlannedPanelTail)),
            (HouseFacts.FramingOn, Day(house.Days[Stage.WalkThrough])), (HouseFacts.DrywallOn, Day(house.Days[Stage.CloseIn].AddDays(-2))),
            (HouseFacts.PaintedOn, Day(house.Days[Stage.CloseIn].AddDays(-1))), (HouseFacts.HandoverOn, Day(house.Days[Stage.Handover])),
            (HouseFacts.OldestPaint, Number(house.OldestPaint)), (HouseFacts.Meter, "Meter 1"), (HouseFacts.MeterLeads, Number(house.MeterLeads)),
            (HouseFacts.MeterStep, Number(installer.Meter.Digit)));
        foreach (var kind in house.Kinds)
            Kind(book, tape, kind);
        foreach (var cover in house.Covers)
        {
            book.Add(ItemKind.HeadCover, cover.Name);
            if (cover is { RoomInside: { } room, Depth: { } depth })
            {
                book.Put(cover.Name, (HeadCoverFacts.RoomInside, tape.Exactly(room)), (HeadCoverFacts.Depth, tape.Exactly(depth)));
                book.HoldAgainstSheet(ItemKind.HeadCover, cover.Name);
            }
        }
        foreach (var cable in house.Cables)
        {
            book.Add(ItemKind.CableType, cable.Name);
            book.Put(cable.Name, (CableTypeFacts.Conductor, cable.Conductor), (CableTypeFacts.Stranding, cable.Stranded ? "stranded" : "solid"),
                (CableTypeFacts.Listing, Word(cable.Listing)), (CableTypeFacts.LongestRun, tape.Run(cable.LongestRun)),
                (CableTypeFacts.Diameter, Tape.Thin(cable.Diameter)),
                (CableTypeFacts.BoxLength, tape.Run(cable.Box)), (CableTypeFacts.Colours, cable.Colours), (CableTypeFacts.Plus, cable.Plus));
            book.HoldAgainstSheet(ItemKind.CableType, cable.Name);
        }
        foreach (var panel in house.PanelSheets)
        {
            book.Add(ItemKind.PanelType, panel.Name);
            book.Put(panel.Name, (PanelTypeFacts.Outputs, Number(panel.Outputs)), (PanelTypeFacts.Supply, Number(panel.Volts)),
                (PanelTypeFacts.OutputCurrent, Number(panel.PerOutput)),
                (PanelTypeFacts.TotalCurrent, Number(panel.Total)), (PanelTypeFacts.InputCurrent, Number(panel.Input(house.Metric))),
                (PanelTypeFacts.UnitsPerOutput, Number(panel.UnitsPerOutput)));
            book.HoldAgainstSheet(ItemKind.PanelType, panel.Name);
        }
        foreach (var hub in house.HubSheets)
        {
            book.Add(ItemKind.HubType, hub.Name);
            book.Put(hub.Name, (HubTypeFacts.Devices, Number(hub.Most)));
            book.HoldAgainstSheet(ItemKind.HubType, hub.Name);
        }
        foreach (var remote in house.RemoteSheets)
        {
            book.Add(ItemKind.RemoteType, remote.Name);
            book.Put(remote.Name, (RemoteTypeFacts.Units, Number(remote.Most)), (RemoteTypeFacts.Gangs, Number(remote.Gangs)));
            book.HoldAgainstSheet(ItemKind.RemoteType, remote.Name);
        }
    }

    private static void Kind(Book book, Tape tape, KindSheet kind)
    {
        string Size(double millimetres) => tape.Exactly(millimetres);
        book.Add(ItemKind.CoveringKind, kind.Name);
        book.Put(kind.Name,
            (CoveringKindFacts.MotorEnd, Word(kind.Motor)), (CoveringKindFacts.RaisedForm, Word(kind.Form)),
            (CoveringKindFacts.MotorVolts, Number(kind.MotorVolts)),
            (CoveringKindFacts.LeastVolts, Number(kind.LeastVolts)), (CoveringKindFacts.RunningCurrent, Number(kind.Running)),
            (CoveringKindFacts.StartingCurrent, Number(kind.Starting)),
            (CoveringKindFacts.WithoutPower, Word(kind.WithoutPower)),
            (CoveringKindFacts.Widest, Size(kind.Widest)), (CoveringKindFacts.Highest, Size(kind.Highest)),
            (CoveringKindFacts.EndBracket, Size(kind.EndBracket)), (CoveringKindFacts.EndBracketBack, Size(kind.BracketBack)),
            (CoveringKindFacts.EndBracketDown, Size(kind.BracketDown)),
            (CoveringKindFacts.CentreBracket, Size(kind.CentreBracket)), (CoveringKindFacts.CentreFrom, Size(kind.CentreFrom)),
            (CoveringKindFacts.MiddleScrew, kind.MiddleScrew is { } off ? Size(off) : "none"),
            (CoveringKindFacts.GapBetween, Size(kind.GapLeast)), (CoveringKindFacts.GapMost, Size(kind.GapMost)),
            (CoveringKindFacts.EndAllowance, Size(kind.EndClear)),
            (CoveringKindFacts.OrderedInside, kind.MadeWidth ? "made" : "opening"), (CoveringKindFacts.DeductionInside, Size(kind.Deduction)),
            (CoveringKindFacts.OrderedOutside, "made"), (CoveringKindFacts.DeductionOutside, "0"),
            (CoveringKindFacts.PartsPerUnit, "2 end brackets, 4 screws"), (CoveringKindFacts.Setback, Size(kind.Setback)),
            (CoveringKindFacts.LeadBehind, Size(kind.LeadBehind)),
            (CoveringKindFacts.DepthNeeded, Size(kind.DepthNeeded)), (CoveringKindFacts.DepthFlush, Size(kind.DepthFlush)),
            (CoveringKindFacts.RoundTo, Size(kind.Step)),
            (CoveringKindFacts.PairHold, Number(kind.PairHold)), (CoveringKindFacts.PairCue, "it nods"),
            (CoveringKindFacts.PresetHold, Number(kind.PresetHold)),
            (CoveringKindFacts.PresetCue, "it nods twice"), (CoveringKindFacts.LimitsHow, "Hold both buttons until it nods."));
        if (kind.Form == RaisedForm.Roll)
            book.Put(kind.Name, (CoveringKindFacts.Tube, Size(kind.Tube)), (CoveringKindFacts.FabricThickness, Tape.Thin(kind.Fabric)),
                (CoveringKindFacts.ExtraFabric, Size(kind.ExtraFabric)));
        else
            book.Put(kind.Name, (CoveringKindFacts.StackFixed, Size(kind.StackFixed)), (CoveringKindFacts.StackShare, Number(kind.StackShare)));
        book.HoldAgainstSheet(ItemKind.CoveringKind, kind.Name);
    }
}
