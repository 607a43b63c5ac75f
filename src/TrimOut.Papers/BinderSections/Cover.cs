using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.BinderSections;

/// <summary>Whose house it is, who did the work, and when.</summary>
internal static class Cover
{
    public static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Facts("About", "Entry",
            ("House", Inline.NameOf(data.House, data.House.Job)),
            ("Client", job.Entry(HouseFacts.Client)),
            ("Address", job.Entry(HouseFacts.Address)),
            ("Crew", job.Entry(HouseFacts.Crew)),
            ("Code in force", job.Entry(HouseFacts.CodeInForce)),
            ("Handover", Handover(job, data.Date)),
            ("This binder written", data.Date.OnPaper()));
        to.Say("A dash means that nothing was noted. \"Not yet\" means that it is still to come. Left and right are as seen from inside the room, " +
            "facing the window.");
    }

    /// <summary>The day stays a plan until somebody signed, also when it has gone by: the draft above says that the house is not handed over.</summary>
    private static Inline Handover(JobItself job, DateOnly paper) => (job.Item.Get(HouseFacts.AcceptedOn), job.Item.Get(HouseFacts.HandoverOn)) switch
    {
        (null, { } day) => Inline.Ours($"planned for {day.OnPaper()}"),
        // The house is handed over with the signature, on whatever day that was planned.
        _ => job.DayOrNotYet(HouseFacts.AcceptedOn, paper),
    };
}
