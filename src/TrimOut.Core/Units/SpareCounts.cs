using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace TrimOut.Core.Units;

/// <summary>How many of which parts are to be had spare: <c>2 Handheld, 10 % screws</c>.</summary>
public sealed partial class SpareCounts : IEquatable<SpareCounts>
{
    private const int Most = 999;
    private const int MostPercent = 100;

    private SpareCounts(ImmutableArray<SpareCount> parts) => Parts = parts;

    /// <summary>Each part with how many, as they were typed.</summary>
    public ImmutableArray<SpareCount> Parts { get; }

    /// <summary>Reads counts, or percent, and names with commas between.</summary>
    /// <returns>The parts, or which of them has no count or no name.</returns>
    public static Result<SpareCounts> Read(string typed)
    {
        var parts = ImmutableArray.CreateBuilder<SpareCount>();
        foreach (var text in typed.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var read = Spare().Match(text);
            var percent = read.Groups["percent"].Success;
            if (!read.Success || int.Parse(read.Groups["count"].ValueSpan, CultureInfo.InvariantCulture) is not (>= 1 and var count)
                || count > (percent ? MostPercent : Most))
            {
                return new Refusal($"\"{text}\" does not say how many of what. Type a number from 1 to {Most}, or one to {MostPercent} with %, and the name "
                    + "of the part, such as 2 Handheld or 10 % screws.");
            }
            parts.Add(new SpareCount(count, percent, read.Groups["part"].Value));
        }
        return parts.Count == 0
            ? new Refusal("Nothing was typed. Type how many of what, such as 2 Handheld, 10 % screws.")
            : new SpareCounts(parts.ToImmutable());
    }

    /// <inheritdoc/>
    public bool Equals(SpareCounts? other) => other is not null && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SpareCounts);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>As it is read.</summary>
    public override string ToString() => string.Join(", ", Parts);

    [GeneratedRegex(@"^(?<count>[0-9]{1,4})(?:\s*(?<percent>%)\s*|\s+)(?<part>[^%\s].*)$")]
    private static partial Regex Spare();
}

/// <summary>How many of one part are to be had spare.</summary>
/// <param name="Amount">So many pieces, from 1 on; or so many percent, 1 to 100.</param>
/// <param name="IsPercent">Whether it is percent of what the house takes.</param>
/// <param name="Part">The part, as it is called on the parts list.</param>
public readonly record struct SpareCount(int Amount, bool IsPercent, string Part)
{
    /// <summary>How many pieces that is.</summary>
    /// <param name="taken">How many the house takes; of no matter where pieces were typed.</param>
    /// <returns>Whole pieces, percent rounded up: a part of a piece can't be bought.</returns>
    public int Of(decimal taken) => IsPercent ? (int)Math.Ceiling(taken * Amount / 100) : Amount;

    /// <summary>As it is read.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Amount}{(IsPercent ? " %" : "")} {Part}");
}
