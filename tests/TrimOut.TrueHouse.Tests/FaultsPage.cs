using System.Globalization;
using System.Text;
using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Faults;
using TrimOut.TrueHouse.Tests.Pens;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests;

/// <summary>The text of docs/faults.md, from the runs of the gate.</summary>
internal static class FaultsPage
{
    private static string FalseAlarms(IReadOnlyList<string> checks) => checks.Count == 0 ? "."
        : checks.Count == 1 ? $", but for\n`{checks[0]}`, which is known to speak where it should not."
        : $", but for\n{string.Join(" and ", checks.Select(k => $"`{k}`"))}, which are known to speak where they should not.";

    public static string Text(IReadOnlyList<FaultRecord> records)
    {
        var page = new StringBuilder();
        var falseAlarms = FalseAlarms([.. KnownFalseAlarms.Stops.Keys, .. KnownFalseAlarms.Cautions.Keys]);
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
            fact that is recorded today. Faultless houses hear no stop and no caution from the sheets to the handover{falseAlarms}
            The first 3,000 of them were walked in 2026-11, into service.

            ```sh
            # thousands of houses, and faults in hundreds of them
            TRIMOUT_TRUE_HOUSES=3000 dotnet test tests/TrimOut.TrueHouse.Tests --logger "console;verbosity=detailed"
            # one fault in one house, with all that is said of it
            export TRIMOUT_TRUE_SEED=1001 TRIMOUT_TRUE_FAULT=short-midway
            dotnet test tests/TrimOut.TrueHouse.Tests --filter AReplayedFault --logger "console;verbosity=detailed"
            ```

            """);
        Table("Found as soon as it shows", "What goes wrong | In | What it costs later | Found by | In | What the mend says", [Hearing.Found], (fault, run) =>
            [Upper(fault.Goes), fault.In.Full(), Upper(fault.Costs), Named(run), run.First!.Stage.Full(), Mend(run.First)]);
        Table("Found too late, too softly, or in some houses only",
            "What goes wrong | What it costs later | Shows in | Found by | In | What is wanting", [Hearing.Late, Hearing.TooSoft, Hearing.InPart],
            (fault, run) =>
            [
                Upper(fault.Goes), Upper(fault.Costs), run.Shown!.Value.Full(), Named(run), run.First!.Stage.Full(),
                Wanting(records.Single(r => r.Fault == fault)),
            ]);
        Table("Not found yet, though recorded facts show it", "What goes wrong | What it costs later | Shows in | Shown by", [Hearing.Silent], (fault, run) =>
            [Upper(fault.Goes), Upper(fault.Costs), run.Shown!.Value.Full(), ShownBy(run.Trace)]);
        Table("Not to be seen from what is recorded", "What goes wrong | In | What it costs later | What would show it", [Hearing.Unseen], (fault, _) =>
            [Upper(fault.Goes), fault.In.Full(), Upper(fault.Costs), Upper(fault.WouldShow!)]);
        SlipsOfThePen(page);
        return page.ToString();

        int Count(Hearing hearing) => records.Count(r => r.Hearing == hearing);

        void Table(string title, string heads, Hearing[] hearings, Func<Fault, FaultRun, string[]> cells)
        {
            var rows = records.Where(r => hearings.Contains(r.Hearing)).ToList();
            if (rows.Count == 0)
                return;
            page.Append(CultureInfo.InvariantCulture, $"\n## {title}\n\n| {heads} |\n|{string.Concat(heads.Split(" | ").Select(_ => "---|"))}\n");
            foreach (var record in rows)
            {
                var run = record.Runs.FirstOrDefault(x => x.First is not null) ?? record.Runs[0];
                page.Append(CultureInfo.InvariantCulture, $"| {string.Join(" | ", cells(record.Fault, run))} |\n");
            }
        }
    }

    private static void SlipsOfThePen(StringBuilder page)
    {
        var (all, spoil, silent) = (PenRecord.All.Count, PenRecord.ThatSpoil.Count(), PenRecord.Silent.ToList());
        page.Append(CultureInfo.InvariantCulture, $"""

            ## Slips of the pen

            In {PenRecord.Houses} faultless houses each value that is written was written wrong once in each of five ways: twice as much, two digits changed
            over, the number of the other side of the tape, a neighbor's, another choice. Of {all} slips {spoil} make the job come out otherwise: another
            size is ordered, another length is cut, something is fixed, landed or joined elsewhere. {spoil - silent.Count} of these are refused, or a stop
            or a caution tells of them; {silent.Count} pass in silence, as nothing else that is recorded speaks against the value:

            | Detail | Written as | Then wrong, such as | What would show it |
            |---|---|---|---|

            """);
        foreach (var of in silent.GroupBy(r => r.Fact))
        {
            page.Append(CultureInfo.InvariantCulture,
                $"| {of.Key.Label} ({KebabCase.Of(of.Key.Subject)}) | {string.Join(", ", of.Select(r => r.Slip).Distinct().Order().Select(s => s.Full()))} "
                + $"| {of.First().Wrong} | {KnownPenSilences.All[PenRecord.NameOf(of.Key)]} |\n");
        }
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
