using TrimOut.Desks;
using TrimOut.Papers.Photos;

namespace TrimOut.Tests.Papers;

public sealed class PhotoFilesTests : IDisposable
{
    // The smallest GIF there is: one pixel (GIF89a).
    private static readonly byte[] Gif = Convert.FromBase64String("R0lGODlhAQABAIAAAAAAAP///ywAAAAAAQABAAACAUwAOw==");

    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-photos-").FullName;

    [Fact]
    public void APathBeginsBesideTheHouseFileWithEitherSignBetweenFolders()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "photos"));
        File.WriteAllBytes(Path.Combine(_folder, "photos", "a.gif"), Gif);
        File.WriteAllText(Path.Combine(_folder, "house.trimout"), "");
        foreach (var house in new[] { _folder, Path.Combine(_folder, "house.trimout") })
        {
            var photos = PhotoFiles.Of(house);
            Assert.Equal([PhotoState.Read, PhotoState.Read, PhotoState.Read],
                new[] { "photos/a.gif", "photos\\a.gif", Path.Combine(_folder, "photos", "a.gif") }.Select(p => photos.Read(p).State));
        }
    }

    [Fact]
    public void WhatCanNotBeReadIsSaidAndStopsNothing()
    {
        File.WriteAllText(Path.Combine(_folder, "a.jpg"), "no picture");
        using (var large = File.Create(Path.Combine(_folder, "large.jpg")))
            large.SetLength((64L << 20) + 1);
        var photos = PhotoFiles.Of(_folder);
        Assert.Equal(PhotoState.Missing, photos.Read("none.jpg").State);
        Assert.Equal(PhotoState.NoPicture, photos.Read("a.jpg").State);
        Assert.Equal(PhotoState.TooLarge, photos.Read("large.jpg").State);
        Assert.Equal(PhotoState.Unreadable, photos.Read(".").State);
        Assert.NotEqual(PhotoState.Read, photos.Read("\0").State);
        if (OperatingSystem.IsLinux())
            Assert.Equal(PhotoState.Unreadable, photos.Read("/dev/zero").State);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
