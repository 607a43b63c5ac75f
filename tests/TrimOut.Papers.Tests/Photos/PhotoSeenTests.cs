using System.Xml.Linq;
using TrimOut.Core.Plans.Photos;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Photos;

namespace TrimOut.Papers.Tests.Photos;

/// <summary>Labels are taken from the label sheet as it is printed, and photographed askew, in uneven light, with noise.</summary>
public class PhotoSeenTests
{
    private static readonly DateTime At = new(2026, 3, 12, 14, 5, 30);

    /// <summary>The codes of the label sheet of a house with W01, W02A and W02B: two labels each.</summary>
    private static readonly string[] Codes = [.. LabelSheet.Paper.Write(FinishedHouse.Data()).Drawings.Values
        .SelectMany(svg => XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "path").Select(e => e.Attribute("d")!.Value))];

    [Theory]
    [InlineData(0, 8f, 10f, "W01")]
    [InlineData(0, 8f, -10f, "W01")]
    [InlineData(3, 8f, 100f, "W02A")]
    [InlineData(5, 20f, 190f, "W02B")]
    [InlineData(2, 4.5f, 10f, "W02A")]
    public void ALabelInAPhotoIsRead(int code, float field, float degrees, string tag)
    {
        var seen = PhotoSeen.In(CameraPhoto.Jpeg([Codes[code]], field, degrees, At));
        Assert.Equal((PhotoState.Read, At, (TimeSpan?)null), (seen.State, seen.Taken, seen.FromUtc));
        Assert.Equal(new SeenLabel(tag, HouseMark.Of(FinishedHouse.Data().Log)), Assert.Single(seen.Labels));
    }

    [Fact]
    public void TwoLabelsInAPhotoAreBothSeen() =>
        Assert.Equal(["W01", "W02B"], PhotoSeen.In(CameraPhoto.Jpeg([Codes[0], Codes[4]])).Labels.Select(l => l.Tag).Order(StringComparer.Ordinal));

    [Fact]
    public void TheLabelsOfBothEndsOfOneCableAreOneTag() => Assert.Equal("W01",
        Assert.Single(PhotoSeen.In(CameraPhoto.Jpeg([Codes[0], Codes[1]])).Labels).Tag);

    [Fact]
    public void ABareWallHasNoLabelAndAPictureWithoutExifNoTime()
    {
        var seen = PhotoSeen.In(CameraPhoto.Jpeg([]));
        Assert.Equal((PhotoState.Read, null, 0), (seen.State, seen.Taken, seen.Labels.Length));
    }

    [Theory]
    [InlineData("+02:00", 120)]
    [InlineData("-03:30", -210)]
    [InlineData("99:99 ", null)]
    [InlineData("+25:00", null)]
    public void HowFarTheCamerasClockIsFromUtcIsReadWhereItIsSaidRightly(string offset, int? minutes) => Assert.Equal(
        minutes is { } away ? TimeSpan.FromMinutes(away) : null, PhotoSeen.In(CameraPhoto.Jpeg([], taken: At, offset: offset, wide: 80, high: 60)).FromUtc);

    [Fact]
    public void WhatIsNoPictureIsSaidAndNothingIsReadOfIt()
    {
        Assert.Equal(PhotoState.NoPicture, PhotoSeen.In("no picture"u8.ToArray()).State);
        Assert.Equal(PhotoState.Damaged, PhotoSeen.In(CameraPhoto.Jpeg([], wide: 80, high: 60).AsMemory()[..^400]).State);
    }

    [Theory]
    [InlineData("W01;window;P1-W01", "W01", null)]
    [InlineData("A;B;panel;x", "A;B", null)]
    [InlineData("W01;window;P1;2;~7kq0", "W01", "7kq0")]
    [InlineData("W01;window;P1 ~7kq0", "W01", null)]
    [InlineData("W01;roof;x", null, null)]
    [InlineData("https://example.org", null, null)]
    public void OnlyACableLabelHasATagAndOneOfAnEarlierEditionNoHouse(string code, string? tag, string? house) =>
        Assert.Equal(tag is null ? null : new SeenLabel(tag, house), CableEnd.Read(code));

    [Fact]
    public void ThePixelsForAScreenAreUprightAndInTheirColours()
    {
        var (wide, high, rgb) = PhotoPixels.Of(PhotoShrinker.Read(TestPhoto.Jpeg(orientation: 6)))!.Value;
        Assert.True(high > wide && high <= PhotoPixels.LongerSide);
        Assert.Equal(wide * high * 3, rgb.Length);
        // Red is stored at the top left, and a picture that is turned by a quarter has it at the top right (EXIF, orientation 6).
        var at = 3 * (high / 4 * wide + 3 * wide / 4);
        Assert.True(rgb[at] > 150 && rgb[at + 1] < 80 && rgb[at + 2] < 80, $"{rgb[at]}, {rgb[at + 1]}, {rgb[at + 2]}");
        Assert.Null(PhotoPixels.Of(Photo.Not(PhotoState.Missing)));
    }
}
