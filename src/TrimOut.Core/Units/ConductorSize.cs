using System.Globalization;

namespace TrimOut.Core.Units;

/// <summary>The size of one conductor: an American wire gauge or a metric cross-section.</summary>
/// <remarks>The two are no translation of each other: metric sizes are defined by a largest resistance, gauges by a diameter.</remarks>
public abstract record ConductorSize
{
    private ConductorSize() { }

    /// <summary>An American wire gauge.</summary>
    /// <param name="Number">From 0 (thick) to 36 (thin).</param>
    public sealed record Gauge(int Number) : ConductorSize
    {
        /// <inheritdoc/>
        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number} AWG");
    }

    /// <summary>A nominal metric cross-section.</summary>
    /// <param name="SquareMillimetres">Square millimetres.</param>
    public sealed record Metric(decimal SquareMillimetres) : ConductorSize
    {
        /// <inheritdoc/>
        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{SquareMillimetres:0.##} mm2");
    }

    /// <summary>Reads <c>16 AWG</c>, <c>16</c>, <c>#16</c> or <c>1.5 mm2</c>.</summary>
    public static Result<ConductorSize> Read(string? typed)
    {
        var text = (typed ?? "").Trim().ToLowerInvariant().Replace("²", "2", StringComparison.Ordinal);
        foreach (var unit in (string[])["mm2", "mm^2", "sqmm"])
        {
            if (text.EndsWith(unit, StringComparison.Ordinal)
                && NumberText.Read(text[..^unit.Length], "square millimeters", 0.05m, 50, ("", 1)) is { Ok: true } area)
                return new Metric(area.Value);
        }
        var bare = text.TrimStart('#').Replace("awg", "", StringComparison.Ordinal).Replace("ga", "", StringComparison.Ordinal).Trim();
        return int.TryParse(bare, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= 36
            ? new Gauge(number)
            : new Refusal($"\"{text}\" is no conductor size. Type a gauge such as 16 AWG or a metric size such as 1.5 mm2.");
    }
}
