using System.Collections.Immutable;
using System.Globalization;

namespace TrimOut.Core.Units;

/// <summary>Parts with how many of each: <c>2 end brackets, 6 screws</c>.</summary>
public sealed class PartCounts : IEquatable<PartCounts>
{
    private const int Most = 999;

    private PartCounts(ImmutableArray<(int Count, string Part)> parts) => Parts = parts;

    /// <summary>Each part with how many, 1 to 999.</summary>
    public ImmutableArray<(int Count, string Part)> Parts { get; }

    /// <summary>Reads counts and names with commas between.</summary>
    /// <returns>The parts, or which of them has no count or no name.</returns>
    public static Result<PartCounts> Read(string typed)
    {
        var parts = ImmutableArray.CreateBuilder<(int, string)>();
        foreach (var text in typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var space = text.IndexOf(' ', StringComparison.Ordinal);
            if (space < 0 || !int.TryParse(text.AsSpan(0, space), NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count is < 1 or > Most)
                return new Refusal($"\"{text}\" is no part with its count. Type a number from 1 to {Most} and a name, such as 2 end brackets.");
            parts.Add((count, text[(space + 1)..].Trim()));
        }
        return parts.Count == 0
            ? new Refusal("Nothing was typed. Type parts with their counts, such as 2 end brackets, 6 screws.")
            : new PartCounts(parts.ToImmutable());
    }

    /// <inheritdoc/>
    public bool Equals(PartCounts? other) => other is not null && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PartCounts);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>As it is read.</summary>
    public override string ToString() => string.Join(", ", Parts.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Count} {p.Part}")));
}
