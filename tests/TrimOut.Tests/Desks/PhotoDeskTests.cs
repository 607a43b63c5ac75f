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

    private IReadOnlyList<PhotoFile> Read() => PhotoDesk.Read(_job.House, House, Path.Combine(_folder, "stick"), _ => { }, default).Value.Files;

    private IReadOnlyList<Core.Result<string>> Copy(IReadOnlyList<PhotoFile> files, CancellationToken stop = default)
    {
        var plan = new PhotoPlan(_job.House);
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
        Assert.Equal(["W01 a.jpg", "W02.jpg"], Directory.GetFiles(Path.Combine(_folder, "elm-photos")).Select(Path.GetFileName).Order());
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
        var all = PhotoDesk.Read(_job.House, House, _folder, _ => { }, default).Value.Files;
        Assert.Equal(["W01.jpg"], all.Select(f => f.Photo.Name));
        Assert.Equal([Path.Combine(_folder, "stick", "DCIM")], PhotoDesk.Folders(House, [Path.Combine(_folder, "stick")]).Select(f => f.Path)
            .Where(p => p.StartsWith(_folder, StringComparison.Ordinal)));
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
