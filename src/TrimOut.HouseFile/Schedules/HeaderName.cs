using System.Globalization;
using System.Text;

namespace TrimOut.HouseFile.Schedules;

/// <summary>A header of a schedule, apart from how it is written: "Overall Width (mm)" is width, in mm.</summary>
/// <param name="Name">Its letters and digits in lower case, without the unit.</param>
/// <param name="Unit">The unit at its end: "mm", "cm", "m", "in" or "ft"; empty where it names none.</param>
internal sealed record HeaderName(string Name, string Unit)
{
    /// <summary>Reads a header.</summary>
    public static HeaderName Of(string header)
    {
        var words = new StringBuilder();
        for (var at = 0; at < header.Length; at++)
        {
            if (at > 0 && char.IsUpper(header[at]) && char.IsLower(header[at - 1]))
                words.Append(' ');
            words.Append(char.IsLetterOrDigit(header[at]) ? char.ToLower(header[at], CultureInfo.InvariantCulture) : ' ');
        }
        var list = words.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        var unit = list.Count > 1 ? UnitOf(list[^1]) : "";
        if (unit.Length > 0)
            list.RemoveAt(list.Count - 1);
        if (list is ["overall", _])
            list.RemoveAt(0);
        if (list is ["ro", "w" or "h"] or ["r", "o", "w" or "h"])
            list = ["ro", list[^1] == "w" ? "width" : "height"];
        return new HeaderName(string.Concat(list), unit);
    }

    /// <summary>A unit by any of its names, such as inches; empty where that is none.</summary>
    public static string UnitOf(string word) => word.Trim().ToLowerInvariant() switch
    {
        "inches" or "inch" => "in",
        "feet" => "ft",
        var unit => unit is "mm" or "cm" or "m" or "in" or "ft" ? unit : "",
    };
}
