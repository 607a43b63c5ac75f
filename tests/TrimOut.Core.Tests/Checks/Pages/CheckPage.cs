using System.Globalization;
using System.Text;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Pages;

/// <summary>The page of a check, made from its class, from what it reads, and from its two examples.</summary>
internal static class CheckPage
{
    private static readonly Lazy<IReadOnlyList<House>> Houses = new(() =>
        [BigHouse.Of(24).House, .. SampleHouse.Names.Select(n => SampleHouse.Open(n, new FakeTimeProvider()).House)]);

    /// <summary>The page as Markdown.</summary>
    public static string Of(ICheck check)
    {
        var (info, words, page) = (check.Info, new ClassWords(check.GetType()), new StringBuilder());
        var (finding, passing) = (Example.Finding(check).Play(), Example.Passing(check).Play());
        page.Append(CultureInfo.InvariantCulture, $"# {info.Id}\n\n{info.Title}. {info.Severity}, from {info.Phase.Full()} on.\n\n");
        page.Append(CultureInfo.InvariantCulture, $"**What.** {Prose(words.Summary)}\n\n");
        page.Append(CultureInfo.InvariantCulture, $"**Why.** {Prose(words.Remark("Why"))}\n\n");
        page.Append(CultureInfo.InvariantCulture, $"**How to clear it.** {Prose(words.Remark("To clear"))}\n\n");
        AppendReads(page, [.. Houses.Value.Prepend(finding.Job.House).Prepend(passing.Job.House).SelectMany(h => NotedReads.Of(check, h)).Distinct()]);
        page.Append(CultureInfo.InvariantCulture, $"**Figures.**\n\n    {info.Source.Formula}\n\n");
        page.Append(CultureInfo.InvariantCulture, $"**Source.** {Sentence(info.Source.Title)}\n\n");

        page.Append("**An example that finds.**\n\n");
        AppendBeginning(page, finding.Job, finding.Begun);
        AppendDone(page, finding.Done);
        foreach (var found in check.Run(finding.Job.House).Where(r => r.Outcome is Outcome.Found))
            AppendFound(page, finding.Job.House, found.Subject, (Outcome.Found)found.Outcome);

        page.Append("**An example that passes.**\n\n");
        if (passing.Begun.SequenceEqual(finding.Begun))
            page.Append("The house begins the same.\n\n");
        else
            AppendBeginning(page, passing.Job, passing.Begun);
        AppendDone(page, passing.Done);
        var figures = check.Run(passing.Job.House).Select(r => (r.Outcome as Outcome.Fine)?.Working).FirstOrDefault(w => w is not null);
        page.Append(CultureInfo.InvariantCulture, $"> Nothing is said.{(figures is null ? "" : " " + Figures(figures))}\n");
        return page.ToString();
    }

    private static void AppendReads(StringBuilder page, IReadOnlyCollection<FactRead> reads)
    {
        page.Append("**What it reads.**\n\n");
        foreach (var subject in reads.GroupBy(r => r.Fact.Subject).OrderBy(g => g.Key))
        {
            var of = subject.ToLookup(r => r.What, r => r.Fact);
            var values = FactTable.Of(subject.Key).Where(of[Beside.Value].Contains).Select(f => f.Label);
            var beside = of.Where(g => g.Key is Beside.Meter or Beside.Leads or Beside.CableAt or Beside.Checked).OrderBy(g => g.Key)
                .SelectMany(g => (g.Count() > 2 ? ["each value"] : g.Select(f => f.Label)).Select(of => WordsFor(g.Key, of)).Order(StringComparer.Ordinal));
            var all = of[Beside.Everything].Any() ? ["every detail"] : values.Concat(beside);
            page.Append(CultureInfo.InvariantCulture, $"- {SubjectWords.Of(subject.Key)}: {string.Join("; ", all)}\n");
        }
        if (reads.Count == 0)
            page.Append("- Which items there are, and no fact of them.\n");
        page.Append('\n');
    }

    private static void AppendBeginning(StringBuilder page, TestJob job, IReadOnlyList<string> begun)
    {
        var (words, told) = Beginning.Of(job.House.DisplayUnits, begun);
        page.Append(CultureInfo.InvariantCulture, $"{words}\n\n");
        if (told.Count > 0)
            AppendList(page, told);
    }

    private static void AppendDone(StringBuilder page, IReadOnlyList<string> done)
    {
        page.Append("Then:\n\n");
        AppendList(page, done);
    }

    private static void AppendList(StringBuilder page, IReadOnlyList<string> done)
    {
        foreach (var what in done)
            page.Append(CultureInfo.InvariantCulture, $"- {Prose(what)}\n");
        page.Append('\n');
    }

    private static void AppendFound(StringBuilder page, House house, Item subject, Outcome.Found found)
    {
        page.Append(CultureInfo.InvariantCulture, $"> **{Prose(house.NameOf(subject))}:** {Prose(found.Message.In(house))}\n>\n");
        page.Append(CultureInfo.InvariantCulture, $"> **Fix:** {Prose(found.Mend.In(house))}\n");
        if (found.Working is { } working)
            page.Append(CultureInfo.InvariantCulture, $">\n> {Figures(working)}\n");
        page.Append('\n');
    }

    private static string Figures(Working working) => "Figures: " + string.Join("; ", working.Inputs.Select(i => $"{Prose(i.Name)} {Prose(i.Value)}")) + ".";

    private static string WordsFor(Beside what, string of) => what switch
    {
        Beside.Meter => $"the instrument of {of}",
        Beside.Leads => $"the meter's leads at {of}",
        Beside.CableAt => $"the cable's temperature at {of}",
        _ => $"whether {of} was checked against the sheet",
    };

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..] + ".";

    private static string Prose(string text) => text.Replace("<", "&lt;", StringComparison.Ordinal).Replace("*", @"\*", StringComparison.Ordinal);
}
