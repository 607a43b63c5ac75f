using System.Collections.Immutable;
using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Checks.Copies;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Checks.InService;
using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Checks.Measures;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>Every check, in the order in which they are reported.</summary>
public static class AllChecks
{
    /// <summary>All checks.</summary>
    public static ImmutableArray<ICheck> All { get; } =
    [
        new LeadAwayFromMotor(), new WindowLeftOutWithoutReason(), new OpeningsOffCount(), new PastWhatIsMade(), new PlugInWithoutSocket(),
            new EscapeStaysShut(), new OldPaintUntested(),
            new EntryOffLeadSide(), new EntryFarFromMotor(), new PositionTwice(), new EntryOffOpening(), new EntryUnderEndBracket(),
            new EntryUnderCentreSupport(),
        new RunPastKitTable(), new VoltsShortAtUnit(), new CableShared(), new CableNotListed(), new ListedByRelaxation(), new LegPlaceOffWay(),
            new CableShortOnHand(), new NoBoxLongEnough(), new ConductorsAlike(), new UnitsPastOutputs(), new MotorOffSupply(),
        new TailUnderHalfWidth(), new TailUnderWholeWidth(), new TailShortOfMotor(), new EntryUnderMiddleScrew(), new MainsTouched(), new MainsTooNear(),
            new HoleNearEdge(), new LabelEndsDiffer(), new LabelTwice(), new LabelOffUnit(), new EntryOffPlan(), new PanelTailShort(), new TailLongerThanLeft(),
            new FireStopOpen(), new NoSpareCable(), new JointOnTheWay(),
        new LoopOpenOrShorted(), new ConductorsNotApart(), new ConductorTouchesBuilding(), new LoopOffLength(), new SecondLoopDiffers(), new LoopTestLeftOut(),
            new PanelPastClassTwo(),
        new MeasuresIncomplete(), new MeasuredBeforePaint(), new MountOffMeasures(), new FinishedOffRough(), new WidthsSpread(), new HeightsSpread(),
            new PassesDisagree(), new DiagonalsOffSides(), new OutOfSquare(),
        new DepthTooShallow(), new SetbackTooDeep(), new StandsOutOfReveal(), new HandleInHangingPlane(), new OverlapShort(), new OverlapPastCorner(),
        new StackOverGlass(), new StackInTheWay(), new HeadRoomShort(), new CornerClash(), new ScrewUnderCentreSupport(),
            new SetbackPastReveal(), new SetbackOffSheet(), new CentreSupportLeftOut(),
        new StepOffUnits(), new UnitsUnlike(), new RollPastHeadCover(), new OrderPastOpening(), new PlumbWidthShort(), new OrderOffMeasures(),
            new OrderedWithoutSize(), new OrderTooLate(),
            new PartsPastOpening(), new ChangedSinceOrder(), new RemovedOnOrder(), new GapBetweenUnitsTooSmall(), new GapBetweenUnitsTooLarge(),
        new BoxLate(), new DeliveredSizeOff(), new BoxLabelOff(), new DeliveredFinishOff(), new DeliveredLeadOff(), new DeliveredDamaged(), new SerialTwice(),
            new FixedIntoBoardAlone(), new HungOutOfLevel(), new CordWithinReach(),
        new OutputPastPanel(), new OutputShared(), new OutputOverloaded(), new OutputOverloadedTogether(), new PanelOverloaded(), new MainsUnsigned(),
            new CableNotWanted(), new BreakerOverloaded(), new JointsUnderPower(),
            new LiveBeforeConnected(), new PolaritySwapped(), new OpenVoltsOffSupply(), new LoadedAboveOpen(), new LoadedUnderLeast(), new LoadedVoltsLow(),
            new OutputFeedsAnother(),
        new HubPastDevices(), new RemotePastUnits(), new RemoteAtAnotherHub(), new PlateTooSmall(), new UnitOffRoomRemote(), new HubNameTwice(),
            new HubNamesAlike(),
        new BarsNotLevel(), new BarOffSill(), new BarInGlass(), new OpenBarAboveStack(), new PresetOffRemote(), new ScheduleOffSun(), new ClaimOpen(),
        new StepWithoutEvidence(), new StepPassedOver(), new ProofOutdated(), new DatesRunBackwards(), new LongitudeOffZone(), new LatitudeOffZone(),
            new LengthUnusual(), new KitUnchecked(),
            new SheetValueUnusual(), new SheetContradictsItself(),
        new ValuesDisagree(), new RemovedWhileWorkedOn(), new TagTwice(), new PanelNameTwice(),
    ];

    /// <summary>All checks, with a list of steps that the work is done by.</summary>
    public static ImmutableArray<ICheck> By(StepList steps) =>
        ReferenceEquals(steps, StepList.Shipped) ? All : [.. All.Select(c => c is StepWithoutEvidence ? new StepWithoutEvidence(steps) : c)];

    /// <summary>The check with that id; null when there is none.</summary>
    public static ICheck? Find(string id) => All.FirstOrDefault(c => c.Info.Id == id);
}
