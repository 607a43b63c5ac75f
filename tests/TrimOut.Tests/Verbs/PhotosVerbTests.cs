using System.Xml.Linq;
using TrimOut.Papers.Tests.Photos;

namespace TrimOut.Tests.Verbs;

/// <summary>A stick with photos, from the label that the program prints to the note in the house.</summary>
public sealed class PhotosVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public PhotosVerbTests()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "Mark,Room,Size\nW01,Den,4050\nW02,Den,2668\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        Directory.CreateDirectory(_run.In("stick"));
    }

    public void Dispose() => _run.Dispose();

    private byte[] Put(string name, int seed, string? code = null)
    {
        var photo = code is null ? CameraPhoto.Jpeg([], taken: new DateTime(2026, 3, 12, 14, 5, 0), seed: seed, wide: 120, high: 90)
            : CameraPhoto.Jpeg([code], seed: seed);
        File.WriteAllBytes(_run.In($"stick/{name}"), photo);
        return photo;
    }

    private string LabelOf(string tag)
    {
        Assert.Equal(0, _run.Run("paper", "elm.trimout", "labels", "--out", "labels", "--overwrite").Code);
        var codes = Directory.GetFiles(_run.In("labels"), "*.svg", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .SelectMany(f => XDocument.Load(f).Descendants().Where(e => e.Name.LocalName == "path").Select(e => e.Attribute("d")!.Value)).ToList();
        return codes[tag == "W01" ? 0 : 2];
    }

    private int Changes() => _run.Run("history", "elm.trimout").Output.Split('\n').Length - 1;

    [Fact]
    public void PhotosAreCopiedAndNotedAsOneChangeAndWhatIsNotPlacedIsListed()
    {
        var (wall, before) = (Put("w01 wall.jpg", 1), Changes());
        Put("IMG_7.jpg", 2, LabelOf("W02"));
        Put("IMG_8.jpg", 3);
        var ended = _run.Run("photos", "elm.trimout", "stick");
        Assert.Equal(2, ended.Code);
        Assert.Equal("taken\tIMG_7.jpg\tW02\tWalk-through, the unit\tby its label\n"
            + "left\tIMG_8.jpg\t\t\tno tag or label in it, and no step of one unit was marked within 2 hours of its time, 2026-03-12 14:05\n"
            + "taken\tw01 wall.jpg\tW01\tOpen wall photographed\tby W01 in its name, \"wall\"\n", ended.Output.ReplaceLineEndings("\n"));
        Assert.Contains("2 photos taken in, of W02, W01", ended.Error, StringComparison.Ordinal);
        Assert.Equal(before + 1, Changes());
        Assert.Equal(wall, File.ReadAllBytes(Directory.GetFiles(_run.In("elm-photos"), "w01 wall-*.jpg").Single()));
        Assert.Equal(wall, File.ReadAllBytes(_run.In("stick/w01 wall.jpg")));
        var list = _run.Run("photos", "elm.trimout").Output;
        Assert.Matches("W01\tthe open wall\telm-photos/w01 wall-[0-9a-f]{10}[.]jpg\tthere\t", list);
        Assert.Matches("W02\tthe unit\telm-photos/IMG_7-[0-9a-f]{10}[.]jpg\tthere\t", list);
    }

    [Fact]
    public void TheSamePhotosAgainChangeNothingAndAreSaid()
    {
        Put("W01.jpg", 1);
        File.Copy(_run.In("stick/W01.jpg"), _run.In("stick/copy of W01.jpg"));
        Assert.Equal(2, _run.Run("photos", "elm.trimout", "stick").Code);
        var changes = Changes();
        var again = _run.Run("photos", "elm.trimout", "stick");
        Assert.Equal(2, again.Code);
        Assert.Contains("the same picture was taken in before, as elm-photos/", again.Output, StringComparison.Ordinal);
        Assert.Equal(changes, Changes());
        Assert.Single(Directory.GetFiles(_run.In("elm-photos")));
    }

    [Fact]
    public void APhotoIsPlacedByWhatIsSaidOfIt()
    {
        Put("IMG_8.jpg", 3);
        var ended = _run.Run("photos", "elm.trimout", "stick", "--of", "IMG_8.jpg=W02 wall");
        Assert.Equal((0, "taken\tIMG_8.jpg\tW02\tOpen wall photographed\tas you said\n"), (ended.Code, ended.Output.ReplaceLineEndings("\n")));
        Assert.Equal(64, _run.Run("photos", "elm.trimout", "stick", "--of", "IMG_9.jpg=W02").Code);
        Assert.Equal(64, _run.Run("photos", "elm.trimout", "stick", "--of", "IMG_8.jpg").Code);
        Assert.Equal(64, _run.Run("photos", "elm.trimout", "stick", "--of", "IMG_8.jpg=W99").Code);
    }

    /// <summary>Two laptops take in a photo each, of one name; once their copies are merged each path is of one photo.</summary>
    [Fact]
    public void TwoCopiesNeverNoteTwoPhotosByOnePath()
    {
        Directory.CreateDirectory(_run.In("b"));
        File.Copy(_run.In("elm.trimout"), _run.In("b/elm.trimout"));
        Put("W01.jpg", 1);
        Assert.Equal(0, _run.Run("photos", "elm.trimout", "stick").Code);
        Put("W01.jpg", 2);
        Assert.Equal(0, _run.Run("photos", "b/elm.trimout", "stick").Code);
        Assert.NotEqual(NameIn("elm-photos"), NameIn("b/elm-photos"));

        string NameIn(string folder) => Path.GetFileName(Directory.GetFiles(_run.In(folder)).Single());
    }

    [Fact]
    public void ANameWithALineEndForgesNoRow()
    {
        if (OperatingSystem.IsWindows())
            return;
        Put("x\ntaken\tW01.jpg\tW01.jpg", 1);
        var ended = _run.Run("photos", "elm.trimout", "stick", "--try");
        Assert.Single(ended.Output.TrimEnd().Split('\n'));
        Assert.Contains("x<U+000A>taken<U+0009>W01.jpg", ended.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void ATryCopiesNothing()
    {
        Put("W01.jpg", 1);
        var before = Changes();
        Assert.Equal(0, _run.Run("photos", "elm.trimout", "stick", "--try").Code);
        Assert.Equal(before, Changes());
        Assert.False(Directory.Exists(_run.In("elm-photos")));
    }

    [Fact]
    public void WhatIsNoFolderEndsWithNoInput() => Assert.Equal(66, _run.Run("photos", "elm.trimout", "nowhere").Code);

    [Fact]
    public void WhatIsNoPictureIsListed()
    {
        File.WriteAllText(_run.In("stick/W01.jpg"), "no picture");
        File.WriteAllText(_run.In("stick/W02.heic"), "x");
        File.WriteAllText(_run.In("stick/notes.txt"), "x");
        var ended = _run.Run("photos", "elm.trimout", "stick");
        Assert.Equal(2, ended.Code);
        Assert.Equal("left\tW01.jpg\t\t\tthe file is no picture of a known kind\n"
            + "left\tW02.heic\t\t\ta kind of picture that can't be read here; have the phone save JPEG\n", ended.Output.ReplaceLineEndings("\n"));
    }
}
