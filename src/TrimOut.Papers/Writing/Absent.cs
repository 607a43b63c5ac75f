namespace TrimOut.Papers.Writing;

/// <summary>What stands on paper where a fact is missing: never an empty place, which could be taken for a mistake.</summary>
internal static class Absent
{
    /// <summary>What stands for "nothing was noted": no hyphen, which at the start of a line would begin a list.</summary>
    public const string Dash = "–";

    /// <summary>The text, or a dash where there is none.</summary>
    public static string OrDash(this string? text) => string.IsNullOrWhiteSpace(text) ? Dash : text;

    /// <summary>The text, or "not yet" where it is still to come.</summary>
    public static string OrNotYet(this string? text) => string.IsNullOrWhiteSpace(text) ? "not yet" : text;

    /// <summary>The parts that there are, or a dash where there is none.</summary>
    public static string JoinOrDash(this IEnumerable<string?> parts, string between = ", ") =>
        string.Join(between, parts.Where(p => !string.IsNullOrWhiteSpace(p))).OrDash();
}
