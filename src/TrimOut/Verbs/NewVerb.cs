using System.CommandLine;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;

namespace TrimOut.Verbs;

/// <summary><c>trimout new</c>: begins a house file.</summary>
internal static class NewVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("PATH") { Description = "Where; .trimout is added when it is missing." };
        var name = new Option<string?>("--name") { Description = "What everybody calls this job; the file's name when left out." };
        var units = new Option<string>("--units")
        {
            Description = "What lengths are shown in, and what a bare number means.",
            DefaultValueFactory = _ => "inches",
            HelpName = "inches|mm",
        };
        units.CompletionSources.Add("inches", "mm");
        var kit = new Option<string?>("--kit")
        {
            Description = "Begin with the parts that are kept in this folder; a file that can't be read is named and left out.",
            HelpName = "folder",
        };
        var by = Common.By();
        var verb = new Command("new", "Begin a house file with a blank kit.") { path, name, units, kit, by };
        verb.SetAction(parsed =>
        {
            var file = NewFile.Of(parsed.GetRequiredValue(path)).OrEnd(ExitCode.Usage);
            if (Scribe.WhyNoTime(TimeProvider.System.GetLocalNow()) is { } noTime)
                throw new VerbException(ExitCode.Usage, noTime);
            var called = parsed.GetValue(name) ?? Path.GetFileNameWithoutExtension(file);
            if (parsed.GetValue(kit) is { } asked)
                PartFolder.EndIfClosed(asked);
            var found = parsed.GetValue(kit) is { } folder ? PartFolder.In(folder).ToLookup(p => p.Part.Ok) : null;
            List<string> unread = [.. found?[false].Select(p => p.Part.Reason!) ?? []];
            List<(string File, PartSheet Part)> files = [.. found?[true].Select(p => (p.File, p.Part.Value)) ?? []];
            if (files.GroupBy(f => f.Part.Kind)
                .SelectMany(k => k.GroupBy(f => f.Part.Name, SameName.Comparer)).FirstOrDefault(n => n.Skip(1).Any()) is { } twice)
            {
                throw new VerbException(ExitCode.Usage, $"Two files are one {KebabCase.Of(twice.First().Part.Kind).Replace('-', ' ')}, {twice.Key}: "
                    + $"{string.Join(" and ", twice.Select(t => Path.GetFileName(t.File) + (t.Part.Edition is { } e ? $" (edition {e})" : "")))}. "
                    + "Move all but one of them elsewhere.");
            }
            var parts = files.ConvertAll(f => f.Part);
            if (parts.Count == 0 && unread.Count > 0)
                throw new VerbException(ExitCode.BadData, $"No part in {parsed.GetValue(kit)} can be read.\n{string.Join('\n', unread)}");
            if (parts.Count == 0 && parsed.GetValue(kit) is { } none)
                throw new VerbException(ExitCode.NoInput, $"There is no part in {none}: no file that ends with {PartFolder.Ending}.");
            var shownIn = NewHouse.ReadUnits(parsed.GetValue(units)!).OrEnd(ExitCode.Usage);
            var begin = NewHouse.Begin(called, shownIn, parts).OrEnd(ExitCode.Usage);
            using var house = HouseOnDisk.Create(file, TimeProvider.System);
            var scribe = new Scribe(house, TimeProvider.System, parsed.GetValue(by)!);
            scribe.Record(begin).OrEnd(ExitCode.Disk);
            var blanks = SheetValues.Blanks(scribe.House);
            Common.Say($"Began {house.Where}.");
            unread.ForEach(why => Common.Say($"Not in it: {why}"));
            parts.ForEach(KitVerb.SayIfNoneCounts);
            if (NewHouse.LeftOut(shownIn, parts) is { IsEmpty: false } left)
                Common.Say($"Parts of a blank kit that it does not begin with, because the folder has others of their sort: {string.Join(", ", left)}.");
            if (blanks > 0)
                Common.Say($"Its kit has {NumberText.Plain(blanks)} blanks, to be read off the sheets of the parts in hand.");
            return unread.Count == 0 ? ExitCode.Fine : ExitCode.LeftOut;
        });
        return verb;
    }
}
