using TrimOut.Core.Facts;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every reading of every home run, with the instrument, the person and the day.</summary>
internal static class CableTests
{
    public static Section Section { get; } = new("cable_tests", "Cable tests", Write) { NotForOwner = true };

    private static readonly Fact[] Readings =
        [RunFacts.FirstLoop, RunFacts.SecondLoop, RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity];

    private static readonly Fact[] FarEndOpen = [RunFacts.FirstApart, RunFacts.FirstToFrame, RunFacts.SecondApart, RunFacts.SecondToFrame];

    private static void Write(MarkdownWriter to, PaperData data)
    {
        to.Say("Loop: resistance of both conductors in a row, read at the panel with the window end shorted, " +
            "once before the walls were closed and once after. The two should agree.");
        var read = new TakenMarks();
        to.Table(["Unit", "First loop", "Second loop", "Volts, open", "Volts, loaded", "Polarity", "Read"], data.House.Runs.Select(r =>
            (Inline[])[r.Name, .. Readings.Select(f => r.EntryOrNotYet(f)), read.Of(r, Readings)]));
        var apart = data.House.Runs.Where(r => FarEndOpen.Any(f => r.Shown(f) is not null)).ToList();
        if (apart.Count > 0)
        {
            to.Heading(3, "Far end open");
            to.Say("Resistance from one conductor to the other, and from both to the frame, with the window end open: each should read open.");
            to.Filled(["Unit", "First, apart", "First, to frame", "Second, apart", "Second, to frame", "Read"], apart.Select(r =>
                (Inline[])[r.Name, .. FarEndOpen.Select(f => r.Entry(f)), read.Of(r, FarEndOpen)]));
        }
        read.Write(to);
    }
}
