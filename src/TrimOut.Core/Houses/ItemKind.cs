namespace TrimOut.Core.Houses;

/// <summary>What an item in a house is.</summary>
public enum ItemKind
{
    /// <summary>The job itself.</summary>
    House,

    /// <summary>A room, in walking order.</summary>
    Room,

    /// <summary>One opening.</summary>
    Window,

    /// <summary>One covering on a window.</summary>
    Unit,

    /// <summary>The unbroken cable from one unit to one panel output.</summary>
    Run,

    /// <summary>One stretch of a home run in one environment.</summary>
    Leg,

    /// <summary>A supply in the mechanical room.</summary>
    Panel,

    /// <summary>The radio device that knows every unit.</summary>
    Hub,

    /// <summary>A handheld or wall remote.</summary>
    Remote,

    /// <summary>A stored set of positions on one remote.</summary>
    Preset,

    /// <summary>One thing to mend, written by hand.</summary>
    Punch,

    /// <summary>A finding passed with a reason and initials.</summary>
    Waiver,

    /// <summary>A box of cable on hand, full or in part.</summary>
    Box,

    /// <summary>Somebody who has a part in the job, with a telephone number.</summary>
    Contact,

    /// <summary>One day's work or delivery at the house, with who is expected.</summary>
    Visit,

    /// <summary>What was done to something after it was handed over: replaced, repaired, looked at.</summary>
    Service,

    /// <summary>Kit: a kind of covering.</summary>
    CoveringKind,

    /// <summary>Kit: a cable.</summary>
    CableType,

    /// <summary>Kit: a panel.</summary>
    PanelType,

    /// <summary>Kit: a hub.</summary>
    HubType,

    /// <summary>Kit: a remote.</summary>
    RemoteType,

    /// <summary>Kit: what hides the roll.</summary>
    HeadCover,
}
