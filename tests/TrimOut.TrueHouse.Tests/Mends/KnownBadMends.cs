namespace TrimOut.TrueHouse.Tests.Mends;

/// <summary>Mends that do not mend today, or that make something new wrong. A test holds this list exactly: what no longer happens must be taken out.</summary>
public static class KnownBadMends
{
    /// <summary>By what happens, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["cable-not-listed stays"] = "of an unlisted cable the mend asks for what its first leg needs, and another leg needs more",
        ["volts-short-at-unit stays"] = "no cable helps where the least volts are more than the supply gives: the sheet is typed wrong",
    };
}
