namespace TrimOut.Core.Phases;

/// <summary>Names of phases on screens and papers.</summary>
public static class PhaseNames
{
    /// <summary>All phases in order.</summary>
    public static readonly IReadOnlyList<Phase> All = Enum.GetValues<Phase>();

    /// <summary>The name in full.</summary>
    public static string Full(this Phase phase) => phase switch
    {
        Phase.WalkThrough => "Walk-through",
        Phase.RoughIn => "Rough-in",
        Phase.CloseIn => "Close-in",
        _ => phase.ToString(),
    };

    /// <summary>The name in at most five letters, for headings of narrow columns.</summary>
    public static string Short(this Phase phase) => phase switch
    {
        Phase.WalkThrough => "Walk",
        Phase.RoughIn => "Rough",
        Phase.CloseIn => "Close",
        Phase.Measure => "Meas",
        Phase.Receive => "Recv",
        Phase.Limits => "Limit",
        Phase.Handover => "Hand",
        _ => phase.ToString(),
    };

    /// <summary>Two letters that no other phase has, for columns that are one sign wide and headed downwards.</summary>
    public static string Letters(this Phase phase) => phase switch
    {
        Phase.Receive => "Rc",
        Phase.Hang => "Hg",
        Phase.Power => "Pw",
        Phase.Pair => "Pr",
        Phase.Handover => "Ho",
        _ => phase.ToString()[..2],
    };
}
