namespace TrimOut.Papers.Writing;

/// <summary>Markdown that stands inside one line. A string turns into it by being escaped, so that nothing typed can act as markup.</summary>
internal readonly record struct Inline
{
    private readonly string? _markdown;

    private Inline(string markdown) => _markdown = markdown;

    /// <summary>Its Markdown.</summary>
    public string Markdown => _markdown ?? "";

    /// <summary>A blank to write in by hand.</summary>
    public static Inline Blank { get; } = new("____________");

    /// <summary>A box to tick by hand.</summary>
    public static Inline Box { get; } = new("☐");

    /// <summary>Our own words, made strong. Not for typed text: what stands next to the marks decides whether they work.</summary>
    public static Inline Strong(string ours) => new($"**{Escaping.Escape(ours)}**");

    /// <summary>A link to a section of the same paper.</summary>
    public static Inline LinkTo(string title) => new($"[{Escaping.Escape(title)}](#{Anchor.Of(title)})");

    /// <summary>Both, with a space between them.</summary>
    public static Inline operator +(Inline a, Inline b) => new($"{a.Markdown} {b.Markdown}");

    /// <summary>Text as typed.</summary>
    public static implicit operator Inline(string text) => new(Escaping.Escape(text));
}
