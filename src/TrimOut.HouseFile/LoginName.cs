namespace TrimOut.HouseFile;

/// <summary>The name that somebody is logged in by on this machine.</summary>
public static class LoginName
{
    private static readonly string[] Variables = ["USER", "LOGNAME"];

    /// <summary>
    /// The name. Where the system has none, as in a container without a list of users, the environment's (USER, LOGNAME), and else "somebody".
    /// </summary>
    public static string Now { get; } = Of(() => Environment.UserName, Environment.GetEnvironmentVariable);

    /// <summary>The same of any system.</summary>
    internal static string Of(Func<string> system, Func<string, string?> environment)
    {
        try
        {
            if (system() is { Length: > 0 } name)
                return name;
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            // The list of users is a file, and it is not there.
        }
        return Variables.Select(environment).FirstOrDefault(n => !string.IsNullOrWhiteSpace(n)) ?? "somebody";
    }
}
