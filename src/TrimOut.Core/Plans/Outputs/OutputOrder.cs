using System.Collections.Immutable;

namespace TrimOut.Core.Plans.Outputs;

/// <summary>A place that a run lands on.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Output">Its output, from 1.</param>
public sealed record OutputPlace(string Panel, int Output);

/// <summary>A panel to land on.</summary>
/// <param name="Id">Its name, unique in the order.</param>
/// <param name="Outputs">How many outputs it has.</param>
public sealed record PanelToFill(string Id, int Outputs);

/// <summary>A run to land.</summary>
/// <param name="Id">Its name, unique in the order.</param>
/// <param name="Room">The room of its unit; null when not known.</param>
/// <param name="MovesWith">What moves its unit together with others: groups and presets.</param>
/// <param name="Load">What its unit adds to a panel's load, in whatever all runs are counted in.</param>
/// <param name="Landed">Where it has landed already; null while it waits.</param>
public sealed record RunToLand(string Id, string? Room, ImmutableArray<string> MovesWith, int Load = 1, OutputPlace? Landed = null);

/// <summary>What is to be landed on what.</summary>
/// <param name="Panels">The panels, in the order in which they are used.</param>
/// <param name="Runs">The runs, in the order in which outputs are given out.</param>
/// <param name="MayMove">Whether landed runs may be moved; they stay unless this is said.</param>
/// <param name="LoadIn">What loads are counted in.</param>
public sealed record OutputOrder(ImmutableArray<PanelToFill> Panels, ImmutableArray<RunToLand> Runs, bool MayMove = false, string LoadIn = OutputOrder.Units)
{
    /// <summary>Loads counted in units: each unit is 1.</summary>
    public const string Units = "units";
}
