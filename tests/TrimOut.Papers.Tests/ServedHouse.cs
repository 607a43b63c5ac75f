using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests;

/// <summary>
/// The finished house half a year after its book was handed over: W02A was replaced, and is to be paired and set again; a claim is open; a remote and a window
/// came, a window is covered no more.
/// </summary>
internal static class ServedHouse
{
    public static TestJob Build()
    {
        var job = FinishedHouse.Build();
        job.SayOf(job.House.Name, HouseFacts.BinderGivenOn, "2026-10-01");
        Serve(job, "yearly visit 2027-03-01 @R. Example");
        Serve(job, "Bedside battery changed 2027-03-01");
        Serve(job, "W02A replaced 2027-03-02 @R. Example, serial SN-NEW, claim C-17, motor grinds");
        Serve(job, "W01 repaired 2027-03-03, loose bracket");
        job.Window("W09", "Kitchen").Do(LeaveOut.Window(job.House.FindTag("W03")!, "the owner wants the view"));
        return job;
    }

    private static void Serve(TestJob job, string line) => job.Do(QuickService.Read(job.House, line));
}
