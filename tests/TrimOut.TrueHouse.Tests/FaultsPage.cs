using System.Globalization;
using System.Text;
using TrimOut.TrueHouse.Tests.Faults;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests;

/// <summary>The text of docs/faults.md, from the runs of the gate.</summary>
internal static class FaultsPage
{
    private static string FalseAlarms => string.Join(" and ", KnownFalseAlarms.Stops.Keys.Concat(KnownFalseAlarms.Cautions.Keys).Select(k => $"`{k}`"));

    public static string Text(IReadOnlyList<FaultRecord> records)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            # Faults

            This page is made from runs of a simulator; a test holds it to them, and `TRIMOUT_WRITE_DOCS=1 dotnet test tests/TrimOut.TrueHouse.Tests`
            makes it anew. The simulator knows what is true of random houses and shares no formula with the program: openings are polygons, cables are
            ladders of resistors with each joint and damage at its place, makers' sheets are rolled anew for each house. An installer with a tape
            (1/16 in or 1 mm) and a meter (0.5 % and two digits) writes down what there is to see, stage by stage. Then something goes wrong. What is
            said of that house and not of the same house without the fault, about the place where it struck, is what finds it.

            {records.Count} faults, each in {Seeds.EachFault} houses in which its effect is larger than what the readings may be off:
            {Count(Hearing.Found)} are found in time in all of them, {Count(Hearing.Late)} late, {Count(Hearing.TooSoft)} by a caution where only a stop is
            loud enough, {Count(Hearing.InPart)} in some houses only, {Count(Hearing.Silent)} not yet; {Count(Hearing.Unseen)} are not to be seen from any
            fact that is recorded today. Faultless houses hear no stop and no caution from the sheets to the handover, but for {FalseAlarms}, which are
            known to speak where they should not.

            ```sh
            # thousands of houses, and faults in hundreds of them
            TRIMOUT_TRUE_HOUSES=3000 dotnet test tests/TrimOut.TrueHouse.Tests --logger "console;verbosity=detailed"
            # one fault in one house, with all that is said of it
            export TRIMOUT_TRUE_SEED=1001 TRIMOUT_TRUE_FAULT=short-midway
            dotnet test tests/TrimOut.TrueHouse.Tests --filter AReplayedFault --logger "console;verbosity=detailed"
            ```

            """);
        page.Append("\n## Found as soon as it shows\n\n");
        page.Append("| What goes wrong | In | What it costs later | Found by | In | What the mend says |\n|---|---|---|---|---|---|\n");
        foreach (var (fault, run) in Of(Hearing.Found))
            page.Append(CultureInfo.InvariantCulture,
                $"| {Upper(fault.Goes)} | {fault.In.Full()} | {Upper(fault.Costs)} | {Named(run)} | {run.First!.Stage.Full()} | {Mend(run.First)} |\n");
        page.Append("\n## Found too late, too softly, or in some houses only\n\n");
        page.Append("| What goes wrong | What it costs later | Shows in | Found by | In | What is wanting |\n|---|---|---|---|---|---|\n");
        foreach (var (fault, run) in Of(Hearing.Late, Hearing.TooSoft, Hearing.InPart))
        {
            page.Append(CultureInfo.InvariantCulture,
                $"| {Upper(fault.Goes)} | {Upper(fault.Costs)} | {run.Shown!.Value.Full()} | {Named(run)} | {run.First!.Stage.Full()} | ");
            page.Append(CultureInfo.InvariantCulture, $"{Wanting(records.Single(r => r.Fault == fault))} |\n");
        }
        page.Append("\n## Not found yet, though recorded facts show it\n\n");
        page.Append("| What goes wrong | What it costs later | Shows in | Shown by |\n|---|---|---|---|\n");
        foreach (var (fault, run) in Of(Hearing.Silent))
            page.Append(CultureInfo.InvariantCulture, $"| {Upper(fault.Goes)} | {Upper(fault.Costs)} | {run.Shown!.Value.Full()} | {ShownBy(run.Trace)} |\n");
        page.Append("\n## Not to be seen from what is recorded\n\n| What goes wrong | In | What it costs later | What would show it |\n|---|---|---|---|\n");
        foreach (var (fault, _) in Of(Hearing.Unseen))
            page.Append(CultureInfo.InvariantCulture, $"| {Upper(fault.Goes)} | {fault.In.Full()} | {Upper(fault.Costs)} | {Upper(fault.WouldShow!)} |\n");
        return page.ToString();

        int Count(Hearing hearing) => records.Count(r => r.Hearing == hearing);

        IEnumerable<(Fault Fault, FaultRun Run)> Of(params Hearing[] hearings) =>
            records.Where(r => hearings.Contains(r.Hearing)).Select(r => (r.Fault, r.Runs.FirstOrDefault(x => x.First is not null) ?? r.Runs[0]));
    }

    private static string Named(FaultRun run) => run.First!.Weight == 2 && run.First.Mend.Length == 0 ? "refused" : $"`{run.First.By}` ({run.First.Severity})";

    private static string Mend(Word word) => (word.Mend.Length > 0 ? word.Mend : word.Message).Replace("|", "\\|", StringComparison.Ordinal);

    private static string Wanting(FaultRecord record) => record.Hearing switch
    {
        Hearing.Late => "to be said when it first shows",
        Hearing.TooSoft => "a stop",
        _ => "to be said in every house",
    };

    private static string ShownBy(Trace trace) =>
        trace.ShownBy.Count == 0 ? "marks of steps" : string.Join(", ", trace.ShownBy.Select(s => s.Fact.Label.ToLowerInvariant()).Distinct());

    private static string Upper(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
