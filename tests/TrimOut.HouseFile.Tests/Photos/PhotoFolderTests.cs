using TrimOut.HouseFile.Photos;

namespace TrimOut.HouseFile.Tests.Photos;

public sealed class PhotoFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-photo-folder-").FullName;

    private string House => Path.Combine(_folder, "elm street.trimout");

    private string In(string path) => Path.Combine(_folder, path);

    [Fact]
    public void APhotoIsCopiedBesideTheHouseUnderItsName()
    {
        var folder = new PhotoFolder(House);
        Assert.Equal("elm street-photos/W01 wall.jpg", folder.PathOf("/media/stick/W01 wall.jpg"));
        Assert.Equal("elm street-photos/W01 wall.jpg", folder.Keep("/media/stick/W01 wall.jpg", [1, 2, 3]).Value);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(In("elm street-photos/W01 wall.jpg")));
        Assert.Single(Directory.GetFileSystemEntries(folder.Where));
    }

    [Fact]
    public void AnotherPhotoOfThatNameGetsAnotherOneAndTheSameNone()
    {
        var folder = new PhotoFolder(House);
        Assert.Equal(["elm street-photos/a.jpg", "elm street-photos/a-2.jpg", "elm street-photos/a.jpg", "elm street-photos/a-3.jpg"],
            new byte[][] { [1], [2], [1], [3] }.Select(b => folder.Keep("a.jpg", b).Value));
        Assert.Equal([1], File.ReadAllBytes(In("elm street-photos/a.jpg")));
    }

    [Theory]
    [InlineData("a|b?.jpg", "a-b-.jpg")]
    [InlineData("e\u0301.jpg", "\u00e9.jpg")]
    [InlineData("CON.jpg", "house-CON.jpg")]
    [InlineData("\u202egpj.exe.jpg", "gpj.exe.jpg")]
    public void ANameIsMadeOneThatIsOneEverywhere(string name, string kept) => Assert.Equal($"elm street-photos/{kept}", new PhotoFolder(House).PathOf(name));

    [Fact]
    public void WhereItCanNotBeWrittenTheReasonIsSaidAndNothingIsLeft()
    {
        File.WriteAllText(In("elm street-photos"), "in the way");
        Assert.Contains("elm street-photos", new PhotoFolder(House).Keep("a.jpg", [1]).Reason, StringComparison.Ordinal);
        Assert.Equal("in the way", File.ReadAllText(In("elm street-photos")));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
