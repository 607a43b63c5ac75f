using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>The last step of a house.</summary>
internal static class SignOff
{
    /// <summary>The id of the step.</summary>
    public const string StepId = "signed-off";

    /// <summary>Whether a unit is to be hung only since the house was signed off: its window came later, or was left out until then.</summary>
    public static bool CameLater(Subject subject) => subject is Unit unit
        && (subject.House.Job.Latest(HouseFacts.AcceptedOn) is { Stored: not null } accepted ? accepted
            : subject.House.Job.Latest(StepList.Find(StepId)!.Field)) is { } signed
        && (StepVersion.AddedBy(unit.Item)?.IsAfter(signed) == true || unit.Window.Item.Latest(WindowFacts.Covered)?.IsAfter(signed) == true);

    /// <summary>Whether the owner has signed: the day is written, or the step is marked.</summary>
    public static bool IsDone(House house) =>
        house.Job.Latest(HouseFacts.AcceptedOn)?.Stored is not null || new JobItself(house).MarkOf(StepList.Find(StepId)!) is not null;
}
