using TrimOut.Core.Plans.Photos;
using TrimOut.Desks;
using TrimOut.Papers.Tests.Photos;
using TrimOut.Screens.Photos;
using TrimOut.Testing;

namespace TrimOut.Tests.Desks;

/// <summary>What happens to the files: the stick is only read, and what it loses while it is read costs nothing that was there.</summary>
public sealed class PhotoDeskTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-photo-desk-").FullName;
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");

    private string House => Path.Combine(_folder, "elm.trimout");

    private string Put(string name, int seed = 1)
    {
        Directory.CreateDirectory(Path.Combine(_folder, "stick", "DCIM"));
        var file = Path.Combine(_folder, "stick", "DCIM", name);
        File.WriteAllBytes(file, CameraPhoto.Jpeg([], taken: new DateTime(2026, 3, 12, 14, 5, 0), seed: seed, wide: 120, high: 90));
        return file;
    }

    private IReadOnlyList<PhotoFile> Read() => PhotoDesk.Read(_job.Scribe.Log, House, Path.Combine(_folder, "stick"), _ => { }, default).Value.Files;

    private IReadOnlyList<Core.Result<string>> Copy(IReadOnlyList<PhotoFile> files, CancellationToken stop = default)
    {
        var plan = new PhotoPlan(_job.Scribe.Log);
        return PhotoDesk.Copy(_job.House, House, [.. files.Select(f => (f, plan.Place(f.Photo).Place!))], _ => { }, stop);
    }

    [Fact]
    public void APhotoThatGoesWithTheStickIsSaidAndTheOthersAreThere()
    {
        Put("W01 a.jpg", 1);
        var gone = Put("W01 b.jpg", 2);
        Put("W02.jpg", 3);
        var files = Read();
        File.Delete(gone);
        var came = Copy(files);
        Assert.Equal([true, false, true], came.Select(c => c.Ok));
        Assert.Contains("there is no such file", came[1].Reason, StringComparison.Ordinal);
        Assert.Equal(["W01 a.jpg", "W02.jpg"], Directory.GetFiles(Path.Combine(_folder, "elm-photos"))
            .Select(f => System.Text.RegularExpressions.Regex.Replace(Path.GetFileName(f), "-[0-9a-f]{10}[.]", ".")).Order());
    }

    [Fact]
    public void APhotoThatIsAnotherOneThanWasLookedAtIsNotCopied()
    {
        Put("W01.jpg", 1);
        var files = Read();
        Put("W01.jpg", 2);
        Assert.Contains("another picture", Copy(files)[0].Reason, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "elm-photos")));
    }

    [Fact]
    public void StoppedBetweenTwoPhotosTheOthersAreThere()
    {
        Put("W01.jpg", 1);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Contains("stopped", Copy(Read(), CancellationToken.None).Concat(Copy(Read(), stop.Token)).Last().Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void TheFolderOfTheHouseItselfIsNotTakenInAgain()
    {
        Put("W01.jpg", 1);
        Copy(Read());
        var all = PhotoDesk.Read(_job.Scribe.Log, House, _folder, _ => { }, default).Value.Files;
        Assert.Equal(["W01.jpg"], all.Select(f => f.Photo.Name));
        Assert.Equal([Path.Combine(_folder, "stick", "DCIM")], PhotoDesk.Folders(House, [Path.Combine(_folder, "stick")]).Select(f => f.Path)
            .Where(p => p.StartsWith(_folder, StringComparison.Ordinal)));
    }

    [Fact]
    public void OfAPictureThatIsThereTwiceTheCopyThatSaysWhereItBelongsIsTaken()
    {
        Put("IMG_0001.jpg");
        Put("W02 kitchen.jpg");
        var plan = new PhotoPlan(_job.Scribe.Log);
        Assert.Equal(["the same picture as W02 kitchen.jpg", "by W02 in its name"], Read().Select(f => plan.Place(f.Photo).Why));
    }

    [Fact]
    public void FoldersAreLookedIntoAndWhatIsPassedOverIsSaid()
    {
        var deep = Directory.CreateDirectory(Path.Combine(_folder, "stick", "a", "b", "c", "d", "e", "f")).FullName;
        File.Move(Put("W01.jpg"), Path.Combine(deep, "W01.jfif"));
        File.WriteAllText(Path.Combine(_folder, "stick", "W02.mp4"), "film");
        Directory.CreateSymbolicLink(Path.Combine(_folder, "stick", "loop"), Path.Combine(_folder, "stick"));
        var read = PhotoDesk.Read(_job.Scribe.Log, House, Path.Combine(_folder, "stick"), _ => { }, default).Value;
        Assert.Equal([("W02.mp4", "a film; only photos are taken in"), ("W01.jfif", null)], read.Files.Select(f => (f.Photo.Name, f.Photo.Unreadable)));
        Assert.Equal("loop is a link to another folder and was not followed: give that folder by its own path.", Assert.Single(read.Remarks));
        Directory.CreateDirectory(Path.Combine([deep, .. Enumerable.Range(0, 9).Select(n => $"{n}")]));
        Assert.Contains(PhotoDesk.Read(_job.Scribe.Log, House, Path.Combine(_folder, "stick"), _ => { }, default).Value.Remarks,
            r => r.Contains("lies too deep", StringComparison.Ordinal));
        Directory.Delete(Path.Combine(_folder, "stick", "loop"));
    }

    [Fact]
    public void PhotosOfOneNameAreTakenUntilTheirPathsFillTheDetail()
    {
        foreach (var n in Enumerable.Range(0, 20))
        {
            var folder = Directory.CreateDirectory(Path.Combine(_folder, "stick", $"{n:00}")).FullName;
            File.Move(Put("W01 a.jpg", n), Path.Combine(folder, "W01 a.jpg"));
        }
        File.Move(Put("W02.jpg", 99), Path.Combine(_folder, "stick", $"W02 {new string('x', 240)}.jpg"));
        var files = Read();
        var came = Copy(files);
        // In 240 characters: elm-photos/W01 a-0123456789.jpg has 31, and 3 stand between two.
        Assert.Equal(7, files.Zip(came).Count(c => c.Second.Ok && c.First.Photo.Name == "W01 a.jpg"));
        Assert.True(files.Zip(came).Single(c => c.First.Photo.Name.StartsWith("W02", StringComparison.Ordinal)).Second.Ok);
        Assert.Contains("no room for one more", came.First(c => !c.Ok).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void APictureIsReadForCellsAndOneThatIsNotThereSaysSo()
    {
        var picture = PhotoDesk.Picture(PhotoFiles.Of(House).Read(Put("W01.jpg"))).Value;
        Assert.Equal((120, 90, 120 * 90 * 3), (picture.Wide, picture.High, picture.Rgb.Length));
        Assert.Contains("no such file", PhotoDesk.Picture(PhotoFiles.Of(House).Read("none.jpg")).Reason, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
