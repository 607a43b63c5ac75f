namespace TrimOut.Core;

/// <summary>Compares names as a person sees them: whatever their case, and without what can't be seen in them.</summary>
public sealed class SameName : StringComparer
{
    private SameName() { }

    /// <summary>The comparer.</summary>
    public static SameName Comparer { get; } = new();

    /// <inheritdoc/>
    public override int Compare(string? x, string? y) => OrdinalIgnoreCase.Compare(KeyOf(x), KeyOf(y));

    /// <inheritdoc/>
    public override bool Equals(string? x, string? y) => OrdinalIgnoreCase.Equals(KeyOf(x), KeyOf(y));

    /// <inheritdoc/>
    public override int GetHashCode(string obj) => OrdinalIgnoreCase.GetHashCode(ShownText.Key(obj));

    private static string? KeyOf(string? name) => name is null ? null : ShownText.Key(name);
}
