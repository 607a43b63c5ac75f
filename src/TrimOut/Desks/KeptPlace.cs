using TrimOut.HouseFile.Kept;

namespace TrimOut.Desks;

/// <summary>Where what large houses make is kept, so that a script need not wait for it each time. All of it can go at any time.</summary>
internal static class KeptPlace
{
    /// <summary>The folder; it may not be there.</summary>
    public static string Path => System.IO.Path.Combine(UserFolder.Path, "kept");

    /// <summary>Work that is not brief.</summary>
    public static BriefWork NotBrief() => BriefWork.Not(Folder(), HouseSource.LargeFrom);

    /// <summary>The folder, made where there was none; null where it can't be.</summary>
    public static string? Folder()
    {
        try
        {
            UserFolder.Make(UserFolder.Path);
            UserFolder.Make(Path);
            return Path;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
