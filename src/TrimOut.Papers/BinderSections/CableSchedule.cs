using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every home run: labels, way, length and tests, with who read them and with what.</summary>
internal static class CableSchedule
{
    public static Section Section { get; } = new("Cable schedule", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var runs = data.House.Runs;
        to.Say("One unbroken cable, a home run, goes from each unit to its own panel output. As in the administration standard ANSI/TIA-606, each cable has one identifier: the same on both ends, and in this schedule. Read it before you unplug anything.");
        if (runs.IsEmpty)
        {
            to.Say("There is no home run in this house.");
            return;
        }

        to.Heading(3, "Labels and landing");
        to.Table(["Unit", "Label at window", "Label at panel", "Panel", "Output", "Cable"], runs.Select(r => Row(
            r.Name, r.Show(RunFacts.LabelAtWindow).OrDash(), r.Show(RunFacts.LabelAtPanel).OrDash(),
            r.Show(RunFacts.Panel).OrNotYet(), r.Show(RunFacts.Output).OrNotYet(), r.Show(RunFacts.Cable).OrDash())));

        to.Heading(3, "Way and length");
        to.Table(["Unit", "Legs, from the panel", "Tail at window", "Tail at panel", "In all, one way"], runs.Select(r => Row(
            r.Name, r.Legs.Select(LegText).JoinOrDash("; "), Tail(r, data.House), r.Show(RunFacts.TailAtPanel).OrDash(),
            (r.OneWay?.ShowRounded(data.House.DisplayUnits, LengthScale.Run)).OrDash())));

        to.Heading(3, "Loop tests");
        to.Say("Resistance of both conductors in a row, read from the mechanical room with the window end shorted: once before the walls were closed and once after. The two should agree.");
        to.Table(["Unit", "First test", "With, who, when", "Second test", "With, who, when"], runs.Select(r => Row(
            r.Name, r.Show(RunFacts.FirstLoop).OrNotYet(), r.Taken(RunFacts.FirstLoop), r.Show(RunFacts.SecondLoop).OrNotYet(), r.Taken(RunFacts.SecondLoop))));

        to.Heading(3, "Power tests");
        to.Table(["Unit", "Volts, open", "Volts, loaded", "Polarity", "With, who, when"], runs.Select(r => Row(
            r.Name, r.Show(RunFacts.OpenVolts).OrNotYet(), r.Show(RunFacts.LoadedVolts).OrNotYet(), r.Show(RunFacts.Polarity).OrNotYet(),
            r.Taken(RunFacts.OpenVolts, RunFacts.LoadedVolts, RunFacts.Polarity))));

        to.Heading(3, "Notes and pictures of the open walls");
        to.Table(["Unit", "Note", "Picture"], runs
            .Where(r => r.Show(RunFacts.Note).Length + r.Show(RunFacts.Photo).Length > 0)
            .Select(r => Row(r.Name, r.Show(RunFacts.Note).OrDash(), r.Show(RunFacts.Photo).OrDash())));
    }

    private static string LegText(Leg leg) => new[]
    {
        leg.Show(LegFacts.Direction),
        leg.Show(LegFacts.Length) is { Length: > 0 } length ? length : "(length not noted)",
        leg.Show(LegFacts.Place),
    }.JoinOrDash(" ");

    private static string Tail(HomeRun run, House house) => (run.TailAtWindow?.Show(house.DisplayUnits)).OrDash();
}
