using TrimOut.Core;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks;

/// <summary>Which file somebody means who says where a house file is to be made.</summary>
internal static class NewFile
{
    private const string Ending = ".trimout";

    /// <summary>The file, with its ending. A folder is where it goes, under the name of the house; without such a name a folder is refused.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="house">The house file, or its name, that a file in a folder is called by; null where it has to be said.</param>
    /// <returns>The path, or why no house file can be made there.</returns>
    public static Result<string> Of(string typed, string? house = null)
    {
        if (string.IsNullOrWhiteSpace(typed))
            return new Refusal("No file is named. Say where, such as elm.trimout.");
        if (typed == "-")
            return new Refusal("- is no file: a house is not written to standard output. Say which file, such as elm.trimout. To write it as text: trimout "
                + "history.");
        var isFolder = Path.EndsInDirectorySeparator(typed);
        // A folder that has a house file's name is in its way: nobody means a file in it.
        if (!isFolder && (house is null || typed.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) || !Directory.Exists(typed)))
            return Visible(typed.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? typed : typed + Ending).Then(Anywhere);
        if (house is null)
            return new Refusal($"{typed} is a folder. Say which file in it, such as {Path.Combine(typed, "elm.trimout")}.");
        return Directory.Exists(typed) ? Anywhere(Path.Combine(typed, NameOf(house) + Ending))
            : new Refusal($"There is no folder {typed}. Make it first, or say another one.");
    }

    private static string NameOf(string house)
    {
        var name = Path.GetFileName(house);
        var stem = name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? name[..^Ending.Length] : name;
        return stem.TrimStart('.') is { Length: > 0 } seen ? seen : "house";
    }

    /// <summary>A name that is none on another system is refused before a file has it; one that is there already goes on as it is.</summary>
    private static Result<string> Anywhere(string path) =>
        // On Windows such a name is never a file, though the device that has it may well be there.
        (OperatingSystem.IsWindows() || !Path.Exists(path)) && NameAnywhere.WhyNot(path) is { } why ? new Refusal(why) : path;

    /// <summary>A name of nothing but the ending is hidden, and most often one that was forgotten.</summary>
    private static Result<string> Visible(string path) => Path.GetFileName(path).Equals(Ending, StringComparison.OrdinalIgnoreCase)
        ? new Refusal($"{path} is only the ending of a house file's name. Say the whole name, such as "
            + $"{Path.Combine(Path.GetDirectoryName(path) ?? "", "elm.trimout")}.")
        : path;
}
