namespace TrimOut.Papers.Photos;

/// <summary>What came of reading a picture.</summary>
public enum PhotoState
{
    /// <summary>It can be shown.</summary>
    Read,

    /// <summary>There is no such file.</summary>
    Missing,

    /// <summary>The file can't be read, or is none.</summary>
    Unreadable,

    /// <summary>The file or the picture is larger than is taken in.</summary>
    TooLarge,

    /// <summary>The file holds no picture of a known kind.</summary>
    NoPicture,

    /// <summary>The picture ends too early or is broken.</summary>
    Damaged,
}

/// <summary>A picture as it goes on paper: small, upright, and with nothing in it of what its file said besides, such as where it was taken.</summary>
/// <param name="State">What came of reading it; what follows is only there where it could be.</param>
/// <param name="Jpeg">The picture as JPEG, without any metadata.</param>
/// <param name="Wide">Its width in pixels.</param>
/// <param name="High">Its height in pixels.</param>
/// <param name="TakenOn">The day on which it was taken, by the camera's clock; null where the file does not say.</param>
public sealed record Photo(PhotoState State, ReadOnlyMemory<byte> Jpeg, int Wide, int High, DateOnly? TakenOn)
{
    /// <summary>A picture that can't be shown.</summary>
    public static Photo Not(PhotoState why) => new(why, ReadOnlyMemory<byte>.Empty, 0, 0, null);
}
