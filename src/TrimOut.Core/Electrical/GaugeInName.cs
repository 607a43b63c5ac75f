using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>The gauge in the name of a cable: 16/2 has two conductors of 16 AWG. Common practice, no published source.</summary>
public static partial class GaugeInName
{
    /// <summary>The gauge that a name gives; null where it gives none, or more than one, as that of a cable with two sizes does.</summary>
    /// <param name="name">What the crew calls a cable.</param>
    public static ConductorSize.Gauge? Of(string name) => Pairs().Matches(name) is [{ } only]
        && int.Parse(only.Groups[1].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) is >= 6 and <= 26 and var gauge
        ? new ConductorSize.Gauge(gauge) : null;

    [GeneratedRegex(@"(?<![\d./])(\d{1,2})/([2-9]|1[0-9])(?![\d./])", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Pairs();
}
