using System.Globalization;
using System.Text;

namespace TrimOut.Screens;

/// <summary>What is written down about a fault of the program's own: where in the code, and nothing about the house.</summary>
internal static class FaultNote
{
    public static string Of(Exception fault, TimeProvider clock)
    {
        var note = new StringBuilder();
        note.Append(CultureInfo.InvariantCulture,
            $"TrimOut {typeof(FaultNote).Assembly.GetName().Version?.ToString(3)}, {clock.GetUtcNow():yyyy-MM-dd'T'HH:mm:ss'Z'}\n");
        note.Append(CultureInfo.InvariantCulture, $"{Environment.OSVersion.Platform}, .NET {Environment.Version}\n");
        // Messages are left out: they may quote what somebody typed.
        for (var at = fault; at is not null; at = at.InnerException)
            note.Append(CultureInfo.InvariantCulture, $"\n{at.GetType().FullName}\n{at.StackTrace}\n");
        return note.ToString();
    }
}
