using System.Collections.Immutable;
using TrimOut.Core.Plans.Photos;

namespace TrimOut.Papers.Photos;

/// <summary>What a picture says of itself: when it was taken, and which labels are seen in it.</summary>
/// <param name="State">What came of reading it.</param>
/// <param name="Taken">When it was taken, by the camera's clock; null where the file does not say.</param>
/// <param name="FromUtc">How far that clock was from UTC; null where the file does not say.</param>
/// <param name="Labels">The cable labels whose code can be read in it, each once.</param>
public sealed record PhotoSeen(PhotoState State, DateTime? Taken, TimeSpan? FromUtc, ImmutableArray<SeenLabel> Labels)
{
    // A label held up to the camera is read in a small picture; one on a cable in the middle of a wall needs more of it.
    private static readonly int[] LongerSides = [1600, 3600];

    /// <summary>Reads a picture: JPEG, PNG, WebP, GIF or BMP.</summary>
    /// <param name="file">All that the file holds.</param>
    public static PhotoSeen In(ReadOnlyMemory<byte> file)
    {
        var labels = ImmutableArray<SeenLabel>.Empty;
        foreach (var side in LongerSides)
        {
            using var read = PhotoShrinker.Decode(file, side, out var state, out _);
            if (read is null)
                return new PhotoSeen(state, null, null, []);
            labels = LabelsSeen.In(read);
            if (!labels.IsEmpty || Math.Max(read.Width, read.Height) < side * 3 / 4)
                break;
        }
        var (taken, away) = PhotoTime.Of(file);
        return new PhotoSeen(PhotoState.Read, taken, away, labels);
    }
}
