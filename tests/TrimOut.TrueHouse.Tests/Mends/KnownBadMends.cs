namespace TrimOut.TrueHouse.Tests.Mends;

/// <summary>Mends that do not mend today, or that make something new wrong. A test holds this list exactly: what no longer happens must be taken out.</summary>
public static class KnownBadMends
{
    /// <summary>Checks whose mend no fault leads to, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> NeverCarriedOut { get; } = new Dictionary<string, string>
    {
        ["listed-by-relaxation"] = "a note on what the code allows: faultless houses hear it too",
        ["latitude-off-zone"] = "no true house has its place typed: LatitudeOffZoneTests carries it out",
        ["longitude-off-zone"] = "no true house has its place typed: LongitudeOffZoneTests carries it out",
        ["order-too-late"] = "no true house has the days of an order typed: OrderTooLateTests carries it out",
    };

    /// <summary>By what happens, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["ordered-without-size makes caution changed-since-order"] =
            "the size is written after the maker acknowledged the order: whether he makes it so is to be asked",
    };
}
