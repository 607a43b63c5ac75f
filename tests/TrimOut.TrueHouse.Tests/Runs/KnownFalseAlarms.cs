namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>What faultless houses hear today and should not. A test holds this list exactly: what is no longer said must be taken out.</summary>
public static class KnownFalseAlarms
{
    /// <summary>Stops, by the id of the check, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> Stops { get; } = new Dictionary<string, string>();

    /// <summary>Cautions, by the id of the check, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> Cautions { get; } = new Dictionary<string, string>();

    /// <summary>Cautions that come so seldom that the houses of the gate hear none, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> Seldom { get; } = new Dictionary<string, string>
    {
    };

    /// <summary>Stops and cautions of houses that are tested with a meter whose last place is a tenth of an ohm, with the reason.</summary>
    public static IReadOnlyDictionary<string, string> WithAMeterOfTenths { get; } = new Dictionary<string, string>
    {
    };
}
