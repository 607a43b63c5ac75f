using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Plans.Photos;
using TrimOut.Desks;
using TrimOut.Screens.Photos;

namespace TrimOut.Verbs;

/// <summary><c>trimout photos</c>: photos taken in from a folder, or a list of those that a house has.</summary>
internal static class PhotosVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var folder = new Argument<string?>("FOLDER")
        {
            Description = "A folder or a stick with photos, or one photo; left out, the photos that the house has are listed.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var byTime = new Option<bool>("--by-time") { Description = "Also take in photos that only their time places; else they are listed and left." };
        var of = new Option<string[]>("--of")
        {
            Description = "What a photo is of, such as IMG_12.jpg=W03, or IMG_12.jpg=\"W03 wall\".",
            HelpName = "name=tag",
        };
        var dry = new Option<bool>("--try") { Description = "Only show where each photo would go." };
        var by = Common.By();
        var verb = new Command("photos",
            "Copy photos beside a house file and note each at its unit, by a label seen in it or by a tag in its name; a step that asks for one is marked. "
                + "A line each with tabs between: taken, offered or left; photo, tag, what it shows, why. "
                + "Ends with 2 when one could not be placed, or a folder was not looked into.")
            { path, folder, byTime, of, dry, by, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var house = parsed.GetRequiredValue(path);
            if (parsed.GetValue(folder) is not { } from)
                return List(Look.By(parsed), house);
            var said = (parsed.GetValue(of) ?? []).Select(ReadOf).ToList();
            var (store, scribe) = HouseSource.Open(house, parsed.GetValue(by)!);
            using (store)
                return TakeIn(scribe, Path.GetFullPath(from), said, parsed.GetValue(byTime), parsed.GetValue(dry));
        });
        return verb;
    }

    private static int List(Look look, string path)
    {
        var log = look.At(path);
        var files = PhotoFiles.Of(path);
        foreach (var photo in HousePhotos.Of(log.House))
        {
            var noted = photo.NotedIn(log);
            Common.Row(photo.Of, photo.Shows, photo.Path, files.Has(photo.Path) ? "there" : "missing", noted.By,
                noted.SaidAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));
        }
        return look.End(ExitCode.Fine);
    }

    private static int TakeIn(Scribe scribe, string folder, List<(string Name, string Tag)> said, bool byTime, bool dry)
    {
        using var stop = new CancellationTokenSource();
        var where = scribe.Store.Where;
        var read = PhotoDesk.Read(scribe.Log, where, folder, _ => { }, stop.Token).OrEnd(ExitCode.NoInput);
        if (said.Select(s => s.Name).FirstOrDefault(n => read.Files.All(f => f.Photo.Name != n)) is { } none)
            throw new VerbException(ExitCode.Usage, $"--of {none}: there is no such photo in {folder}.");
        var plan = new PhotoPlan(scribe.Log, scribe.Steps);
        var placed = read.Files.Select(f => (File: f, Placement: said.FirstOrDefault(s => s.Name == f.Photo.Name) is { Tag: { } tag }
            ? plan.Place(f.Photo, tag).OrEnd(ExitCode.Usage) : plan.Place(f.Photo))).ToList();
        var chosen = placed.Where(p => p.Placement.IsSure || (byTime && p.Placement is { Place: not null, By: PlacedBy.Time, IsDoubtful: false })).ToList();
        var came = dry ? [.. chosen.Select(_ => (Result<string>)"")]
            : PhotoDesk.Copy(scribe.House, where, [.. chosen.Select(c => (c.File, c.Placement.Place!))], _ => { }, stop.Token);
        var noted = chosen.Zip(came).Where(c => c.Second.Ok).Select(c => (c.First.Placement.Place!, c.Second.Value)).ToList();
        var change = dry || noted.Count == 0 ? null
            : scribe.Record(TakePhotos
                .Draft(scribe.House, CheckReport.Of(scribe.House, scribe.Steps), scribe.Steps, noted).OrEnd(ExitCode.Fault)).OrEnd(ExitCode.Disk);
        var fates = chosen.Zip(came).ToDictionary(c => c.First.File.Path, c => c.Second, StringComparer.Ordinal);
        foreach (var (file, placement) in placed)
            Say(file, placement, fates.TryGetValue(file.Path, out var fate) ? (Result<string>?)fate : null);
        if (read.Files.Count == 0)
            Common.Say($"There are no photos in {folder}.");
        foreach (var remark in read.Remarks)
            Common.Say(remark);
        Common.Say(dry ? "Nothing was taken in: this was a try." : change is null ? "Nothing was taken in." : $"Saved: {change.What}.");
        return placed.Count == noted.Count && read.Remarks.IsEmpty ? ExitCode.Fine : ExitCode.LeftOut;
    }

    private static void Say(PhotoFile file, PhotoPlacement placement, Result<string>? fate) => Common.Row(
        fate is { Ok: true } ? "taken" : placement.Place is not null && fate is null ? "offered" : "left", file.Photo.Name, placement.Place?.Of.Name ?? "",
        placement.Place?.Shows ?? "", fate is { Ok: false } failed ? failed.Reason! : placement.Why);

    private static (string Name, string Tag) ReadOf(string typed)
    {
        var at = typed.LastIndexOf('=');
        return at > 0 && at < typed.Length - 1 ? (typed[..at], typed[(at + 1)..])
            : throw new VerbException(ExitCode.Usage, $"--of {typed}: write it as name=tag, such as IMG_12.jpg=W03.");
    }
}
