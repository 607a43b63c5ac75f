using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>
/// A waiver holds for check, subject and figures. So where a check has several messages for what it finds, their figures must tell them apart: by how
/// many there are, or by a tag.
/// </summary>
public class FiguresTellMessagesApartTests
{
    /// <summary>Messages that have as many places, no tags, and are told apart all the same.</summary>
    private static readonly Dictionary<string, string> ToldApart = new()
    {
        ["CableShared: AllTogether, PastTable, SeveralAllowed"] = "a sentence and volts; two lengths; names and a count",
        ["LoopOffLength: ReadsLong, ReadsShort"] = "parts of a sentence whose figures say which",
        ["OutOfSquare: ReachFarther, ShimTrim"] = "two mends",
        ["ProofOutdated: CableAgain, CordAgain, LimitsAgain, PairAgain, PowerAgain"] = "five mends",
        ["StepPassedOver: DoItAgain, DoItBefore, DoItNow"] = "three mends",
        ["LoopOpenOrShorted: NowWallOpen, WallClosed"] = "two mends",
        ["OpenVoltsOffSupply: AnotherSupply, NoPower"] = "parts of a sentence whose figures say which",
        ["PolaritySwapped: ChangeBack, ChangedOver"] = "a mend, and the part of a sentence whose figures say so",
        ["RunFigures: NearerPanel, OpenLoop, ThickerCable"] = "two mends, and the part of a sentence whose figures say so",
        ["RunFigures: TableGoverns, VoltageGoverns"] = "parts of a sentence whose figures say which",
        ["SecondLoopDiffers: FirstIsOff, FirstWasOpen, LessThanBefore, MoreThanBefore"] = "parts of a sentence whose figures say which",
        ["UnitOffRoomRemote: OneElsewhere, SeveralElsewhere"] = "one name or several",
        ["UnitsPastOutputs: PastOnePanel, PastPanels"] = "one panel or several, which is a figure",
        ["ValuesDisagree: Differ, Or"] = "a sentence and a part of it",
        ["ChangedSinceOrder: AfterAnswer, Cleared"] = "a sentence and a part of it",
        ["ChangedSinceOrder: CallToday, SendAnew"] = "two mends",
        ["ConductorsNotApart: Leak, Touch"] = "parts of a sentence whose figures say which",
        ["DeliveredSizeOff: RaiseIt, RaiseWhatHangs"] = "two mends",
        ["SheetValueUnusual: ManyOff, Named"] = "a sentence and a part of it",
        ["EntryUnderEndBracket: MoveEntry, MoveEntryBefore"] = "two mends",
        ["FireStopOpen: AskWhoSawIt, HaveItSealed, OpenAndSeal, SeeIt, WhichIsRight"] = "five mends",
        ["CableNotListed: AnotherCable, MeasureJacket"] = "two mends",
        ["OrderOffMeasures: HoldAgainst, TakeWorkedOut"] = "two mends",
        ["GapBetweenUnitsTooSmall: OneGap, WidthOf"] = "a sentence and a part of it",
        ["GapBetweenUnitsTooSmall: OrderWorkedOut, PartsNarrower"] = "two mends",
        ["ListedByRelaxation: AskAboutConduit, AskAuthority"] = "two mends",
        ["OpeningsOffCount: CountAgain, FindIt, FindItBehindTheWall"] = "three mends",
        ["PanelNameTwice: OfHubs, OfPanels, OfRemotes"] = "what is called so is a panel, a hub or a remote and never two of these",
        ["PanelNameTwice: OtherHubName, OtherPanelName, OtherRemoteName"] = "three mends",
        ["OutputFeedsAnother: FindIt, TheOutput"] = "a mend, and a part of the sentence",
        ["PastWhatIsMade: AskMaker, FigureOrWarranty, OtherKindBeforeOrder, OtherKindWhileOpen, OthersBeforeOrder, OthersWhileOpen"] = "six mends",
        ["PlugInWithoutSocket: WallClosed, WhileOpen"] = "two mends",
        ["KitUnchecked: ManyUnchecked, SomeUnchecked"] = "how many is a figure",
        ["KitUnchecked: ManyOlder, Older"] = "which values they are is a figure",
        ["UnitsUnlike: OfUnit, Unlike"] = "a sentence and a part of it",
        ["UnitsUnlike: AgreeOrOrderAgain, CallToday"] = "two mends",
        ["StepPassedOver: PassedOver, StepOf"] = "a sentence and a part of it",
        ["NotChecked: OfOther, OfSheet, WasRemoved"] = "what is missing is not waived",
        ["NotChecked: Alone, OfHouse"] = "what is missing is not waived",
    };

    [Fact]
    public void MessagesOfOneCheckWithAsManyFiguresHaveTags()
    {
        var alike = CheckMessages.Classes.SelectMany(c => CheckMessages.Found(c).Where(m => m.Message.Tag.Length == 0)
            .GroupBy(m => m.Message.Places).Where(g => g.Count() > 1)
            .Select(g => $"{c.Name}: {string.Join(", ", g.Select(m => m.Name).Order(StringComparer.Ordinal))}"));
        var (known, found) = (ToldApart.Keys.ToHashSet(StringComparer.Ordinal), alike.ToHashSet(StringComparer.Ordinal));
        Assert.True(known.SetEquals(found), string.Join('\n',
            found.Except(known).Select(f => "alike: " + f).Concat(known.Except(found).Select(k => "not alike: " + k))));
    }

    [Fact]
    public void ATagIsThereOnceAmongAsManyFiguresAndIsWrittenAsItIsStored()
    {
        var tagged = CheckMessages.Classes.SelectMany(c => CheckMessages.Of(c).Where(m => m.Message.Tag.Length > 0)
            .Select(m => (Class: c.Name, m.Message))).ToList();
        Assert.True(tagged.Count > 20);
        Assert.All(tagged, t => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", t.Message.Tag));
        Assert.Equal(tagged.Count, tagged.Select(t => (t.Class, t.Message.Tag, t.Message.Places)).Distinct().Count());
    }

    // Stored with waivers: a tag that is changed or taken away opens them.
    [Fact]
    public void TheTagsAreThoseThatWaiversInFilesHave() => Assert.Equal(
        """
        BarsNotLevel: closed open
        BoxLate: fit read
        CableNotListed: air-handling-space between-floors in-wall
        CableNotWanted: fed-otherwise in-a-box landed left-out moved on-order pulled
        CableShared: circle
        CableShortOnHand: at-least whole whole
        ChangedSinceOrder: sent
        CornerClash: each-at-right other-floor other-room two-meet-one
        DatesRunBackwards: before-date box-before-order first-after-second still-to-come
        EntryFarFromMotor: along down one-place
        EntryOffOpening: below-sill past-width too-deep
        FinishedOffRough: height-too-large height-too-small width-too-large width-too-small
        FireStopOpen: no-barrier
        GapBetweenUnitsTooSmall: plumb too-wide
        HandleInHangingPlane: said-none
        HubNameTwice: tag
        JointsUnderPower: not-looked-at was-on
        LabelOffUnit: old-tag
        LatitudeOffZone: exchanged far sign
        ListedByRelaxation: between-floors conduit in-wall
        LoadedVoltsLow: not-under-load
        LongitudeOffZone: clocks sign
        LoopTestLeftOut: first no-cable second
        MainsUnsigned: somebody-else
        MeasuresIncomplete: not-ordered ordered
        MotorOffSupply: house kit
        OpeningsOffCount: missing too-many
        OrderOffMeasures: height width
        OrderPastOpening: opening part
        OrderTooLate: before ordered past
        OutOfSquare: head-and-sill sides
        OutputFeedsAnother: another none
        OutputOverloadedTogether: class-2 class-2 output output
        OverlapPastCorner: left right
        OverlapShort: ordered
        PanelOverloaded: one
        PartsPastOpening: gaps gaps-known gaps-plumb known plumb
        PassesDisagree: height width
        PastWhatIsMade: too-high too-high-already too-wide too-wide-already
        PlugInWithoutSocket: none too-far
        PositionTwice: past-number
        ProofOutdated: another joined
        RemovedOnOrder: box-here on-order
        RunPastKitTable: at-least planned whole
        ScheduleOffSun: glare late
        ScrewUnderCentreSupport: centre-support end-bracket
        SerialTwice: taken-off
        SheetContradictsItself: name ordered power
        StepOffUnits: inches millimetres
        StepPassedOver: again marked-before
        Tail: if-there-is
        TailUnderHalfWidth: far-end
        TailUnderWholeWidth: far-end
        UnitsUnlike: two-opacities
        """,
        string.Join('\n', CheckMessages.Classes.Select(c => (c.Name, Tags: Tags(c))).Where(c => c.Tags.Count > 0).OrderBy(c => c.Name, StringComparer.Ordinal)
            .Select(c => $"{c.Name}: {string.Join(' ', c.Tags)}")),
        ignoreLineEndingDifferences: true);

    private static List<string> Tags(Type type) =>
        [.. CheckMessages.Of(type).Select(m => m.Message.Tag).Where(t => t.Length > 0).Order(StringComparer.Ordinal)];
}
