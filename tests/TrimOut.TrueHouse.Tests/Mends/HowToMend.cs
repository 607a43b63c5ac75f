using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.TrueHouse.Tests.Faults;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Mends;

/// <summary>What a person does who reads the mend of a check, where that changes what is recorded.</summary>
public static class HowToMend
{
    private static readonly Length Clear = Length.FromMillimetres(12);

    /// <summary>By the id of the check; what gives no is left as it was.</summary>
    public static IReadOnlyDictionary<string, Func<Mending, bool>> All { get; } = new Dictionary<string, Func<Mending, bool>>
    {
        ["sheet-contradicts-itself"] = m => m.ReadSheetAgain(),
        ["past-what-is-made"] = AKindThatIsMadeSoWide,
        ["plug-in-without-socket"] = m => m.Write(m.Unit.Key, UnitFacts.Power, "battery"),
        ["openings-off-count"] = RecordWhatIsMissing,
        ["joint-on-the-way"] = m => m.Write(m.Unit.Key, RunFacts.OnePiece, "yes") && m.TestAgain(),
        ["conductor-touches-building"] = m => m.TestAgain(),
        ["delivered-lead-off"] = m => m.Write(m.Unit.Key, UnitFacts.LeadCameAt, KebabCase.Of(m.Unit.Lead)),
        ["delivered-finish-off"] = m => m.Write(m.Unit.Key, UnitFacts.FinishAsOrdered, "yes"),
        ["fixed-into-board-alone"] = m => m.Write(m.Unit.Key, UnitFacts.FixedInto, "hollow-anchors"),
        ["hung-out-of-level"] = m => m.Write(m.Unit.Key, UnitFacts.OutOfLevel, "0"),
        ["joints-under-power"] = m => m.Write(m.Name, PanelFacts.OffSeen, "meter-read-nothing"),
        ["output-feeds-another"] = m => m.Write(m.Unit.Key, RunFacts.WentDead, "this-window"),
        ["kit-unchecked"] = m => Done(() => m.Book.Do(KitCheck.All(m.Book.House, m.Book.House.Find(m.Said.Subject)!).Value)),
        ["window-left-out-without-reason"] = m => m.Write(m.Name, WindowFacts.NotCoveredBecause, "The owner wants the view."),
        ["lead-away-from-motor"] = m => m.Said.Mend.StartsWith("The cable comes out", StringComparison.Ordinal)
            ? m.Write(m.Unit.Key, UnitFacts.LeadSide, m.Side) : m.Said.Mend.StartsWith("Bring the cable", StringComparison.Ordinal)
            && m.Write(m.Unit.Key, UnitFacts.LeadSide, m.Side) && m.Write(m.Unit.Key, UnitFacts.EntrySide, m.Side),
        ["entry-off-lead-side"] = m => m.Said.Mend.StartsWith("The motor is", StringComparison.Ordinal) ? m.Write(m.Unit.Key, UnitFacts.LeadSide, m.Side)
            : m.Said.Mend.StartsWith("Move the entry", StringComparison.Ordinal) && m.Write(m.Unit.Key, UnitFacts.EntrySide, m.Side),
        ["entry-under-end-bracket"] = m => m.Said.Mend.Contains("Move the entry", StringComparison.Ordinal)
            && m.Write(m.Unit.Key, m.Lengths.Count > 1 ? UnitFacts.EntryFromJamb : UnitFacts.EntryBack, m.Lengths[0]),
        ["entry-off-opening"] = FigureRight,
        ["position-twice"] = m => m.Opening.Units.Select((u, at) => m.Write(u.Key, UnitFacts.Position, $"{at + 1}")).ToList().TrueForAll(done => done),
        ["entry-under-centre-support"] = ToTheBracket,
        ["entry-under-middle-screw"] = ToTheBracket,
        ["run-past-kit-table"] = ShorterWay,
        ["volts-short-at-unit"] = ShorterWay,
        ["cable-not-listed"] = ListedCable,
        ["cable-short-on-hand"] = MoreCable,
        ["units-past-outputs"] = m => m.Book.Add(ItemKind.Panel, "P7") && m.Write("P7", PanelFacts.Type, m.Truth.PanelSheets[0].Name),
        ["motor-off-supply"] = OtherPanel,
        ["leg-place-off-way"] = m => m.Book.Unit(m.Unit.Key).Run!.Legs.All(l => m.Write(m.Book.NameOf(l.Id), LegFacts.Place,
            l.Direction == LegDirection.ThroughFloor ? "between-floors" : KebabCase.Of(l.Place!.Value)))
            && (!m.Said.Mend.StartsWith("Put right which way", StringComparison.Ordinal)
                || (m.Write($"{m.Unit.Key}/3", LegFacts.Direction, "through-floor") && m.Write($"{m.Unit.Key}/3", LegFacts.Place, "between-floors"))),
        ["no-box-long-enough"] = NewBox,
        ["output-overloaded"] = m => m.Said.Mend.StartsWith("Plan a panel", StringComparison.Ordinal)
            && Box(m, "Strong box", m.Unit.Draws(), m.Truth.PanelSheets[0].Volts) && m.Write("P1", PanelFacts.Type, "Strong box"),
        ["mains-touched"] = m => m.Write(m.Unit.Key, RunFacts.MainsDistance, m.Truth.Typed(90)),
        ["mains-too-near"] = m => m.Write(m.Unit.Key, RunFacts.MainsDistance, m.Truth.Typed(90)),
        ["hole-near-edge"] = m => m.Write(m.Unit.Key, RunFacts.NailPlates, "yes"),
        ["tail-under-half-width"] = PullMore,
        ["tail-under-whole-width"] = PullMore,
        ["tail-short-of-motor"] = PullMore,
        ["label-ends-differ"] = m => m.Write(m.Unit.Key, RunFacts.LabelAtPanel, m.Unit.Key) && m.Write(m.Unit.Key, RunFacts.LabelAtWindow, m.Unit.Key),
        ["label-twice"] = LabelAll,
        ["label-off-unit"] = m => m.Said.Mend.StartsWith("Make new labels", StringComparison.Ordinal)
            ? m.Write(m.Unit.Key, RunFacts.LabelAtWindow, m.Unit.BoxLabel) && m.Write(m.Unit.Key, RunFacts.LabelAtPanel, m.Unit.BoxLabel)
            : LabelAll(m),
        ["panel-tail-short"] = m => m.Said.Mend.StartsWith("Pull ", StringComparison.Ordinal)
            && m.Write(m.Unit.Key, RunFacts.TailAtPanel, m.Now(m.Unit.Key, RunFacts.TailAtPanel) + m.Lengths[0])
            && Done(() => m.Unit.Cable!.TailAtPanel += (double)m.Lengths[0].Metres) && m.TestAgain(),
        ["tail-longer-than-left"] = m => m.Write(m.Unit.Key, RunFacts.TailFound, m.Now(m.Unit.Key, RunFacts.TailAtWindow)),
        ["loop-off-length"] = m => m.TestAgain(),
        ["loop-open-or-shorted"] = m => m.TestAgain(),
        ["conductors-not-apart"] = m => m.TestAgain(),
        ["loop-test-left-out"] = m => m.Said.Field == UnitFacts.Power.Name ? m.Write(m.Unit.Key, UnitFacts.Power, "battery") : m.TestAgain(),
        ["second-loop-differs"] = m => m.TestAgain(),
        ["widths-spread"] = MeasureAgainElseOutside,
        ["heights-spread"] = MeasureAgainElseOutside,
        ["out-of-square"] = MeasureAgainElseOutside,
        ["diagonals-off-sides"] = m => m.MeasureAgain(),
        ["measured-before-paint"] = m => m.Write(Book.JobItself, HouseFacts.PaintedOn, Installer.Day(m.Truth.Days[Stage.CloseIn])),
        ["finished-off-rough"] = MeasureAgainElseRough,
        ["overlap-short"] = m => m.Write(m.Opening.Tag, WindowFacts.OverlapEachSide, m.Lengths[0]),
        ["overlap-past-corner"] = m => m.Write(m.Opening.Tag, WindowFacts.OverlapEachSide, m.Lengths[0]),
        ["corner-clash"] = m => m.Said.Mend.Contains("the window at its right around the corner", StringComparison.Ordinal)
            ? m.Write(m.Opening.Tag, WindowFacts.MeetsRight, "")
            : m.Said.Mend.StartsWith("Take ", StringComparison.Ordinal)
            && m.Write(m.Opening.Tag, WindowFacts.OverlapEachSide, m.Now(m.Opening.Tag, WindowFacts.OverlapEachSide) - m.Lengths[0]),
        ["measures-incomplete"] = m => m.MeasureAgain(),
        ["passes-disagree"] = m => m.MeasureAgain(),
        ["depth-too-shallow"] = m => m.MountOutside(),
        ["handle-in-hanging-plane"] = m => m.Write(m.Opening.Tag, WindowFacts.InTheWayDepth, "0")
            && m.Write(m.Opening.Tag, WindowFacts.DepthTo, "glass") && m.Write(m.Opening.Tag, WindowFacts.Depth, m.Truth.Typed(m.Opening.Depth)),
        ["head-room-short"] = m => m.Lengths.Count > 0 && m.Write(m.Opening.Tag, WindowFacts.HeadAbove, m.Lengths[0]),
        ["stack-in-the-way"] = m => m.MountOutside()
            && m.Write(m.Opening.Tag, WindowFacts.HeadAbove, m.Truth.Typed(m.Unit.Kind.Raised(m.Opening.Finished.Height) + 60))
            && m.Write(m.Opening.Tag, WindowFacts.WallAbove, m.Truth.Typed(m.Unit.Kind.Raised(m.Opening.Finished.Height) + 90)),
        ["parts-past-opening"] = m => Narrower(m, UnitFacts.PartWidth),
        ["order-past-opening"] = m => m.Lengths.Count > 0 && m.Write(m.Unit.Key, UnitFacts.OrderWidth, m.Lengths[0]),
        ["order-off-measures"] = TakeOffered,
        ["ordered-without-size"] = TakeOffered,
        ["plumb-width-short"] = m => m.Said.Mend.StartsWith("Order ", StringComparison.Ordinal) && m.Write(m.Unit.Key, UnitFacts.OrderWidth, m.Lengths[0]),
        ["gap-between-units-too-small"] = SizesOfTheParts,
        ["roll-past-head-cover"] = m => m.Write(m.Unit.Cover.Name, HeadCoverFacts.RoomInside,
            m.Truth.Typed(m.Unit.Kind.Raised(m.Opening.Finished.Height + m.Opening.HeadAbove + 30) + 20)),
        ["delivered-size-off"] = m => m.Write(m.Unit.Key, UnitFacts.DeliveredWidth, m.Now(m.Unit.Key, UnitFacts.OrderWidth))
            && m.Write(m.Unit.Key, UnitFacts.DeliveredHeight, m.Now(m.Unit.Key, UnitFacts.OrderHeight)) && m.Write(m.Unit.Key, UnitFacts.SizeReadFrom, "label"),
        ["box-late"] = m => m.Write(m.Unit.Key, UnitFacts.BoxLabel, m.Unit.Key),
        ["box-label-off"] = m => m.Write(m.Unit.Key, UnitFacts.BoxLabel, m.Unit.Key),
        ["serial-twice"] = m => m.Write(m.Unit.Key, UnitFacts.Serial, $"S-{m.Unit.Key}-again"),
        ["latitude-off-zone"] = m => m.Write(m.Name, HouseFacts.Latitude, "40"),
        ["longitude-off-zone"] = m => m.Write(m.Name, HouseFacts.Longitude, "-105"),
        ["order-too-late"] = m => m.Write(m.Unit.Key, UnitFacts.ExpectedOn, "2026-06-01"),
        ["claim-open"] = m => m.Write(m.Name, ServiceFacts.Outcome, "granted"),
        ["setback-off-sheet"] = m => m.Write(m.Unit.Key, UnitFacts.Setback, m.Now(m.Book.Unit(m.Unit.Key).Kind!.Name, CoveringKindFacts.Setback)),
        ["entry-off-plan"] = m => m.Write(m.Unit.Key, UnitFacts.EntryFromJamb, m.Truth.Typed(m.Unit.EntryFromJamb))
            && m.Write(m.Unit.Key, UnitFacts.EntryAsBuilt, m.Now(m.Unit.Key, UnitFacts.EntryFromJamb)),
        ["mount-off-measures"] = m => m.Write(m.Opening.Tag, WindowFacts.Mount, "outside"),
        ["setback-past-reveal"] = m => m.Lengths.Count > 0 && m.Write(m.Unit.Key, UnitFacts.Setback, m.Lengths[0]),
        ["centre-support-left-out"] = m => Done(() => m.Book.Do(MarkStep.Done(m.Book.Unit(m.Unit.Key), StepList.Find("centre-support-clear")!).Value)),
        ["delivered-damaged"] = m => m.Write(m.Unit.Key, UnitFacts.Damage, "none"),
        ["screw-under-centre-support"] = m => m.Lengths.Count > 0 && m.Write(m.Unit.Key, UnitFacts.MiddleScrew, m.Lengths[0]),
        ["output-shared"] = ToAFreeOutput,
        ["output-past-panel"] = ToAFreeOutput,
        ["polarity-swapped"] = m => m.ReadVoltsAgain(),
        ["open-volts-off-supply"] = m => m.ReadVoltsAgain(),
        ["loaded-volts-low"] = m => m.ReadVoltsAgain(),
        ["loaded-above-open"] = m => m.ReadVoltsAgain(),
        ["loaded-under-least"] = m => m.ReadVoltsAgain(),
        ["live-before-connected"] = m => m.Write(m.Name, PanelFacts.ConnectedOn, Installer.Day(m.Truth.Days[Truth.Stage.Powered])),
        ["mains-unsigned"] = m => m.Write(m.Name, PanelFacts.ConnectedBy, "R. Field, licensed electrician") && m.Write(m.Name, PanelFacts.Licence, "EL-0000"),
        ["hub-past-devices"] = SecondHub,
        ["remote-past-units"] = AnotherRemote,
        ["plate-too-small"] = m => m.Write(m.Name, RemoteFacts.Plate, $"{m.Said.Mend.Split(' ').First(w => w.All(char.IsDigit))}-gang"),
        ["unit-off-room-remote"] = m => Done(() => m.Book.PutFor(m.Opening.Room.Remote, RemoteFacts.Moves, m.Unit.Key, "yes")),
        ["hub-name-twice"] = m => m.Write(m.Unit.Key, UnitFacts.HubName, $"Number {Array.IndexOf([.. m.Truth.Units], m.Unit)}"),
        ["hub-names-alike"] = m => m.Write(m.Unit.Key, UnitFacts.HubName, $"Number {Array.IndexOf([.. m.Truth.Units], m.Unit)}"),
        ["bar-in-glass"] = m => m.Truth.Units.Where(u => u.Opening.Room == m.Opening.Room).ToList()
            .TrueForAll(u => m.Write(u.Key, UnitFacts.OpenGap, m.Truth.Typed(20))),
        ["open-bar-above-stack"] = m => m.Write(m.Unit.Key, UnitFacts.OpenGap, m.Truth.Typed(m.Unit.OpenGap))
            && m.Write(m.Opening.Tag, WindowFacts.GlassBelowHead, m.Truth.Typed(m.Opening.GlassBelowHead)),
        ["step-off-units"] = m => m.Write(m.Name, CoveringKindFacts.RoundTo, m.Truth.Metric ? "1 mm" : "1/8\"")
            && Done(() => m.Book.Do(KitCheck.All(m.Book.House, m.Book.House.Find(m.Said.Subject)!).Value)),
        ["proof-outdated"] = m => m.EachOf("proof-outdated").ToList().TrueForAll(ShowAgain),
        ["dates-run-backwards"] = RightDates,
        ["remote-at-another-hub"] = m => m.Write(m.Name, RemoteFacts.Hub, m.Truth.Remotes.First(r => r.Name == m.Name).Moves[0].Hub),
        ["preset-off-remote"] = m => Done(() => m.Book.PutFor(m.Name, RemoteFacts.Moves,
            m.Book.NameOf(m.Said.Field[(m.Said.Field.IndexOf(':', StringComparison.Ordinal) + 1)..]), "yes")),
        ["schedule-off-sun"] = m => m.Write($"{m.Name}/Evening", PresetFacts.RunsAt, "06:00"),
        ["step-passed-over"] = MarkWhatIsOpen,
        ["fire-stop-open"] = m => Done(() =>
        {
            foreach (var n in m.Unit.Cable!.Legs.Index().Where(l => l.Item.FireBarrier).Select(l => l.Index + 1))
            {
                m.Write($"{m.Unit.Key}/{n}", LegFacts.SealedBy, "The fire-stopping crew");
                m.Write($"{m.Unit.Key}/{n}", LegFacts.SealSeenOn, Installer.Day(m.Truth.Days[Truth.Stage.Pulled]));
            }
        }),
        ["conductors-alike"] = m => m.Write(m.Name, CableTypeFacts.Colours, "white, white with red tape")
            && m.Write(m.Name, CableTypeFacts.Plus, "white with red tape")
            && Done(() => m.Book.Do(KitCheck.All(m.Book.House, m.Book.House.Find(m.Said.Subject)!).Value)),
        ["escape-stays-shut"] = m => m.Write(m.Unit.Key, UnitFacts.Power, "battery"),
        ["old-paint-untested"] = m => m.Write(m.Name, HouseFacts.PaintTested, "A laboratory: no lead found"),
        ["cord-within-reach"] = m => m.Write(m.Unit.Key, UnitFacts.FreeCord, "0"),
        ["breaker-overloaded"] = m => m.Write(m.Name, PanelFacts.Breaker, "31") && m.Write(m.Name, PanelFacts.BreakerRating, "63")
            && m.Write(m.Name, PanelFacts.ElseOnBreaker, "0"),
        ["bar-off-sill"] = m => m.Write(m.Unit.Key, UnitFacts.CloseGap, "0"),
        ["step-without-evidence"] = TakeMarksAway,
        ["units-unlike"] = AllAsTheFirst,
        ["entry-far-from-motor"] = m => m.Said.Mend.Contains("counts from the jamb", StringComparison.Ordinal) ? EntryFromTheJamb(m)
            : m.Said.Mend.Contains("move the entry", StringComparison.Ordinal)
            && (m.Said.Field == UnitFacts.EntryBelowHead.Name ? m.Write(m.Unit.Key, UnitFacts.EntryBelowHead, m.Truth.Typed(20)) : ToTheBracket(m)),
        ["length-unusual"] = LengthRight,
        ["stands-out-of-reveal"] = m => m.Write(m.Unit.Key, UnitFacts.HeadCover, "None") && (!Stays(m) || m.MountOutside()) && TakeOffered(m),
        ["setback-too-deep"] = m => m.Lengths.Count > 0 && m.Write(m.Unit.Key, UnitFacts.Setback, m.Lengths[0]),
        ["stack-over-glass"] = m => m.Lengths.Count > 0 && m.MountOutside() && m.Write(m.Opening.Tag, WindowFacts.HeadAbove, m.Lengths[0])
            && m.Write(m.Opening.Tag, WindowFacts.WallAbove, m.Lengths[0] + Clear),
        ["gap-between-units-too-large"] = Wider,
        ["removed-on-order"] = BringBack,
        ["changed-since-order"] = m => m.Said.Mend.Contains("the day of the order once more", StringComparison.Ordinal)
            ? m.Write(m.Unit.Key, UnitFacts.OrderedOn, Installer.Day(m.Truth.Days[Truth.Stage.Ordered]))
            : m.Write(m.Unit.Key, UnitFacts.Acknowledgement, $"A-{m.Unit.Key}-2"),
        ["sheet-value-unusual"] = m => m.Write(m.Name, CoveringKindFacts.PairHold, Installer.Number(m.Truth.Kinds.First(k => k.Name == m.Name).PairHold))
            && Done(() => m.Book.HoldAgainstSheet(ItemKind.CoveringKind, m.Name)),
        ["panel-overloaded"] = m => m.Said.Message.Contains(" of group ", StringComparison.Ordinal) && OneAfterTheOther(m),
        ["output-overloaded-together"] = m => ToAFreeOutput(m),
        ["panel-past-class-two"] = m => m.Write(m.Truth.PanelSheets[0].Name, PanelTypeFacts.OutputCurrent,
                Installer.Number(Math.Floor(ClassTwo.MostOnNameplate(m.Truth.PanelSheets[0].Volts) * 100) / 100))
            && Done(() => m.Book.HoldAgainstSheet(ItemKind.PanelType, m.Truth.PanelSheets[0].Name)),
        ["bars-not-level"] = m => m.Truth.Remotes.First(r => r.Moves.Contains(m.Unit)).Moves.TrueForAll(u =>
            m.Write(u.Key, UnitFacts.OpenGap, m.Truth.Typed(20)) && m.Write(u.Key, UnitFacts.CloseGap, "0")),
        ["cable-not-wanted"] = m => m.Said.Field == UnitFacts.Power.Name ? m.Write(m.Opening.Units[0].Key, UnitFacts.Power, "panel")
            : m.Said.Mend.StartsWith("Cover the window again", StringComparison.Ordinal) && m.Write(m.Opening.Tag, WindowFacts.Covered, "yes"),
        ["cable-shared"] = m => m.Said.Mend.StartsWith("Pull a home run", StringComparison.Ordinal)
            && m.Write(m.Book.NameOf(m.Said.Item), RunFacts.BranchesOff, ""),
        ["no-spare-cable"] = m => m.Said.Mend.StartsWith("Pull a second cable", StringComparison.Ordinal)
            && m.Write(m.Unit.Key, RunFacts.SpareCables, "1") && m.Write(m.Unit.Key, RunFacts.SpareEnds, "Coiled beside the first"),
        ["listed-by-relaxation"] = m => m.Write(m.Unit.Cable!.Sheet.Name, CableTypeFacts.Listing, "cl2r")
            && Done(() => m.Book.HoldAgainstSheet(ItemKind.CableType, m.Unit.Cable.Sheet.Name)),
    };

    /// <summary>Checks whose faults only two copies of one house bring about: here one person writes one book.</summary>
    public static IReadOnlyList<string> OnlyOfTwoCopies { get; } = ["values-disagree", "removed-while-worked-on", "tag-twice", "panel-name-twice"];

    private static bool Done(Action what)
    {
        what();
        return true;
    }

    /// <summary>A kind that is like the planned one in all but how wide and high it is made.</summary>
    private static bool AKindThatIsMadeSoWide(Mending m)
    {
        var planned = m.Book.Unit(m.Unit.Key).Kind!;
        const string wide = "Made wider";
        m.Book.Add(ItemKind.CoveringKind, wide);
        foreach (var fact in FactTable.Of(ItemKind.CoveringKind).Where(f => f != CoveringKindFacts.Name))
        {
            if (planned.Item.Latest(fact.Name)?.Stored is { } stored)
                m.Write(wide, fact, stored);
        }
        m.Write(wide, CoveringKindFacts.Widest, "6000 mm");
        m.Write(wide, CoveringKindFacts.Highest, "6000 mm");
        return m.Write(m.Unit.Key, UnitFacts.Kind, wide) && Done(() => m.Book.HoldAgainstSheet(ItemKind.CoveringKind, wide));
    }

    private static bool AllAsTheFirst(Mending m)
    {
        if (m.Said.Mend.StartsWith("Read the fabric again", StringComparison.Ordinal))
            return m.Truth.Units.ToList().TrueForAll(u => m.Write(u.Key, UnitFacts.Opacity, Installer.Word(u.Opacity)));
        var first = m.Opening.Units[0];
        return m.Opening.Units.TrueForAll(u => m.Write(u.Key, UnitFacts.Kind, first.Kind.Name)
            && (m.Book.WrittenIn(u.Key, UnitFacts.Fabric) is null || (m.Write(u.Key, UnitFacts.Fabric, first.Fabric)
                && m.Write(u.Key, UnitFacts.Colour, first.Colour))));
    }

    /// <summary>The length as it is in truth, where it was only written down wrong.</summary>
    private static bool LengthRight(Mending m) => m.Said.Field switch
    {
        "depth" => m.Write(m.Opening.Tag, WindowFacts.Depth, m.Truth.Typed(m.Opening.Depth)),
        "mains-distance" => m.Write(m.Unit.Key, RunFacts.MainsDistance, m.Truth.Typed(m.Unit.Cable!.MainsDistance)),
        _ => false,
    };

    private static bool Wider(Mending m)
    {
        var first = m.Opening.Units[0].Key;
        return m.Said.Mend.StartsWith("Order them", StringComparison.Ordinal)
            && m.Write(first, UnitFacts.OrderWidth, m.Now(first, UnitFacts.OrderWidth) + m.Lengths[0]);
    }

    /// <summary>No unit is in a group any more: they start one after the other.</summary>
    private static bool OneAfterTheOther(Mending m)
    {
        foreach (var unit in m.Truth.Units.Where(u => m.Book.Unit(u.Key).Item.Get(UnitFacts.Group) is not null).ToList())
            m.Write(unit.Key, UnitFacts.Group, "");
        return true;
    }

    private static bool RecordWhatIsMissing(Mending m)
    {
        var room = m.Truth.Rooms[0].Name;
        m.Book.AddWindow("W90", "W90", room, ["W90"]);
        return m.Write("W90", WindowFacts.Covered, "no") && m.Write("W90", WindowFacts.NotCoveredBecause, "The owner wants the view.");
    }

    private static bool ToTheBracket(Mending m) => m.Said.Mend.Contains("Move the entry", StringComparison.Ordinal)
        && m.Write(m.Unit.Key, UnitFacts.EntryFromJamb, m.Book.Unit(m.Unit.Key).Kind![CoveringKindFacts.EndBracket]!.Value + Clear);

    /// <summary>From the jamb of the opening, where it was written from the end of its own unit.</summary>
    private static bool EntryFromTheJamb(Mending m) => m.Book.Unit(m.Unit.Key) is { Place: { } place, EntryFromJamb: { } fromEnd, EntrySide: { } side } unit
        && (side == Side.Left ? place.From : unit.Window.KnownWidth!.Value - place.To) + fromEnd is var fromJamb
        && (m.Book.WrittenIn(m.Unit.Key, UnitFacts.EntryAsBuilt) is null || m.Write(m.Unit.Key, UnitFacts.EntryAsBuilt, fromJamb))
        && m.Write(m.Unit.Key, UnitFacts.EntryFromJamb, fromJamb);

    private static bool BringBack(Mending m)
    {
        if (!m.Said.Mend.Contains("bring it back", StringComparison.Ordinal))
            return false;
        foreach (var gone in m.Book.House.Items.Values.Where(i => i is { Removed: true, Kind: ItemKind.Window }).ToList())
            m.Book.Do(RemoveItems.BringBack(m.Book.House, gone).Value);
        return true;
    }

    private static bool PullMore(Mending m) => m.Said.Mend.StartsWith("Pull ", StringComparison.Ordinal)
        && m.Write(m.Unit.Key, RunFacts.TailAtWindow, m.Now(m.Unit.Key, RunFacts.TailAtWindow) + m.Lengths[0])
        && Done(() => m.Unit.Cable!.TailAtWindow += (double)m.Lengths[0].Millimetres) && m.TestAgain();

    private static bool ShorterWay(Mending m)
    {
        if (!m.Said.Mend.Contains("shorter way", StringComparison.Ordinal))
            return false;
        foreach (var leg in m.Book.Unit(m.Unit.Key).Run!.Legs)
            m.Write(m.Book.NameOf(leg.Id), LegFacts.Length, leg.Length!.Value / 2);
        foreach (var leg in m.Unit.Cable!.Legs)
            leg.Metres /= 2;
        return m.Book.WrittenIn(m.Unit.Key, RunFacts.FirstLoop) is null || m.TestAgain();
    }

    private static bool ListedCable(Mending m)
    {
        var asked = m.Said.Mend.Split("listed ")[1].Split(',')[0];
        return m.Write(m.Unit.Cable!.Sheet.Name, CableTypeFacts.Listing, asked.ToLowerInvariant())
            && Done(() => m.Book.Do(KitCheck.All(m.Book.House, m.Book.House.Find(m.Book.IdOf(ItemKind.CableType, m.Unit.Cable.Sheet.Name))!).Value));
    }

    private static bool MoreCable(Mending m)
    {
        var words = m.Said.Mend.Split(' ');
        var more = LengthText.Read($"{words[1]} {words[2]}", m.Book.House.DisplayUnits).Value;
        return m.Book.Add(ItemKind.Box, "New box") && m.Write("New box", BoxFacts.Cable, m.Name) && m.Write("New box", BoxFacts.Left, more);
    }

    private static bool NewBox(Mending m)
    {
        var words = m.Said.Mend.Split(' ');
        var left = LengthText.Read($"{words[4]} {words[5]}", m.Book.House.DisplayUnits).Value;
        return m.Book.Add(ItemKind.Box, "New box") && m.Write("New box", BoxFacts.Cable, m.Name) && m.Write("New box", BoxFacts.Left, left);
    }

    /// <summary>Lands a run on a panel of its motor's volts; of a kind, plans panels that give them.</summary>
    private static bool OtherPanel(Mending m) => m.Said.Mend.StartsWith("Panel off", StringComparison.Ordinal)
        ? Mending.FreeOutput(m.Book.House.Panels.First(p => p.Name == "P1")) is { } output && m.Write(m.Unit.Key, RunFacts.Panel, "P1")
            && m.Write(m.Unit.Key, RunFacts.Output, output) && Done(() => m.Unit.Panel = m.Truth.Panels[0]) && m.ReadVoltsAgain()
        : Box(m, "Other box", m.Truth.PanelSheets[0].PerOutput, m.Truth.Kinds.First(k => k.Name == m.Name).MotorVolts);

    private static bool Box(Mending m, string name, double perOutput, double volts) => m.Book.Add(ItemKind.PanelType, name)
        && m.Write(name, PanelTypeFacts.Outputs, Installer.Number(m.Truth.PanelSheets[0].Outputs))
        && m.Write(name, PanelTypeFacts.Supply, Installer.Number(volts)) && m.Write(name, PanelTypeFacts.OutputCurrent, Installer.Number(perOutput))
        && m.Write(name, PanelTypeFacts.TotalCurrent, Installer.Number(m.Truth.PanelSheets[0].Total))
        && m.Write(name, PanelTypeFacts.UnitsPerOutput, Installer.Number(m.Truth.PanelSheets[0].UnitsPerOutput))
        && Done(() => m.Book.HoldAgainstSheet(ItemKind.PanelType, name));

    /// <summary>The figure as it is in truth, where it was only written down wrong.</summary>
    private static bool FigureRight(Mending m) => m.Said.Field switch
    {
        "entry-back" => m.Write(m.Unit.Key, UnitFacts.EntryBack, m.Truth.Typed(m.Unit.EntryBack))
            && (m.Book.WrittenIn(m.Opening.Tag, WindowFacts.Depth) is null || m.Write(m.Opening.Tag, WindowFacts.Depth, m.Truth.Typed(m.Opening.Depth))),
        "entry-below-head" => m.Write(m.Unit.Key, UnitFacts.EntryBelowHead, m.Truth.Typed(m.Unit.EntryBelowHead)),
        _ => m.Write(m.Unit.Key, UnitFacts.EntryFromJamb, m.Truth.Typed(m.Unit.EntryFromJamb)),
    };

    private static bool MeasureAgainElseRough(Mending m) => m.MeasureAgain() && (!Stays(m)
        || (m.Write(m.Opening.Tag, WindowFacts.RoughWidth, m.Truth.Typed(m.Opening.Rough.Width))
            && m.Write(m.Opening.Tag, WindowFacts.RoughHeight, m.Truth.Typed(m.Opening.Rough.Height))));

    private static bool Stays(Mending m) => Said.Of(m.Book.House).Any(s => s.Check == m.Said.Check && s.Subject == m.Said.Subject);

    private static bool MeasureAgainElseOutside(Mending m) =>
        m.MeasureAgain() && (!Stays(m) || m.MountOutside());

    /// <summary>Who moves a run, a unit or a remote does what is said of it then: reads again, and makes the marks again.</summary>
    public static void ShowAgainWhatWasMoved(Walk walk, Stage stage, IReadOnlyList<Said> before)
    {
        foreach (var said in Said.Of(walk.Book.House).Where(s => s.Check == "proof-outdated" && !before.Any(b => b.Message == s.Message)))
            ShowAgain(new Mending(walk, stage, said));
    }

    /// <summary>Reads or does again what the finding names, with what is there now.</summary>
    private static bool ShowAgain(Mending m)
    {
        var (key, mend) = (m.Unit.Key, m.Said.Mend);
        if (mend.StartsWith("Set its limits", StringComparison.Ordinal))
        {
            return m.Write(key, UnitFacts.OpenGap, m.Truth.Typed(m.Unit.OpenGap)) && m.Write(key, UnitFacts.CloseGap, m.Truth.Typed(m.Unit.CloseGap))
                && MarkAgain("preset-stored");
        }
        return mend.StartsWith("See where the cable", StringComparison.Ordinal) ? m.TestAgain()
            : mend.StartsWith("See the splice", StringComparison.Ordinal)
                ? m.ReadVoltsAgain() && m.Write(key, RunFacts.WentDead, "this-window") && MarkAgain("spliced")
            : mend.StartsWith("Look at its cords", StringComparison.Ordinal) ? m.Write(key, UnitFacts.CordConfirmedBy, "Another of the crew")
            : mend.StartsWith("Pair it again", StringComparison.Ordinal) && MarkAgain("hub-paired", "remotes-paired", "moved-by-all");

        bool MarkAgain(params string[] steps)
        {
            foreach (var step in steps.Select(s => StepList.Find(s)!).Where(s => m.Book.Unit(key).MarkOf(s) is not null))
            {
                m.Book.Do(MarkStep.Clear(m.Book.Unit(key), step).Value);
                m.Book.Do(MarkStep.Done(m.Book.Unit(key), step).Value);
            }
            return true;
        }
    }

    private static bool LabelAll(Mending m)
    {
        foreach (var unit in m.Truth.Wired.ToList())
            m.Write(unit.Key, RunFacts.LabelAtWindow, unit.Key);
        return m.Truth.Wired.All(u => m.Write(u.Key, RunFacts.LabelAtPanel, u.Key));
    }

    private static bool Narrower(Mending m, Fact<Length> fact)
    {
        var last = m.Opening.Units[^1].Key;
        return m.Lengths.Count > 0 && m.Write(last, fact, m.Now(last, fact) - m.Lengths[0]);
    }

    private static bool SizesOfTheParts(Mending m)
    {
        if (!m.Said.Mend.StartsWith("Order ", StringComparison.Ordinal))
            return false;
        foreach (var unit in m.Opening.Units)
        {
            if (Offers.For(m.Book.Unit(unit.Key), UnitFacts.OrderWidth) is { } offered)
                m.Write(unit.Key, UnitFacts.OrderWidth, offered);
        }
        return true;
    }

    private static bool TakeOffered(Mending m)
    {
        foreach (var fact in (Fact<Length>[])[UnitFacts.OrderWidth, UnitFacts.OrderHeight])
        {
            if (Offers.For(m.Book.Unit(m.Unit.Key), fact) is { } offered)
                m.Write(m.Unit.Key, fact, offered);
        }
        return true;
    }

    private static bool ToAFreeOutput(Mending m)
    {
        var panel = m.Book.Unit(m.Unit.Key).Run!.Panel!;
        return Mending.FreeOutput(panel) is { } output && m.Write(m.Unit.Key, RunFacts.Output, output);
    }

    private static bool SecondHub(Mending m)
    {
        m.Book.Add(ItemKind.Hub, "Hub 2");
        m.Write("Hub 2", HubFacts.Type, m.Truth.HubSheets[0].Name);
        var remote = m.Truth.Remotes[0];
        foreach (var unit in remote.Moves)
            m.Write(unit.Key, UnitFacts.Hub, "Hub 2");
        return m.Write(remote.Name, RemoteFacts.Hub, "Hub 2");
    }

    private static bool AnotherRemote(Mending m)
    {
        var (remote, unit) = (m.Book.House.Remotes.First(r => r.Id == m.Said.Subject), m.Truth.Remotes.First(r => r.Name == m.Name).Moves[0].Key);
        m.Book.Do(Controls.Toggle(remote, m.Book.Unit(unit)));
        return m.Book.Add(ItemKind.Remote, "Second remote") && m.Write("Second remote", RemoteFacts.Type, m.Truth.RemoteSheets[0].Name)
            && m.Write("Second remote", RemoteFacts.Room, m.Truth.Units.First(u => u.Key == unit).Opening.Room.Name)
                && m.Write("Second remote", RemoteFacts.Hub, "Hub")
            && Done(() => m.Book.PutFor("Second remote", RemoteFacts.Moves, unit, "yes"));
    }

    private static bool RightDates(Mending m)
    {
        var at = m.Book.House.Find(m.Said.Item)!.Kind;
        Fact? fact = FactTable.Find(at, m.Said.Field);
        var day = fact == HouseFacts.DrywallOn ? m.Truth.Days[Truth.Stage.CloseIn].AddDays(-2)
            : fact == HouseFacts.PaintedOn ? m.Truth.Days[Truth.Stage.CloseIn].AddDays(-1)
            : fact == UnitFacts.OrderedOn ? m.Truth.Days[Truth.Stage.Ordered]
            : fact == PanelFacts.ConnectedOn ? m.Truth.Days[Truth.Stage.Powered]
            : fact == ServiceFacts.On ? m.Truth.Days[Truth.Stage.Service]
            : m.Truth.Days[Truth.Stage.Handover];
        return fact is not null && m.Write(m.Book.NameOf(m.Said.Item), fact, Installer.Day(day));
    }

    private static bool MarkWhatIsOpen(Mending m)
    {
        if (m.Said.Mend.StartsWith("Clear the mark", StringComparison.Ordinal))
        {
            var step = StepList.Find(m.Said.Field[(m.Said.Field.IndexOf(':', StringComparison.Ordinal) + 1)..])!;
            return Done(() => m.Book.Do(MarkStep.Clear(SubjectOf(m), step).Value));
        }
        foreach (var step in StepList.All.Where(s => s.Subject == SubjectOf(m).Item.Kind))
        {
            var subject = SubjectOf(m);
            if (subject.MarkOf(step) is null && (subject is not Unit unit || step.Applies(unit)))
                m.Book.Do(Progress.Missing(subject, step).Count == 0 ? MarkStep.Done(subject, step).Value
                    : MarkStep.NotNeeded(subject, step, "agreed with the owner").Value);
        }
        return true;
    }

    private static Subject SubjectOf(Mending m) => m.Truth.Units.Any(u => u.Key == m.Name) ? m.Book.Unit(m.Name)
        : m.Name == Book.JobItself ? new JobItself(m.Book.House)
        : m.Book.House.Panels.First(p => p.Id == m.Said.Subject);

    private static bool TakeMarksAway(Mending m)
    {
        var (subject, signed) = (SubjectOf(m), m.Said.Mend.Contains("signed off", StringComparison.Ordinal));
        foreach (var step in StepList.All.Where(s => s.Subject == subject.Item.Kind && subject.MarkOf(s) is not null && Progress.Missing(subject, s).Count > 0))
            m.Book.Do((signed ? MarkStep.NotNeeded(subject, step, "agreed with the owner") : MarkStep.Clear(subject, step)).Value);
        return true;
    }
}
