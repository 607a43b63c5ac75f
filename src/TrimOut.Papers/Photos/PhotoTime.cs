using System.Globalization;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;

namespace TrimOut.Papers.Photos;

/// <summary>When a picture was taken, by its EXIF (CIPA DC-008: tags 36867 and 36881).</summary>
internal static class PhotoTime
{
    private const int OffsetOfOriginal = 0x9011;

    /// <summary>The time by the camera's clock, and how far that was from UTC; nothing where the file says it wrongly, or not at all.</summary>
    public static (DateTime? Taken, TimeSpan? FromUtc) Of(ReadOnlyMemory<byte> file)
    {
        try
        {
            using var stream = new MemoryStream(file.ToArray(), writable: false);
            foreach (var directory in ImageMetadataReader.ReadMetadata(stream).OfType<ExifSubIfdDirectory>())
            {
                if (directory.TryGetDateTime(ExifDirectoryBase.TagDateTimeOriginal, out var taken))
                    return (DateTime.SpecifyKind(taken, DateTimeKind.Unspecified), Offset(directory.GetString(OffsetOfOriginal)));
            }
        }
        catch (Exception wrong) when (wrong is ImageProcessingException or IOException or MetadataException or ArgumentException or OverflowException)
        {
            // Metadata of a hostile or broken file: the picture itself was read, its time is not known.
        }
        return (null, null);
    }

    /// <summary>An offset as EXIF writes it, such as +02:00.</summary>
    private static TimeSpan? Offset(string? written) => written?.Trim('\0', ' ') is [('+' or '-') and var sign, .. var rest]
        && TimeSpan.TryParseExact(rest, @"hh\:mm", CultureInfo.InvariantCulture, out var away) && away <= TimeSpan.FromHours(14)
        ? sign == '-' ? -away : away : null;
}
