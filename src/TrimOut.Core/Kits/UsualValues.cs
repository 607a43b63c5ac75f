using System.Collections.Immutable;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>Between what the values of a maker's sheet usually lie: far wider than any one sheet, narrow enough for a slip of the decimal point.</summary>
/// <remarks>
/// Common practice, no published source; but <see cref="MostCurrent"/>. What can't be at all is refused where it is typed, by the form of the value.
/// </remarks>
public static class UsualValues
{
    /// <summary>The most that one output of Class 2 gives up to 30 V (NFPA 70-2017 chapter 9 table 11(B)); the code in force governs.</summary>
    public static readonly Current MostCurrent = new(8);

    /// <summary>The longest that a button is held.</summary>
    public static readonly TimeSpan LongestHold = TimeSpan.FromSeconds(30);

    /// <summary>The nominal size next to the thickest gauge, which is 3.31 mm2.</summary>
    private const decimal MostSquareMillimetres = 4;

    private static readonly ConductorSize ThinnestConductor = new ConductorSize.Gauge(22);

    private static readonly ConductorSize ThickestConductor = new ConductorSize.Gauge(12);

    /// <summary>All of them, in the order of sheets.</summary>
    public static ImmutableArray<UsualValue> All { get; } =
    [
        Of(CoveringKindFacts.MotorVolts, new Voltage(3), new Voltage(48)),
        Of(CoveringKindFacts.LeastVolts, new Voltage(2), new Voltage(48)),
        Of(CoveringKindFacts.RunningCurrent, new Current(0.05m), MostCurrent),
        Of(CoveringKindFacts.StartingCurrent, new Current(0.05m), MostCurrent),
        Of(CoveringKindFacts.Widest, Inches(24), Inches(480)),
        Of(CoveringKindFacts.Highest, Inches(24), Inches(480)),
        Of(CoveringKindFacts.EndBracket, Inches(0.125m), Inches(6)),
        Of(CoveringKindFacts.EndBracketBack, Inches(0.5m), Inches(8)),
        Of(CoveringKindFacts.EndBracketDown, Inches(0.5m), Inches(8)),
        Of(CoveringKindFacts.CentreBracket, Inches(0.25m), Inches(6)),
        Of(CoveringKindFacts.CentreFrom, Inches(24), Inches(200)),
        Of(CoveringKindFacts.MiddleScrew, Length.Zero, Inches(12)),
        Of(CoveringKindFacts.GapBetween, Length.Zero, Inches(1)),
        Of(CoveringKindFacts.GapMost, Length.Zero, Inches(2)),
        Of(CoveringKindFacts.EndAllowance, Length.Zero, Inches(1)),
        Of(CoveringKindFacts.DeductionInside, Length.Zero, Inches(1)),
        Of(CoveringKindFacts.DeductionOutside, Length.Zero, Inches(1)),
        Of(CoveringKindFacts.Setback, Length.Zero, Inches(6)),
        Of(CoveringKindFacts.LeadBehind, Length.Zero, Inches(24)),
        Of(CoveringKindFacts.Tube, Inches(0.5m), Inches(4)),
        Of(CoveringKindFacts.FabricThickness, Length.FromMillimetres(0.1m), Length.FromMillimetres(3)),
        Of(CoveringKindFacts.ExtraFabric, Length.Zero, Inches(36)),
        Of(CoveringKindFacts.StackFixed, Inches(0.5m), Inches(18)),
        Of(CoveringKindFacts.StackShare, 0.005m, 0.4m),
        Of(CoveringKindFacts.DepthNeeded, Inches(0.25m), Inches(10)),
        Of(CoveringKindFacts.DepthFlush, Inches(0.5m), Inches(12)),
        Of(CoveringKindFacts.RoundTo, Length.FromMillimetres(0.5m), Inches(1)),
        Of(CoveringKindFacts.PairHold, TimeSpan.Zero, LongestHold),
        Of(CoveringKindFacts.LimitHold, TimeSpan.Zero, LongestHold),
        Of(CoveringKindFacts.PresetHold, TimeSpan.Zero, LongestHold),
        new(CableTypeFacts.Conductor, ThinnestConductor, ThickestConductor, v => Conductors.SquareMillimetres((ConductorSize)v) is var area
            && area >= Conductors.SquareMillimetres(ThinnestConductor) && area <= MostSquareMillimetres),
        Of(CableTypeFacts.LongestRun, Length.FromFeet(10), Length.FromFeet(500)),
        Of(CableTypeFacts.Diameter, Length.FromMillimetres(2), Inches(1)),
        Of(CableTypeFacts.BoxLength, Length.FromFeet(25), Length.FromFeet(2500)),
        Of(PanelTypeFacts.Outputs, 1, 32),
        Of(PanelTypeFacts.Supply, new Voltage(3), new Voltage(48)),
        Of(PanelTypeFacts.OutputCurrent, new Current(0.1m), MostCurrent),
        Of(PanelTypeFacts.InputCurrent, new Current(0.1m), new Current(16)),
        Of(PanelTypeFacts.UnitsPerOutput, 1, 4),
        Of(HubTypeFacts.Devices, 2, 250),
        Of(RemoteTypeFacts.Units, 1, 50),
        Of(HeadCoverFacts.RoomInside, Inches(1), Inches(8)),
        Of(HeadCoverFacts.Depth, Inches(1), Inches(10)),
    ];

    private static UsualValue Of<T>(Fact<T> fact, T least, T most)
        where T : notnull, IComparable<T> => new(fact, least, most, v => ((T)v).CompareTo(least) >= 0 && ((T)v).CompareTo(most) <= 0);

    private static Length Inches(decimal inches) => Length.FromInches(inches);
}

/// <summary>Between what a value of a sheet usually lies, both ends included.</summary>
/// <param name="Fact">Which value.</param>
/// <param name="Least">The least.</param>
/// <param name="Most">The most.</param>
/// <param name="Holds">Whether a decoded value of it lies between.</param>
public sealed record UsualValue(Fact Fact, object Least, object Most, Func<object, bool> Holds);
