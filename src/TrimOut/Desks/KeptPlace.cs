namespace TrimOut.Desks;

/// <summary>Where what large houses make is kept, so that a script need not wait for it each time. All of it can go at any time.</summary>
internal static class KeptPlace
{
    /// <summary>The folder, made where there was none; null where it can't be.</summary>
    public static string? Folder()
    {
        var folder = Path.Combine(UserFolder.Path, "kept");
        try
        {
            UserFolder.Make(UserFolder.Path);
            UserFolder.Make(folder);
            return folder;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
