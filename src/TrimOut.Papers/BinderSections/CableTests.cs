using TrimOut.Core.Facts;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every reading of every home run, with the instrument, the person and the day.</summary>
internal static class CableTests
{
    public static Section Section { get; } = new("cable_tests", "Cable tests", Write) { NotForOwner = true };

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var runs = data.House.Runs;
        to.Heading(3, "Loop tests");
        to.Say("Resistance of both conductors in a row, read from the mechanical room with the window end shorted: " +
            "once before the walls were closed and once after. The two should agree.");
        to.Table(["Unit", "First test", "With, who, when", "Second test", "With, who, when"], runs.Select(r => Row(
            r.Name, r.EntryOrNotYet(RunFacts.FirstLoop), r.Taken(RunFacts.FirstLoop), r.EntryOrNotYet(RunFacts.SecondLoop), r.Taken(RunFacts.SecondLoop))));

        to.Heading(3, "Far end open");
        to.Say("Resistance from one conductor to the other, and from both to the frame, with the window end open: each should read open.");
        to.Table(["Unit", "First, apart", "First, to frame", "Second, apart", "Second, to frame", "With, who, when"], runs.Select(r => Row(
            r.Name, r.EntryOrNotYet(RunFacts.FirstApart), r.EntryOrNotYet(RunFacts.FirstToFrame), r.EntryOrNotYet(RunFacts.SecondApart),
            r.EntryOrNotYet(RunFacts.SecondToFrame),
            r.Taken(RunFacts.FirstApart, RunFacts.FirstToFrame, RunFacts.SecondApart, RunFacts.SecondToFrame))));

        to.Heading(3, "Power tests");
        to.Table(["Unit", "Volts, open", "Volts, loaded", "Polarity", "With, who, when"], runs.Select(r => Row(
            r.Name, r.EntryOrNotYet(RunFacts.OpenVolts), r.EntryOrNotYet(RunFacts.LoadedVolts), r.EntryOrNotYet(RunFacts.Polarity),
            r.Taken(RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity))));
    }
}
