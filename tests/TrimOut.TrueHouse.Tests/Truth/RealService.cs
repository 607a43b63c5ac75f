using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>Something that is done after the handover, as it is.</summary>
public sealed class RealService
{
    /// <summary>What it is done to: a unit, a panel, a hub or a remote.</summary>
    public required ItemKind To { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    public required ServiceKind What { get; init; }
    public required DateOnly On { get; set; }
    public string Cause { get; init; } = "";

    /// <summary>The serial on the unit that hangs there now; null where no other unit was hung, or nobody reads it.</summary>
    public string? Serial { get; set; }
    public string? Claim { get; init; }
    public ClaimOutcome? Outcome { get; set; }

    /// <summary>Units of which a phase is not done once more, though they are as new.</summary>
    public HashSet<(string Key, Phase Phase)> NotDoneAgain { get; } = [];

    /// <summary>What is another one in truth from that day on.</summary>
    public Action<RealHouse>? Changes { get; set; }
}
