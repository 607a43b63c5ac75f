namespace TrimOut.Core.Phases;

/// <summary>The phases of a job, in order.</summary>
public enum Phase
{
    /// <summary>Framing open: which windows get a covering.</summary>
    WalkThrough,

    /// <summary>Cable pulled, labelled and tested.</summary>
    RoughIn,

    /// <summary>Drywall, plaster, paint: every cable found again.</summary>
    CloseIn,

    /// <summary>Finished openings measured twice.</summary>
    Measure,

    /// <summary>Sizes worked out, sheet frozen.</summary>
    Order,

    /// <summary>Boxes matched to windows.</summary>
    Receive,

    /// <summary>Units on their brackets.</summary>
    Hang,

    /// <summary>Panels connected by a licensed electrician; runs landed, spliced and read.</summary>
    Power,

    /// <summary>Units to hub and remotes.</summary>
    Pair,

    /// <summary>Open and close limits, and presets.</summary>
    Limits,

    /// <summary>Demonstration, binder, sign-off.</summary>
    Handover,
}
