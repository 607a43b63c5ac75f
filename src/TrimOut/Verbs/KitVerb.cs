using System.CommandLine;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Desks;

namespace TrimOut.Verbs;

/// <summary><c>trimout kit</c>, <c>kit-out</c>, <c>kit-in</c>: the parts of a house, kept as files and taken from them.</summary>
internal static class KitVerb
{
    /// <summary>Lists the parts.</summary>
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("kit", "List the parts of a house, a line each: sort, name, values, how many are blank, how many were not checked "
            + "against the sheet, and how many checks wait, with tabs between.") { path, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            var report = CheckReport.Of(house);
            foreach (var part in Parts(house))
            {
                // What is no part has no sheet, and so no values that could be blank.
                var facts = SheetValues.IsNoCover(house, part) ? [] : SheetValues.Of(part).ToHashSet();
                Common.Row(KebabCase.Of(part.Kind), house.NameOf(part), NumberText.Plain(facts.Count),
                    NumberText.Plain(SheetValues.BlankIn(part).Count(facts.Contains)), NumberText.Plain(SheetValues.NotHeldIn(part).Count(facts.Contains)),
                    NumberText.Plain(report.MissingOf(part).Count() + report.UnreadOf(part).Count()));
            }
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    /// <summary>Writes parts as files.</summary>
    public static Command BuildOut()
    {
        var path = Common.AnyHouse();
        var folder = Folder("Where the files go");
        var name = new Option<string?>("--part") { Description = "Only the parts of this name.", HelpName = "name" };
        var replace = new Option<bool>("--replace") { Description = "Also where a kept part was checked against its sheet and this one was not." };
        var verb = new Command("kit-out", "Keep the parts of a house as text, one part a file. A file that says something else is kept under another name.")
            { path, folder, name, replace, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            var found = Parts(house).Where(p => parsed.GetValue(name) is not { } only || Core.SameName.Comparer.Equals(house.NameOf(p), only))
                .ToLookup(BlankKit.IsWorthKeeping);
            if (found.Count == 0 && parsed.GetValue(name) is { } unknown)
                throw new VerbException(ExitCode.Usage, $"There is no part {unknown}. There are: {string.Join(", ", Parts(house).Select(house.NameOf))}.");
            var into = parsed.GetValue(folder)!;
            if (Path.Exists(into) && !Directory.Exists(into))
                throw new VerbException(ExitCode.CannotCreate, $"{into} is no folder. Parts are kept in one: name another with --kit.");
            var kept = new PartsKept(into);
            List<PartSheet> parts = [.. found[true].Select(p => PartSheet.Of(house, p))];
            if (!parsed.GetValue(replace) && parts.Where(kept.IsWeaker).Select(p => p.Name).ToList() is { Count: > 0 } weaker)
                throw new VerbException(ExitCode.CannotCreate, $"Nothing was kept. {into} has values of {string.Join(", ", weaker)} that were checked against "
                    + "the sheet; in this house they were not, or against none that is named. --replace keeps these all the same, and the others as older "
                    + "ones beside them.");
            foreach (var part in parts)
            {
                Console.Out.WriteLine(kept.Write(part));
                if (kept.Older is { } older)
                    Common.Say($"Another text of {part.Name} was there: kept as {older}.");
            }
            if (parts.Where(p => p.Values.All(v => !v.Held)).Select(p => p.Name).ToList() is { Count: > 0 } open)
                Common.Say($"Kept, though nobody checked a value of it: {string.Join(", ", open)}.");
            List<string> left = [.. found[false].Where(p => !SheetValues.IsNoCover(house, p)).Select(house.NameOf)];
            if (left.Count > 0)
                Common.Say($"Not kept, for no value is there: {string.Join(", ", left)}.");
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    /// <summary>Takes a part from its file.</summary>
    public static Command BuildIn()
    {
        var path = Common.House();
        var file = new Argument<string>("FILE") { Description = $"A part that was kept, {PartFolder.Ending}." };
        var dry = new Option<bool>("--try") { Description = "Show what would change, and save nothing." };
        var yes = new Option<bool>("--yes") { Description = "Also where a value that was checked against a sheet would no longer be." };
        var by = Common.By();
        var verb = new Command("kit-in", "Take a part from its file: says which values change and what the checks then say otherwise. One change, one undo.")
            { path, file, dry, yes, by, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var part = PartFolder.Read(parsed.GetRequiredValue(file))
                .OrEnd(Path.Exists(parsed.GetRequiredValue(file)) ? ExitCode.BadData : ExitCode.NoInput);
            // A try only looks: it needs no lock, and no house that can be written.
            var look = Look.By(parsed);
            if (parsed.GetValue(dry))
            {
                var looked = look.At(parsed.GetRequiredValue(path)).House;
                if (Say(looked, part, parsed.GetRequiredValue(file)) is null)
                    return look.End(ExitCode.Fine);
                Common.Say("Nothing was taken: this was a try." + (TakePart.LosesChecked(looked, part) is { IsEmpty: false } losing
                    ? $" To take it needs --yes, for these were checked against a sheet, and would no longer be: {Labels(losing)}." : ""));
                return look.End(ExitCode.Fine);
            }
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), parsed.GetValue(by)!);
            using (house)
            {
                if (Say(scribe.House, part, parsed.GetRequiredValue(file)) is not { } draft)
                    return ExitCode.Fine;
                if (!parsed.GetValue(yes) && TakePart.LosesChecked(scribe.House, part) is { IsEmpty: false } lost)
                    throw new VerbException(ExitCode.Usage, "Nothing was taken. These were checked against a sheet, and would no longer be: "
                        + $"{Labels(lost)}. --yes takes the part all the same.");
                Common.Say($"Saved: {scribe.Record(draft).OrEnd(ExitCode.Disk).What}.");
                return ExitCode.Fine;
            }
        });
        return verb;
    }

    private static string Labels(IEnumerable<Fact> facts) => string.Join(", ", facts.Select(f => f.Label));

    /// <summary>Says what a part changes in a house, and which findings come and go.</summary>
    /// <returns>The change; null where there is none.</returns>
    private static Core.History.Draft? Say(House house, PartSheet read, string file)
    {
        var part = read.Beside(house);
        foreach (var change in TakePart.AboutChanges(house, part).Concat(TakePart.Changes(house, part)))
            Common.Row(part.Name, change.Fact.Label, $"{change.Was}", $"{change.Becomes}");
        var inFolder = Path.GetDirectoryName(Path.GetFullPath(file)) == Path.GetFullPath(UserFolder.Kit);
        var draft = TakePart.Into(house, part, inFolder ? TakePart.FromFolder : $"the file {Path.GetFileName(file)}");
        if (!draft.Ok)
        {
            Common.Say(draft.Reason!);
            return null;
        }
        foreach (var fact in TakePart.NotInEdition(house, part))
            Common.Say($"{fact.Label}: {fact.ShowOf(part.In(house)!, house)} is not in this edition. It stays, and is not checked.");
        var notHeld = TakePart.TakenUnchecked(house, part).Length;
        if (notHeld > 0)
        {
            var says = part.About.ContainsKey(AboutSheet.HeldBy) && part.About.ContainsKey(AboutSheet.HeldOn);
            Common.Say($"{NumberText.Counted(notHeld, "value is", "values are")} taken as not checked against a sheet. "
                + (part.WhyNoneCounts is { } why ? why
                    : says ? "The file marks them so, with a ? before the name."
                    : $"A file says who checked its values and when: {AboutSheet.HeldBy}, {AboutSheet.HeldOn}."));
        }
        var held = part.Values.Count(v => v.Held && !(part.In(house) is { } now && SheetMark.Holds(now, v.Fact) && now.Latest(v.Fact)?.Stored == v.Stored
            && !TakePart.IsOtherEdition(part, now)));
        if (held > 0)
            Common.Say($"{NumberText.Counted(held, "value counts", "values count")} as checked, by {part.About.GetValueOrDefault(AboutSheet.HeldBy)} on "
                + $"{part.About.GetValueOrDefault(AboutSheet.HeldOn)}: the file says so.");
        var effect = TakePart.Effect(CheckReport.Of(house), draft.Value);
        foreach (var (becomes, _, said) in effect.Told)
            Common.Say($"{becomes}: {said}");
        Common.Say(effect.ToString());
        return draft.Value;
    }

    /// <summary>Says why no value of a part counts as checked, where its file says that they were.</summary>
    public static void SayIfNoneCounts(PartSheet part)
    {
        if (part.WhyNoneCounts is { } why)
            Common.Say(why);
    }

    /// <summary>The folder of the user's kit.</summary>
    public static Option<string> Folder(string what) => new("--kit")
    {
        Description = $"{what}; your own kit folder when left out.",
        HelpName = "folder",
        DefaultValueFactory = _ => UserFolder.Kit,
    };

    private static IEnumerable<Item> Parts(House house) => Enum.GetValues<ItemKind>().Where(FactTable.IsKit).SelectMany(house.ItemsOf);
}
