using TrimOut.HouseFile.Photos;

namespace TrimOut.HouseFile.Tests.Photos;

public sealed class PhotoFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-photo-folder-").FullName;

    private string House => Path.Combine(_folder, "elm street.trimout");

    private string In(string path) => Path.Combine(_folder, path);

    // SHA-256 of the bytes 1 2 3 begins with 039058c6f2 (FIPS 180-4, by sha256sum).
    private const string Print123 = "039058c6f2";

    [Fact]
    public void APhotoIsCopiedBesideTheHouseUnderItsNameAndItsPrint()
    {
        var folder = new PhotoFolder(House);
        Assert.Equal($"elm street-photos/W01 wall-{Print123}.jpg", folder.PathOf("/media/stick/W01 wall.jpg", PhotoFolder.Print([1, 2, 3])));
        Assert.Equal($"elm street-photos/W01 wall-{Print123}.jpg", folder.Keep("/media/stick/W01 wall.jpg", [1, 2, 3]).Value);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(In($"elm street-photos/W01 wall-{Print123}.jpg")));
        Assert.Single(Directory.GetFileSystemEntries(folder.Where));
    }

    [Fact]
    public void APhotoFromTheFolderOfAnotherLaptopKeepsItsName() =>
        Assert.Equal($"elm street-photos/W01-{Print123}.jpg", new PhotoFolder(House).Keep($"W01-{Print123}.jpg", [1, 2, 3]).Value);

    [Fact]
    public void AnotherPhotoOfThatNameGetsAnotherOneAndTheSameNone()
    {
        var folder = new PhotoFolder(House);
        var paths = new byte[][] { [1], [2], [1], [3] }.Select(b => folder.Keep("a.jpg", b).Value).ToList();
        Assert.Equal(paths[0], paths[2]);
        Assert.Equal(3, paths.Distinct().Count());
        Assert.Equal([2], File.ReadAllBytes(In(paths[1])));
    }

    [Fact]
    public void WhatIsNotedAndNotThereIsNeverReplacedByAnotherPhoto()
    {
        var (one, other) = (new PhotoFolder(House).Keep("a.jpg", [1]).Value, new PhotoFolder(House).Keep("a.jpg", [2]).Value);
        File.Delete(In(one));
        Assert.Equal(other, new PhotoFolder(House).Keep("a.jpg", [2]).Value);
        Assert.False(File.Exists(In(one)));
        Assert.Equal(one, new PhotoFolder(House).Keep("a.jpg", [1]).Value);
    }

    [Fact]
    public void WhatACopyLeftThatWasEndedMidwayIsCleared()
    {
        var folder = new PhotoFolder(House);
        folder.Keep("a.jpg", [1]);
        File.WriteAllBytes(In("elm street-photos/.ab12cd34.ef5.part"), [1, 2]);
        new PhotoFolder(House).Keep("b.jpg", [2]);
        Assert.Equal(2, Directory.GetFileSystemEntries(folder.Where).Length);
    }

    [Theory]
    [InlineData("a|b?.jpg", "a-b-")]
    [InlineData("e\u0301.jpg", "\u00e9")]
    [InlineData("CON.jpg", "house-CON")]
    [InlineData("\u202egpj.exe.jpg", "gpj.exe")]
    [InlineData("0123456789012345678901234567890123456789 and more.jpg", "0123456789012345678901234567890123456789")]
    public void ANameIsMadeOneThatIsShortAndOneEverywhere(string name, string kept) =>
        Assert.Equal($"elm street-photos/{kept}-{Print123}.jpg", new PhotoFolder(House).PathOf(name, PhotoFolder.Print([1, 2, 3])));

    [Fact]
    public void WhereItCanNotBeWrittenTheReasonIsSaidAndNothingIsLeft()
    {
        File.WriteAllText(In("elm street-photos"), "in the way");
        Assert.Contains("elm street-photos", new PhotoFolder(House).Keep("a.jpg", [1]).Reason, StringComparison.Ordinal);
        Assert.Equal("in the way", File.ReadAllText(In("elm street-photos")));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
