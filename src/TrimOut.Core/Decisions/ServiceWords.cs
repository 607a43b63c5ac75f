using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Parts of a line of service that look like a serial or a claim and are none: they would be lost in the cause.</summary>
internal static partial class ServiceWords
{
    /// <summary>Why a part can't be taken as it stands; null where it can.</summary>
    /// <param name="part">What stands between two commas.</param>
    public static Refusal? Refuse(string part)
    {
        if (Begun().Match(part) is not { Success: true } begun)
            return null;
        var (word, sign, number) = (begun.Groups["word"].Value.ToLowerInvariant(), begun.Groups["sign"].Value, begun.Groups["number"].Value.Trim());
        var example = word == "claim" ? "C-17" : "R-2291";
        return number.Length == 0 ? new Refusal($"\"{part}\" names no number: write {word} {example}, or leave it out.")
            : sign.Length > 0 ? new Refusal($"Write {word} and its number without \"{sign}\" between them: {word} {number}.")
            : word == "claim" && KebabCase.Read<ClaimOutcome>(number.Replace(' ', '-').ToLowerInvariant()) is not null
                ? new Refusal($"\"{part}\" names no claim: write its number, and behind a comma what became of it: claim C-17, {number}.")
            : null;
    }

    [GeneratedRegex(@"^(?<word>serial|claim)(?:\s*(?<sign>[:=#]))?(?:(?<=[:=#])|\s+|$)(?<number>.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Begun();
}
