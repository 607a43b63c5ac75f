using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using SkiaSharp;
using TrimOut.Papers.Photos;

namespace TrimOut.Papers.Tests.Photos;

public class PhotoShrinkerTests
{
    // EXIF 2.32, tag 274: which edge of what is seen the stored row 0 and column 0 are. Stored are red, green / blue, white.
    [Theory]
    [InlineData(1, "RGBW")]
    [InlineData(2, "GRWB")]
    [InlineData(3, "WBGR")]
    [InlineData(4, "BWRG")]
    [InlineData(5, "RBGW")]
    [InlineData(6, "BRWG")]
    [InlineData(7, "WGBR")]
    [InlineData(8, "GWRB")]
    public void APictureIsTurnedAsItsCameraWasHeld(int orientation, string seen)
    {
        var photo = PhotoShrinker.Read(TestPhoto.Jpeg(orientation: orientation));
        Assert.Equal((PhotoState.Read, seen), (photo.State, TestPhoto.Quarters(photo.Jpeg)));
        Assert.Equal(orientation >= 5 ? (300, 400) : (400, 300), (photo.Wide, photo.High));
    }

    [Fact]
    public void ItIsSmallAndSaysNothingOfWhereItWasTaken()
    {
        var file = TestPhoto.Jpeg(3000, 2000, orientation: 6);
        Assert.NotEmpty(ImageMetadataReader.ReadMetadata(new MemoryStream(file)).OfType<GpsDirectory>());
        var photo = PhotoShrinker.Read(file);
        Assert.Equal((480, 720), (photo.Wide, photo.High));
        Assert.True(photo.Jpeg.Length < 150_000);
        Assert.Empty(ImageMetadataReader.ReadMetadata(new MemoryStream(photo.Jpeg.ToArray())).OfType<ExifDirectoryBase>());
    }

    [Theory]
    [InlineData("2026:03:12 10:20:30", "2026-03-12")]
    [InlineData("0000:00:00 00:00:00", null)]
    [InlineData("not a day at all   ", null)]
    public void ItsDayIsThatOfTheCamera(string taken, string? day) =>
        Assert.Equal(day, PhotoShrinker.Read(TestPhoto.Jpeg(orientation: 1, taken: taken)).TakenOn?.ToString("yyyy-MM-dd"));

    [Fact]
    public void APictureWithoutMetadataHasNoDay() => Assert.Null(PhotoShrinker.Read(TestPhoto.Jpeg()).TakenOn);

    [Fact]
    public void WhatIsNoPictureIsNamedSo()
    {
        Assert.Equal(PhotoState.NoPicture, PhotoShrinker.Read(Array.Empty<byte>()).State);
        Assert.Equal(PhotoState.NoPicture, PhotoShrinker.Read("MZ and some text"u8.ToArray()).State);
        Assert.Equal(PhotoState.NoPicture, PhotoShrinker.Read("<svg xmlns='http://www.w3.org/2000/svg'/>"u8.ToArray()).State);
    }

    [Fact]
    public void ATruncatedPictureIsDamaged()
    {
        var file = TestPhoto.Jpeg(orientation: 1);
        Assert.Equal(PhotoState.Damaged, PhotoShrinker.Read(file.AsMemory(0, file.Length / 2)).State);
    }

    [Fact]
    public void NoCutAndNoFlippedByteMakesItThrow()
    {
        var file = TestPhoto.Jpeg(64, 48, orientation: 6);
        for (var at = 0; at < file.Length; at += 3)
        {
            _ = PhotoShrinker.Read(file.AsMemory(0, at));
            var other = (byte[])file.Clone();
            other[at] ^= 0xff;
            _ = PhotoShrinker.Read(other);
        }
    }

    [Fact]
    public void APngThatSaysItIsHugeIsRefusedBeforeMemoryIsTaken()
    {
        var png = Png();
        // Width and height stand behind the 16 bytes of signature, length and name of the first chunk (PNG, ISO/IEC 15948, 11.2.2).
        foreach (var side in (byte[][])[[0, 0, 0x80, 0], [0, 1, 0, 0]])
        {
            side.CopyTo(png, 16);
            side.CopyTo(png, 20);
            Crc(png.AsSpan(12, 17)).CopyTo(png, 29);
            var before = GC.GetTotalAllocatedBytes(precise: true);
            Assert.Contains(PhotoShrinker.Read(png).State, new[] { PhotoState.TooLarge, PhotoState.NoPicture });
            Assert.True(GC.GetTotalAllocatedBytes(precise: true) - before < 10_000_000);
        }
    }

    private static byte[] Png()
    {
        using var bitmap = new SKBitmap(8, 8);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static byte[] Crc(ReadOnlySpan<byte> of)
    {
        var crc = 0xffffffffu;
        foreach (var one in of)
        {
            crc ^= one;
            for (var bit = 0; bit < 8; bit++)
                crc = (crc & 1) == 1 ? (crc >> 1) ^ 0xedb88320u : crc >> 1;
        }
        crc = ~crc;
        return unchecked([(byte)(crc >> 24), (byte)(crc >> 16), (byte)(crc >> 8), (byte)crc]);
    }
}
