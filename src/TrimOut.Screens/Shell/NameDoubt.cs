namespace TrimOut.Screens.Shell;

/// <summary>A name that is a figure or a single letter was most likely meant for another field, or for a key.</summary>
internal static class NameDoubt
{
    /// <summary>What to ask before a name is taken; null where nothing speaks against it.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="what">What is named, as it follows "the name of".</param>
    public static string? Of(string typed, string what) => typed.Trim() is not { Length: > 0 } name ? null
        : name.Length == 1 ? $"\"{name}\" would be the name of {what}, and is only one sign."
        : name.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' ') ? $"\"{name}\" would be the name of {what}, and has no letter."
        : null;
}
