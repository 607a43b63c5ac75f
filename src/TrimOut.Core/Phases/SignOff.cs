using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>The last step of a house.</summary>
internal static class SignOff
{
    /// <summary>The id of the step.</summary>
    public const string StepId = "signed-off";

    /// <summary>Whether the owner has signed: the day is written, or the step is marked.</summary>
    public static bool IsDone(House house) =>
        house.Job.Latest(HouseFacts.AcceptedOn)?.Stored is not null || new JobItself(house).MarkOf(StepList.Find(StepId)!) is not null;
}
