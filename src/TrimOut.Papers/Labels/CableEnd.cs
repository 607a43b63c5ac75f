using System.Text.RegularExpressions;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Labels;

/// <summary>One end of a home run, which carries a label.</summary>
/// <param name="Run">The run.</param>
/// <param name="AtWindow">Whether it is the end at the window; else the one at the panel.</param>
internal sealed partial record CableEnd(HomeRun Run, bool AtWindow)
{
    /// <summary>Both ends of every run, in walking order.</summary>
    public static IEnumerable<CableEnd> AllOf(House house) => house.Runs.SelectMany(r => new[] { new CableEnd(r, true), new CableEnd(r, false) });

    /// <summary>Where it is.</summary>
    public string Where => AtWindow ? "window" : "panel";

    /// <summary>What is written on it: what was noted, else the panel, the output and the unit, else the unit alone.</summary>
    public string Label => (AtWindow ? Run.LabelAtWindow : Run.LabelAtPanel)
        ?? (Run is { Panel: { } panel, Output: { } output } ? $"{panel.Name}.{output} {Run.Name}" : Run.Name);

    /// <summary>What its code holds: unit, end and label.</summary>
    public string Code => $"{Run.Name};{Where};{Label}";

    /// <summary>The tag of the unit by the code of a label; null for a code that is none of ours.</summary>
    public static string? TagIn(string code) => CodeOfLabel().Match(code) is { Success: true } label ? label.Groups[1].Value : null;

    [GeneratedRegex("^(.+?);(?:window|panel);", RegexOptions.Singleline)]
    private static partial Regex CodeOfLabel();
}
