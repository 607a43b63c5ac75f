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
}
