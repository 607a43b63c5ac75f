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
                Console.Out.WriteLine(string.Join('\t', KebabCase.Of(part.Kind), house.NameOf(part), NumberText.Plain(facts.Count),
                    NumberText.Plain(SheetValues.BlankIn(part).Count(facts.Contains)), NumberText.Plain(SheetValues.NotHeldIn(part).Count(facts.Contains)),
                    NumberText.Plain(report.MissingOf(part).Count())));
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
        var verb = new Command("kit-out", "Keep the parts of a house as text, one part a file. A file that says something else is kept under another name.")
            { path, folder, name, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            var found = Parts(house).Where(p => parsed.GetValue(name) is not { } only || Core.SameName.Comparer.Equals(house.NameOf(p), only))
                .ToLookup(BlankKit.IsMore);
            var into = parsed.GetValue(folder)!;
            if (Path.Exists(into) && !Directory.Exists(into))
                throw new VerbException(ExitCode.CannotCreate, $"{into} is no folder. Parts are kept in one: name another with --kit.");
            var kept = new PartsKept(into);
            foreach (var part in found[true].Select(p => PartSheet.Of(house, p)))
            {
                Console.Out.WriteLine(kept.Write(part).OrEnd(ExitCode.Disk));
                if (kept.Older is { } older)
                    Common.Say($"Another text of {part.Name} was there: kept as {older}.");
            }
            List<string> left = [.. found[false].Where(p => !SheetValues.IsNoCover(house, p)).Select(house.NameOf)];
            if (left.Count > 0)
                Common.Say($"Not kept, for nothing was read off a sheet: {string.Join(", ", left)}.");
            else if (found.Count == 0)
                Common.Say("There is no such part.");
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
        var by = Common.By();
        var verb = new Command("kit-in", "Take a part from its file: says which values change and what the checks then say otherwise. One change, one undo.")
            { path, file, dry, by };
        verb.SetAction(parsed =>
        {
            var part = PartFolder.Read(parsed.GetRequiredValue(file))
                .OrEnd(Path.Exists(parsed.GetRequiredValue(file)) ? ExitCode.BadData : ExitCode.NoInput);
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), parsed.GetValue(by)!);
            using (house)
            {
                foreach (var change in TakePart.AboutChanges(scribe.House, part).Concat(TakePart.Changes(scribe.House, part)))
                    Console.Out.WriteLine($"{part.Name}\t{change.Fact.Label}\t{change.Was}\t{change.Becomes}");
                var draft = TakePart.Into(scribe.House, part);
                if (!draft.Ok)
                {
                    Common.Say(draft.Reason!);
                    return ExitCode.Fine;
                }
                foreach (var fact in TakePart.NotInEdition(scribe.House, part))
                    Common.Say($"{fact.Label}: {fact.ShowOf(part.In(scribe.House)!, scribe.House)} is not in this edition. It stays, and is not checked.");
                var notHeld = TakePart.TakenUnchecked(scribe.House, part).Length;
                if (notHeld > 0)
                    Common.Say($"{NumberText.Counted(notHeld, "value is", "values are")} taken as not checked against a sheet. "
                        + $"A file says who checked its values and when: {AboutSheet.HeldBy}, {AboutSheet.HeldOn}.");
                var effect = TakePart.Effect(CheckReport.Of(scribe.House), draft.Value);
                foreach (var (said, finding) in effect.Come.Select(f => ("Then found", f))
                    .Concat(effect.Reopen.Select(f => ("Waived, and then open again", f))))
                    Common.Say($"{said}: {scribe.House.NameOf(finding.Subject)}: {finding.Found.Message.In(scribe.House)}");
                Common.Say(effect.ToString());
                Common.Say(parsed.GetValue(dry) ? "Nothing was taken: this was a try." : $"Saved: {scribe.Record(draft.Value).OrEnd(ExitCode.Disk).What}.");
                return ExitCode.Fine;
            }
        });
        return verb;
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
