using TrimOut.Core.Phases;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>
/// The moments at which an installer has written down what there is to write: a phase, parted where a mend is cheap before a moment and dear after
/// it.
/// </summary>
public enum Stage
{
    /// <summary>The makers' sheets are typed into the kit.</summary>
    Sheets,

    /// <summary>Framing is open.</summary>
    WalkThrough,

    /// <summary>Routes and cables are chosen, nothing is pulled yet.</summary>
    Routed,

    /// <summary>Cables are pulled, labelled and tested.</summary>
    Pulled,

    /// <summary>Drywall and paint are done.</summary>
    CloseIn,

    /// <summary>Openings are measured.</summary>
    Measured,

    /// <summary>Sizes are worked out, nothing is sent yet.</summary>
    Sized,

    /// <summary>The order is sent.</summary>
    Ordered,

    /// <summary>Boxes came.</summary>
    Received,

    /// <summary>Units hang.</summary>
    Hung,

    /// <summary>Panels are live.</summary>
    Powered,

    /// <summary>Units are paired.</summary>
    Paired,

    /// <summary>Limits and presets are set.</summary>
    Limits,

    /// <summary>The owner signs.</summary>
    Handover,

    /// <summary>The years after: what failed was replaced.</summary>
    Service,
}

/// <summary>What stages are called, and the phase that each belongs to.</summary>
public static class Stages
{
    /// <summary>All stages in order.</summary>
    public static readonly IReadOnlyList<Stage> All = Enum.GetValues<Stage>();

    /// <summary>Its name in a table.</summary>
    public static string Full(this Stage stage) => stage switch
    {
        Stage.Sheets => "Kit, from the sheets",
        Stage.Routed => "Rough-in, before the pull",
        Stage.Pulled => "Rough-in",
        Stage.Sized => "Order, before it is sent",
        Stage.Ordered => "Order",
        Stage.Service => "In service",
        _ => stage.Phase().Full(),
    };

    /// <summary>The phase that it is part of.</summary>
    public static Phase Phase(this Stage stage) => stage switch
    {
        Stage.Sheets or Stage.WalkThrough => Core.Phases.Phase.WalkThrough,
        Stage.Routed or Stage.Pulled => Core.Phases.Phase.RoughIn,
        Stage.CloseIn => Core.Phases.Phase.CloseIn,
        Stage.Measured => Core.Phases.Phase.Measure,
        Stage.Sized or Stage.Ordered => Core.Phases.Phase.Order,
        Stage.Received => Core.Phases.Phase.Receive,
        Stage.Hung => Core.Phases.Phase.Hang,
        Stage.Powered => Core.Phases.Phase.Power,
        Stage.Paired => Core.Phases.Phase.Pair,
        Stage.Limits => Core.Phases.Phase.Limits,
        _ => Core.Phases.Phase.Handover,
    };
}
