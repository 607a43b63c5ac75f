using TrimOut.Core;

namespace TrimOut.Papers.Templates;

/// <summary>Templates that come with TrimOut: the owner's binder in other languages.</summary>
public static class ShippedTemplates
{
    /// <summary>Their names, such as <c>binder.de</c>: the paper and the language.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. typeof(ShippedTemplates).Assembly.GetManifestResourceNames().Where(n => n.EndsWith(".md", StringComparison.Ordinal)).Select(n => n[..^3])
            .Order(StringComparer.Ordinal)];

    /// <summary>The text of one, to use or to begin from; or which ones there are.</summary>
    public static Result<string> Text(string name)
    {
        using var stream = Names.Contains(name) ? typeof(ShippedTemplates).Assembly.GetManifestResourceStream($"{name}.md") : null;
        if (stream is null)
            return new Refusal($"There is no template {name}. There are: {string.Join(", ", Names)}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
