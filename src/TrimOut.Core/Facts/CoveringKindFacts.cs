using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What the maker's sheet says about a kind of covering.</summary>
public static class CoveringKindFacts
{
    /// <summary>What a sheet says of what its kind does not have, a middle screw or a center support: no length that can be measured.</summary>
    public static readonly Length None = Length.FromMillimetres(-1);

    private static readonly Declare Of = new(ItemKind.CoveringKind);

    public static readonly Fact<string> Name = Of.Text("name", "Kind", "Roller, cellular, wood blind.", null, 40);
    public static readonly Fact<MotorEnd> MotorEnd = Of.Choice<MotorEnd>("motor-end", "Motor end", "The end that the motor, and so the lead, is at.");
    public static readonly Fact<RaisedForm> RaisedForm = Of.Choice<RaisedForm>("raised-form", "When raised", "Whether it rolls up or stacks.");
    public static readonly Fact<Voltage> MotorVolts = Of.Volts("motor-volts", "Motor volts", "What the motor is made for.", null, 1, 60);
    public static readonly Fact<Voltage> LeastVolts = Of.Volts("least-volts", "Minimum volts",
        "The lowest volts at the motor at which it still lifts.", null, 1, 60);
    public static readonly Fact<Current> RunningCurrent = Of.Amps("running-current", "Running current", "While it lifts.");
    public static readonly Fact<Current> StartingCurrent = Of.Amps("starting-current", "Starting current", "In the first moment.");
    public static readonly Fact<WithoutPower> WithoutPower = Of.Choice<WithoutPower>("without-power", "Without power",
        "What it does when its power fails: it stays put, is moved by hand, or opens.");
    public static readonly Fact<Length> Widest = Of.Opening("widest", "Widest", "The widest that it is made.", null, 4, 1200);
    public static readonly Fact<Length> Highest = Of.Opening("highest", "Highest", "The highest that it is made.", null, 4, 1200);
    public static readonly Fact<Length> EndBracket = Of.Opening("end-bracket", "End bracket",
        "How far the end bracket reaches in from the end of the unit.", null, 0, 24);
    public static readonly Fact<Length> EndBracketBack = Of.Opening("end-bracket-back", "Bracket back",
        "How far the end bracket reaches back from its front.", null, 0, 24);
    public static readonly Fact<Length> EndBracketDown = Of.Opening("end-bracket-down", "Bracket down",
        "How far the end bracket reaches down from the head.", null, 0, 24);
    public static readonly Fact<Length> CentreBracket = Of.Opening("centre-bracket", "Center bracket", "Width of the center support.", null, 0, 24);
    public static readonly Fact<Length> CentreFrom = Of.OpeningOrNone("centre-from", "Center support from",
        "Units this wide or wider need a center support; none where no width needs one.", None, 4, 360);
    public static readonly Fact<Length> MiddleScrew = Of.OpeningOrNone("middle-screw", "Middle screw off center",
        "How far to the right of the middle its middle screw goes; none where it has none.", None, 0, 48);
    public static readonly Fact<Length> GapBetween = Of.Opening("gap-between", "Gap between units",
        "The least between two units side by side in one opening.", null, 0, 6);
    public static readonly Fact<Length> GapMost = Of.Opening("gap-most", "Gap between units, at most",
        "More than this between two units lets a strip of light through.", null, 0, 24);
    public static readonly Fact<Length> EndAllowance = Of.Opening("end-allowance", "End allowance",
        "What the outer ends of units side by side stay clear of the jambs.", null, 0, 6);
    public static readonly Fact<OrderedWidth> OrderedInside = Of.Choice<OrderedWidth>("ordered-inside", "Ordered width, inside",
        "What the maker is told. Opening: its width, and the maker takes the deduction off. Made: the width of the unit, with it off already.");
    public static readonly Fact<Length> DeductionInside = Of.Opening("deduction-inside", "Deduction, inside",
        "How much narrower than the opening the unit is, over all: off by the maker, or by you where the made width is ordered; 0 for nothing.", null, 0, 2);
    public static readonly Fact<OrderedWidth> OrderedOutside = Of.Choice<OrderedWidth>("ordered-outside", "Ordered width, outside",
        "What the maker does of it. Opening: the unit comes narrower than ordered, by the deduction. Made: as wide as it is ordered.");
    public static readonly Fact<Length> DeductionOutside = Of.Opening("deduction-outside", "Deduction, outside",
        "How much narrower than ordered the unit comes, over all; 0 where it comes as it is ordered.", null, 0, 2);
    public static readonly Fact<PartCounts> PartsPerUnit = Of.Parts("parts-per-unit", "Parts per unit", "What comes or is bought with each unit, counted.");
    public static readonly Fact<Length> Setback = Of.Opening("setback", "Bracket setback", "Distance of the bracket's front from the room face.", null, 0, 24);
    public static readonly Fact<Length> LeadBehind = Of.Opening("lead-behind", "Lead to motor",
        "Cable used up from the entry into the motor end besides the way along the head.", null, 0, 60);
    public static readonly Fact<Length> Tube = Of.Opening("tube", "Tube", "Outside diameter of the tube.", null, 0.1m, 12);
    public static readonly Fact<Length> FabricThickness = Of.Opening("fabric-thickness", "Fabric thickness", "Thickness of the fabric.", null, 0.001m, 1);
    public static readonly Fact<Length> ExtraFabric = Of.Opening("extra-fabric", "Extra fabric", "Fabric on the tube beyond the drop.", null, 0, 60);
    public static readonly Fact<Length> StackFixed = Of.Opening("stack-fixed", "Stack, fixed part",
        "Height of the raised stack that does not depend on the drop.", null, 0, 48);
    public static readonly Fact<decimal> StackShare = Of.Number("stack-share", "Stack, share of drop",
        "The part of the drop that the raised stack takes.", null, 0, 1);
    public static readonly Fact<Length> DepthNeeded = Of.Opening("depth-needed", "Depth needed", "The least depth in which its brackets hold.", null, 0, 24);
    public static readonly Fact<Length> DepthFlush = Of.Opening("depth-flush", "Depth, flush",
        "The depth in which it hangs flush with the room face.", null, 0, 24);
    public static readonly Fact<Length> RoundTo = Of.Opening("round-to", "Order step", "Sizes are ordered in steps of this.", null, 0.01m, 2);
    public static readonly Fact<TimeSpan> PairHold = Of.Seconds("pair-hold", "Hold to pair", "How long the button is held until the cue.");
    public static readonly Fact<string> PairCue = Of.Text("pair-cue", "Pairing cue", "What shows that it listens.");
    public static readonly Fact<TimeSpan> PresetHold = Of.Seconds("preset-hold", "Hold to store preset", "How long the button is held to store a preset.");
    public static readonly Fact<string> PresetCue = Of.Text("preset-cue", "Preset cue", "What shows that it is stored.");
    public static readonly Fact<string> LimitsHow = Of.Text("limits-how", "Setting limits", "How its limits are set.", null, Declare.Note);
    public static readonly Fact<TimeSpan> LimitHold = Of.Seconds("limit-hold", "Hold to set a limit", "How long the button is held to set a limit.");
    public static readonly Fact<string> LimitCue = Of.Text("limit-cue", "Limit cue", "What shows that the limit is set.");
    public static readonly Fact<string> LevelHow = Of.Text("level-how", "Leveling", "How a limit is moved a little, to bring it level with its neighbors.",
        null, Declare.Note);

    public static readonly Fact<string> WarrantyTerm = Of.Text("warranty-term", "Warranty, how long", "For how long the maker answers for it.");
    public static readonly Fact<string> WarrantyCovers = Of.Text("warranty-covers", "Warranty covers",
        "What the maker's warranty covers, and what it does not.", null, Declare.Note);
    public static readonly Fact<string> WarrantyCall = Of.Text("warranty-call", "Warranty, whom to call",
        "Who is called, with the number, and what is asked for.");

    /// <summary>What the maker is told as the width, for a mount.</summary>
    public static Fact<OrderedWidth> OrderedWidthAt(Mount mount) => mount == Mount.Inside ? OrderedInside : OrderedOutside;

    /// <summary>What comes off the width, for a mount.</summary>
    public static Fact<Length> DeductionAt(Mount mount) => mount == Mount.Inside ? DeductionInside : DeductionOutside;

    internal static readonly Fact[] All =
    [
        Name, MotorEnd, RaisedForm, MotorVolts, LeastVolts, RunningCurrent, StartingCurrent, WithoutPower,
        Widest, Highest, EndBracket, EndBracketBack, EndBracketDown,
        CentreBracket, CentreFrom, MiddleScrew, GapBetween, GapMost, EndAllowance, OrderedInside, DeductionInside, OrderedOutside, DeductionOutside,
        PartsPerUnit, Setback, LeadBehind, Tube, FabricThickness,
        ExtraFabric, StackFixed, StackShare,
        DepthNeeded, DepthFlush, RoundTo, PairHold, PairCue, LimitsHow, LimitHold, LimitCue, LevelHow, PresetHold, PresetCue,
        WarrantyTerm, WarrantyCovers, WarrantyCall,
        .. AboutSheet.Declared(Of),
    ];
}
