namespace TrimOut.Papers.Writing;

/// <summary>One section of a paper.</summary>
/// <param name="Title">Its heading, unique in its paper.</param>
/// <param name="Write">Writes what stands under the heading.</param>
internal sealed record Section(string Title, Action<MarkdownWriter, PaperData> Write);
