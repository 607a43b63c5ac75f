namespace TrimOut.Papers.Writing;

/// <summary>One section of a paper.</summary>
/// <param name="Place">Its name in templates.</param>
/// <param name="Title">Its heading, unique in its paper.</param>
/// <param name="Write">Writes what stands under the heading.</param>
internal sealed record Section(string Place, string Title, Action<MarkdownWriter, PaperData> Write)
{
    /// <summary>Whether it is left out of a paper for the owner alone.</summary>
    public bool NotForOwner { get; init; }

    /// <summary>The heading of the part of the paper that it begins; null where it begins none.</summary>
    public string? Part { get; init; }
}
