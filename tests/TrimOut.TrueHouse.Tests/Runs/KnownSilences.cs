namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>
/// Faults that recorded facts show, and that TrimOut does not find today as it should. A test holds this list exactly: a fault that is found must be
/// taken out.
/// </summary>
public static class KnownSilences
{
    /// <summary>By the fault's name, how it is heard today; in the order of the catalogue.</summary>
    public static IReadOnlyDictionary<string, Hearing> All { get; } = new Dictionary<string, Hearing>
    {
    };
}
