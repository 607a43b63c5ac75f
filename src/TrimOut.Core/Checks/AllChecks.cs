using System.Collections.Immutable;
using TrimOut.Core.Checks.Rough;

namespace TrimOut.Core.Checks;

/// <summary>Every check, in the order in which they are reported.</summary>
public static class AllChecks
{
    /// <summary>All checks.</summary>
    public static ImmutableArray<ICheck> All { get; } =
    [
        new LeadAwayFromMotor(), new WindowLeftOutWithoutReason(), new EntryOffLeadSide(), new EntryUnderEndBracket(), new EntryUnderCentreSupport(),
        new TailUnderHalfWidth(), new TailUnderWholeWidth(), new TailShortOfMotor(), new MainsTooNear(), new HoleNearEdge(), new LabelEndsDiffer(), new LabelTwice(),
    ];

    /// <summary>The check with that id; null when there is none.</summary>
    public static ICheck? Find(string id) => All.FirstOrDefault(c => c.Info.Id == id);
}
