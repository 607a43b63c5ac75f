namespace TrimOut.TrueHouse.Tests.Mends;

/// <summary>Mends that do not mend today, or that make something new wrong. A test holds this list exactly: what no longer happens must be taken out.</summary>
public static class KnownBadMends
{
    /// <summary>By what happens, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>
    {
        ["gap-between-units-too-small makes caution order-off-measures"] = "the width that the gap rule asks for is not the one that the measures give",
        ["heights-spread stays"] = "an outside mount hides it, and the rule goes on speaking of an outside mount",
        ["out-of-square stays"] = "an outside mount hides it, and the rule goes on speaking of an outside mount",
        ["tail-under-half-width makes caution tail-under-whole-width"] = "the first figure of the mend is only half of the way",
        ["widths-spread stays"] = "an outside mount hides it, and the rule goes on speaking of an outside mount",
    };
}
