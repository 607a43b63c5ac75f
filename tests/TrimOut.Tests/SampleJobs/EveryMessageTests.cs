using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

/// <summary>What a check can say is wrong, and what it advises, some sample shows; else the reason stands here.</summary>
public class EveryMessageTests
{
    /// <summary>What says which fact is missing, and nothing that is wrong.</summary>
    private const string MissingFacts = "NotChecked";

    private const string Copies = "only two copies bring it about; tests of the merge have them";
    private const string OtherSide = "the other side, direction or end of a mistake that a sample shows";
    private const string Count = "one in place of several, or several in place of one";
    private const string Part = "a part of a sentence that a sample shows without it";
    private const string Moment = "advice for a moment in which no sample has that mistake";
    private const string Stage = "a stage in which no sample is: less is known there, or more is done";
    private const string InItsPlace = "where it would be said, a sample says the other sentence of its check";

    /// <summary>What no sample shows, by its check or what it says it with, and why.</summary>
    private static readonly Dictionary<string, string> Silent = new()
    {
        ["Disagreement: PutBy, TakenAwayBy"] = Copies,
        ["RemovedAtWork: BroughtBack, More, WentOn"] = Copies,
        ["PanelNameTwice: OfHubs, OfPanels, OfRemotes, OtherHubName, OtherPanelName, OtherRemoteName"] = Copies,
        ["ValuesDisagree: Differ, Or"] = Copies,
        ["FireStopOpen: OpenAndSeal, SeeIt"] = Moment,
        ["EntryOffLeadSide: OtherSide"] = OtherSide,
        ["EntryOffOpening: PastWidth"] = OtherSide,
        ["EntryUnderEndBracket: LeadRound, MoveEntryBack, MoveEntryBefore, UnderFarBracket"] = InItsPlace,
        ["OpeningsOffCount: FindIt"] = Moment,
        ["PlugInWithoutSocket: TooFar, WhileOpen"] = InItsPlace,
        ["TailUnderHalfWidth: ShortOfSeveral"] = OtherSide,
        ["TailUnderWholeWidth: ShortOfSeveral"] = OtherSide,
        ["BreakerOverloaded: Unusual"] = InItsPlace,
        ["CableNotWanted: Feeds, Landed"] = OtherSide,
        ["LoadedVoltsLow: NotUnderLoad"] = InItsPlace,
        ["MainsUnsigned: ByOneOfCrew, NoName"] = InItsPlace,
        ["MotorOffSupply: OfAllPanels, OfRun"] = InItsPlace,
        ["OpenVoltsOffSupply: NoPower"] = InItsPlace,
        ["OutputFeedsAnother: TheOutput"] = Part,
        ["OutputOverloaded: NoneGives"] = OtherSide,
        ["OutputOverloadedTogether: OnePastClassTwo, OnePastOutput, PastClassTwo"] = InItsPlace,
        ["PanelOverloaded: OnePastPanel"] = InItsPlace,
        ["PolaritySwapped: Negative"] = OtherSide,
        ["UnitsPastOutputs: PastOnePanel"] = Count,
        ["ChangedSinceOrder: Cleared"] = Part,
        ["GapBetweenUnitsTooLarge: ManyGaps"] = Count,
        ["GapBetweenUnitsTooSmall: DoNotHangPlumb, ManyGaps, OneGap, OrderWorkedOut, PartsNarrower, WidthOf"] = InItsPlace,
        ["OrderOffMeasures: ReachesPastSill, WidthOff"] = Stage,
        ["OrderPastOpening: NothingTakenOff, PastWidth"] = InItsPlace,
        ["PartsPastOpening: PartsPastKnown, PartsPastPlumb"] = Stage,
        ["PastWhatIsMade: AskMaker, FigureOrWarranty, OtherKindBeforeOrder, OtherKindWhileOpen, OthersBeforeOrder, TooHigh, TooHighAlready, TooWideAlready"] =
            Stage,
        ["UnitsUnlike: AgreeOrOrderAgain, CallToday"] = Moment,
        ["FinishedOffRough: ChangedOver, HeightTooLarge, WidthTooLarge, WidthTooSmall"] = OtherSide,
        ["MeasuresIncomplete: NotYet"] = InItsPlace,
        ["OutOfSquare: HeadNotParallel, LeansPastWhatComesOff, ReachFarther, ShimTrim, SidesNotParallel"] = OtherSide,
        ["OverlapShort: OrderedNoWider, ShortAsMade"] = InItsPlace,
        ["PassesDisagree: HeightsDisagree"] = OtherSide,
        ["BarOffSill: TooShortForThat"] = InItsPlace,
        ["KitUnchecked: Older"] = Count,
        ["LengthUnusual: NumberOfLeg, OfLeg"] = OtherSide,
        ["ProofOutdated: CableAgain, CordAgain, OfRun"] = Stage,
        ["SheetValueUnusual: ManyOff"] = Count,
        ["StepPassedOver: DoItBefore, SignedOver, StepOf, StepOfMany"] = Stage,
        ["UnitOffRoomRemote: SeveralElsewhere"] = Count,
        ["CornerClash: Meet, MeetsItself, OneWall"] = OtherSide,
        ["ScrewUnderCentreSupport: AtEndBracket"] = OtherSide,
        ["CableNotListed: BetweenFloors, InsideWall, MeasureJacket, NotListed"] = InItsPlace,
        ["CableShared: Circle, SeveralAllowed, TooFewVolts"] = InItsPlace,
        ["CableShortOnHand: AtLeastSeveralRuns, SeveralRuns"] = Count,
        ["ConductorsAlike: NoSuchPlus"] = InItsPlace,
        ["ConductorsNotApart: Leak"] = OtherSide,
        ["ListedByRelaxation: AskAboutConduit, InConduit, InsideWall"] = InItsPlace,
        ["LoopOffLength: OffReckoned, ReadsLeads, ReadsShort"] = OtherSide,
        ["LoopOpenOrShorted: Open, WallClosed"] = OtherSide,
        ["LoopTestLeftOut: NoCable, NoFirst"] = Stage,
        ["RunFigures: NearerPanel, NoTable, OpenLoop"] = InItsPlace,
        ["RunPastKitTable: AtLeastTooLong, PlannedTooLong, TableEnds"] = Stage,
        ["SecondLoopDiffers: FirstIsOff, FirstWasOpen, LessThanBefore, ReckonedWith"] = OtherSide,
        ["VoltsShortAtUnit: PlannedTooFew, SupplyTooLow"] = Stage,
        ["BoxLate: AfterVisit, NoDayKnown"] = Stage,
        ["DeliveredFinishOff: OtherThanAgreed"] = Stage,
        ["TagTwice: NoRoom, OneOther, SeveralOthers"] = Copies,
    };

    [Fact]
    public void WhatACheckCanSaySomeSampleShowsOrThereIsAReason()
    {
        var said = SampleJob.Names.SelectMany(n => SampleJob.Open(n).Report.Findings)
            .SelectMany(f => CheckMessages.In(f.Found.Message).Concat(CheckMessages.In(f.Found.Mend))).ToHashSet();
        var silent = CheckMessages.Classes.Where(c => c.Name != MissingFacts)
            .Select(c => (c.Name, Messages: CheckMessages.Found(c).Where(m => !said.Contains(m.Message)).Select(m => m.Name)
                .Order(StringComparer.Ordinal).ToList()))
            .Where(c => c.Messages.Count > 0).Select(c => $"{c.Name}: {string.Join(", ", c.Messages)}").ToHashSet(StringComparer.Ordinal);
        var known = Silent.Keys.ToHashSet(StringComparer.Ordinal);
        Assert.True(known.SetEquals(silent), string.Join('\n',
            silent.Except(known).Select(s => "no sample shows " + s).Concat(known.Except(silent).Select(k => "not so: " + k))));
    }
}
