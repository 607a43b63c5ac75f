using System.Collections.Immutable;
using TrimOut.Core.Plans.Photos;

namespace TrimOut.Screens.Photos;

/// <summary>A folder with pictures in it.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Pictures">How many are in it, without the folders in it.</param>
/// <param name="Latest">When the latest of them was changed; null where that can't be seen.</param>
public sealed record PhotoFolderChoice(string Path, int Pictures, DateTimeOffset? Latest);

/// <summary>The file of a picture that was found.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Print">What names its contents, so that it can be seen whether they are still the same.</param>
/// <param name="Photo">What it says.</param>
public sealed record PhotoFile(string Path, string Print, FoundPhoto Photo);

/// <summary>The pictures of a folder.</summary>
/// <param name="Files">Their files.</param>
/// <param name="Remarks">What else is to be said of the folder, each in a sentence.</param>
public sealed record PhotosRead(IReadOnlyList<PhotoFile> Files, ImmutableArray<string> Remarks);

/// <summary>A picture to be shown in cells: upright, and small.</summary>
/// <param name="Wide">Its width in pixels.</param>
/// <param name="High">Its height in pixels.</param>
/// <param name="Rgb">Red, green and blue of each pixel, row by row.</param>
public sealed record CellPicture(int Wide, int High, ImmutableArray<byte> Rgb);
