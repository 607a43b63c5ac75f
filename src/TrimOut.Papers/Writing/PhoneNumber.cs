using System.Text.RegularExpressions;

namespace TrimOut.Papers.Writing;

/// <summary>Finds a phone number in what was typed, so that a phone can call it.</summary>
internal static partial class PhoneNumber
{
    /// <summary>What a link to a number begins with. RFC 3966.</summary>
    public const string Scheme = "tel:";

    /// <summary>Parts what was typed at its first number: who, and the number with all that follows it.</summary>
    /// <returns>The number is null where there is none.</returns>
    public static (string Who, Inline? Number) Part(string typed)
    {
        if (First(typed) is not { } found)
            return (typed.Trim(), null);
        var link = Inline.Call(found.Value, Dialled(found.Value));
        var after = typed[(found.Index + found.Length)..].Trim(' ', ')', ',', ';');
        return (typed[..found.Index].TrimEnd(' ', ',', ';', ':', '(', '-').Trim(), after.Length == 0 ? link : link + after);
    }

    /// <summary>Whether a link is one that <see cref="Inline.Call"/> makes: to a number and to nothing else.</summary>
    public static bool IsLink(string? url) => url is not null && Link().IsMatch(url);

    // Six digits at least: shorter ones are house, licence and breaker numbers. A day has eight, and is none. No more than 15: ITU-T E.164.
    private static Match? First(string typed) =>
        Written().Matches(typed).FirstOrDefault(m => m.Value.Count(char.IsAsciiDigit) is >= 6 and <= 15 && !Day().IsMatch(m.Value));

    // The bracketed 0 behind a country code is dialled only without that code.
    private static string Dialled(string written) =>
        (written.StartsWith('+') ? "+" : "")
        + string.Concat((written.StartsWith('+') ? written.Replace("(0)", "", StringComparison.Ordinal) : written).Where(char.IsAsciiDigit));

    [GeneratedRegex(@"(?<![\p{L}\p{N}][-./]?)(?:\+|\((?=[0-9]))?[0-9](?:[ ./()-]{0,2}[0-9])+(?![\p{L}\p{N}])")]
    private static partial Regex Written();

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}|^[0-9]{1,2}\.[0-9]{1,2}\.[0-9]{4}$")]
    private static partial Regex Day();

    [GeneratedRegex(@"^tel:\+?[0-9]{6,15}$")]
    private static partial Regex Link();
}
