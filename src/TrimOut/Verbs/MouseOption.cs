using System.CommandLine;

namespace TrimOut.Verbs;

/// <summary>Whether the screens take the mouse this time: an option, and a variable of the environment for every time.</summary>
internal static class MouseOption
{
    /// <summary>The variable of the environment.</summary>
    public const string Variable = "TRIMOUT_MOUSE";

    private const string On = "on";

    private const string Off = "off";

    /// <summary>The option.</summary>
    public static Option<string?> Build()
    {
        var option = new Option<string?>("--mouse")
        {
            Description = $"Take clicks (on), or leave the mouse to the terminal to select text with (off), this time. Left out: {Variable}, "
                + "else as F4 left it last.",
            HelpName = $"{On}|{Off}",
        };
        option.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, On, Off);
        return option;
    }

    /// <summary>Whether it takes clicks this time; null where nobody says so.</summary>
    /// <param name="option">The option's value; null where it was left out.</param>
    /// <param name="variable">The variable's value; null where there is none.</param>
    /// <param name="says">Told what a variable is that says neither.</param>
    public static bool? Of(string? option, string? variable, Action<string> says)
    {
        if (Read(option) is { } asked)
            return asked;
        if (Read(variable) is not { } usual)
        {
            if (!string.IsNullOrWhiteSpace(variable))
                says($"{Variable} is \"{variable}\", which is neither {On} nor {Off}. The mouse is as F4 left it last.");
            return null;
        }
        return usual;
    }

    private static bool? Read(string? text) => text?.Trim().ToLowerInvariant() switch { On => true, Off => false, _ => null };
}
