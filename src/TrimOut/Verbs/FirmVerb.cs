using System.CommandLine;
using System.Globalization;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.Desks.Firm;
using TrimOut.HouseFile;
using TrimOut.Screens.Firm;

namespace TrimOut.Verbs;

/// <summary><c>trimout firm</c>: all houses of folders, by the summaries that are kept of them.</summary>
internal static class FirmVerb
{
    public static Command Build()
    {
        var places = Places();
        var day = new Option<string?>("--date") { Description = "The day on which they are looked at; today when left out.", HelpName = "yyyy-mm-dd" };
        var list = new Option<string?>("--list")
        {
            Description = $"Only what one list says, a line each: {string.Join(", ", FirmList.All.Skip(1).Select(l => l.Id))}.",
            HelpName = "list",
        };
        var kept = new Option<bool>("--kept") { Description = "Open no house: what changed since its summary was made is shown as it was, and marked stale." };
        var verb = new Command("firm",
            "List all houses of folders, a line each with tabs between: house, file, name, stops, units finished, units, steps done of all by phase, what is "
                + "next, who waits for whom, and stale where it changed since. With --list: the list, file, name, what. A summary of each house is kept beside "
                + "its file and made again when the house changed; a house that can't be opened is named on standard error, and the others go on.")
        { places, day, list, kept };
        verb.SetAction(parsed =>
        {
            var today = PaperVerb.Day(parsed.GetValue(day));
            var chosen = parsed.GetValue(list) is not { } named ? null : FirmList.All.FirstOrDefault(l => l.Id == named)
                ?? throw new VerbException(ExitCode.Usage, $"There is no list \"{named}\". Choose: {string.Join(", ", FirmList.All.Select(l => l.Id))}.");
            var (rows, ends) = Rows(parsed.GetValue(places), parsed.GetValue(kept));
            var firm = FirmVisits.Of(rows.Select(r => r.Summary).OfType<HouseSummary>());
            foreach (var row in rows)
            {
                if (row.Summary is not { } house)
                    continue;
                if (chosen is null || chosen == FirmList.Everything)
                {
                    Say("house", row.Path, row.Name, NumberText.Plain(house.Stops), NumberText.Plain(house.Finished), NumberText.Plain(house.Units),
                        string.Join(' ', house.Phases.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Done}/{p.Total}"))),
                        FirmWords.Next(house, today), string.Join(", ", house.HeadOn(today).Waiting.Select(FirmWords.Waiting)),
                        row.Stale || row.Why is not null ? "stale" : "");
                    continue;
                }
                foreach (var what in chosen.Of(house, today, firm))
                    Say(chosen.Id, row.Path, row.Name, what);
            }
            return ends;
        });
        return verb;
    }

    /// <summary>Which houses are meant; the user's own folder where nothing is said.</summary>
    internal static Argument<string[]> Places() => new("FOLDER")
    {
        Description = "Folders with house files, or house files; left out: your own folder of houses.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>The house files that are meant.</summary>
    internal static IReadOnlyList<string> Meant(string[]? named)
    {
        foreach (var place in named ?? [])
        {
            if (Directory.Exists(place))
            {
                // One that was named and may not be looked into is no folder without houses.
                _ = Directory.EnumerateFileSystemEntries(place).Any();
                continue;
            }
            if (!File.Exists(place))
                throw new VerbException(ExitCode.NoInput, $"{place}: there is no such folder or house file.");
            // What was named itself, and is no file that can be read, is refused; what only lies in a folder keeps none of the others back.
            _ = HouseStamp.Of(place);
        }
        var found = FirmHouses.Find(named is { Length: > 0 } ? named : [UserFolder.Houses]);
        if (found.Count == 0)
            Common.Say($"There is no house in {string.Join(", ", named is { Length: > 0 } ? named : [UserFolder.Houses])} yet.");
        return found;
    }

    /// <summary>The rows of houses; those that can't be opened are named on standard error.</summary>
    internal static (IReadOnlyList<FirmRow> Rows, int Ends) Rows(string[]? named, bool kept)
    {
        var rows = FirmHouses.Kept(Meant(named));
        var stale = rows.Count(r => r.Stale);
        if (stale > 0)
            Common.Say($"{NumberText.Counted(stale, "house")} {(kept ? "changed since the summary was made" : "to be read")}.");
        for (var at = 0; !kept && at < rows.Length; at++)
        {
            if (rows[at].Stale)
                rows[at] = FirmHouses.MakeAnew(rows[at].Path);
        }
        foreach (var closed in rows.Where(r => r.Why is not null))
            Common.Say(closed.Why!.Contains(closed.Path, StringComparison.Ordinal) ? closed.Why : $"{closed.Path}: {closed.Why}");
        foreach (var unread in rows.Where(r => r.Summary is null && r.Why is null))
            Common.Say($"{unread.Path}: nothing is kept of it, so it is not in the list. Without --kept it is read.");
        var once = FirmHouses.Once(rows);
        foreach (var row in once)
        {
            foreach (var copy in row.Copies)
                Common.Say($"{copy}: a copy of {row.Path}, which has as many changes or more; counted once.");
        }
        foreach (var (path, remark) in rows.SelectMany(r => r.Remarks.Select(m => (r.Path, m))))
            Common.Say(remark.Contains(path, StringComparison.Ordinal) ? remark : $"{path}: {remark}");
        return (once, rows.Any(r => r.Why is not null || r.InDoubt || (r.Summary is null && kept)) ? ExitCode.LeftOut : ExitCode.Fine);
    }

    private static void Say(params string[] cells) => Console.Out.WriteLine(string.Join('\t', cells));
}
