using System.Collections.Immutable;
using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Checks.Safety;

namespace TrimOut.Core.Checks;

/// <summary>Every check, in the order in which they are reported.</summary>
public static class AllChecks
{
    /// <summary>All checks.</summary>
    public static ImmutableArray<ICheck> All { get; } =
    [
        new LeadAwayFromMotor(), new WindowLeftOutWithoutReason(), new EscapeStaysShut(), new OldPaintUntested(),
            new EntryOffLeadSide(), new EntryUnderEndBracket(), new EntryUnderCentreSupport(),
        new RunPastKitTable(), new VoltsShortAtUnit(), new CableShared(), new CableNotListed(), new ListedByRelaxation(), new CableShortOnHand(),
            new ConductorsAlike(),
            new UnitsPastOutputs(),
        new TailUnderHalfWidth(), new TailUnderWholeWidth(), new TailShortOfMotor(), new EntryUnderMiddleScrew(), new MainsTooNear(), new HoleNearEdge(),
            new LabelEndsDiffer(), new LabelTwice(), new FireStopOpen(), new NoSpareCable(),
        new LoopOffLength(), new SecondLoopDiffers(), new PanelPastClassTwo(),
        new MeasuresIncomplete(), new WidthsSpread(), new HeightsSpread(), new PassesDisagree(), new DiagonalsOffSides(), new OutOfSquare(),
        new DepthTooShallow(), new SetbackTooDeep(), new StandsOutOfReveal(), new HandleInHangingPlane(),
        new StackOverGlass(), new StackInTheWay(), new HeadRoomShort(), new CornerClash(), new ScrewUnderCentreSupport(),
        new StepOffUnits(), new RollPastHeadCover(), new OrderPastOpening(), new OrderOffMeasures(), new PartsPastOpening(), new GapBetweenUnitsTooSmall(),
            new GapBetweenUnitsTooLarge(),
        new DeliveredSizeOff(), new BoxLabelOff(), new DeliveredDamaged(), new CordWithinReach(),
        new OutputPastPanel(), new OutputShared(), new OutputOverloaded(), new OutputOverloadedTogether(), new PanelOverloaded(), new MainsUnsigned(),
            new BreakerOverloaded(),
            new PolaritySwapped(), new OpenVoltsOffSupply(), new LoadedVoltsLow(),
        new HubPastDevices(), new RemotePastUnits(), new RemoteAtAnotherHub(), new UnitOffRoomRemote(), new HubNameTwice(), new HubNamesAlike(),
        new BarsNotLevel(), new BarOffSill(), new PresetOffRemote(),
        new StepWithoutEvidence(), new StepPassedOver(), new DatesRunBackwards(), new KitUnchecked(),
        new ValuesDisagree(), new RemovedWhileWorkedOn(), new TagTwice(),
    ];

    /// <summary>The check with that id; null when there is none.</summary>
    public static ICheck? Find(string id) => All.FirstOrDefault(c => c.Info.Id == id);
}
