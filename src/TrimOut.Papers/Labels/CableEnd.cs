using System.Text.RegularExpressions;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Photos;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.Labels;

/// <summary>One end of a home run, which carries a label.</summary>
/// <param name="Run">The run.</param>
/// <param name="AtWindow">Whether it is the end at the window; else the one at the panel.</param>
internal sealed partial record CableEnd(HomeRun Run, bool AtWindow)
{
    /// <summary>Both ends of every run, in walking order; a branch goes on from the window end of another and has none at a panel.</summary>
    /// <param name="data">What the paper is written from.</param>
    public static IEnumerable<CableEnd> AllOf(PaperData data)
    {
        var (mark, wrong) = (HouseMark.Of(data.Log), OpenStops.WithWrongLabels(data));
        return data.House.Runs.SelectMany(r => r.BranchesOff is null ? [new CableEnd(r, true), new CableEnd(r, false)] : new[] { new CableEnd(r, true) })
            .Select(e => e with { House = mark, IsWrong = wrong.Contains(e.Run.Id) });
    }

    /// <summary>Whether a stop or a caution is open about its label: it is not printed to be stuck on.</summary>
    public bool IsWrong { get; init; }

    /// <summary>The mark of the house that it is in; null where none is known.</summary>
    public string? House { get; init; }

    /// <summary>Where it is.</summary>
    public string Where => AtWindow ? "window" : "panel";

    /// <summary>What is written on it: what was noted, else the panel, the output and the unit, else the unit alone.</summary>
    public string Label => (AtWindow ? Run.LabelAtWindow : Run.LabelAtPanel)
        ?? (Run is { Panel: { } panel, Output: { } output } ? $"{panel.Name}.{output} {Run.Name}" : Run.Name);

    /// <summary>What its code holds: unit, end, label and the mark of the house.</summary>
    public string Code => $"{Run.Name};{Where};{Label}{(House is null ? "" : $";~{House}")}";

    /// <summary>What the code of a label says; null for a code that is none of ours. Labels of earlier editions say no house.</summary>
    public static SeenLabel? Read(string code) => CodeOfLabel().Match(code) is { Success: true } label
        ? new SeenLabel(label.Groups["tag"].Value, label.Groups["house"] is { Success: true } house ? house.Value : null) : null;

    [GeneratedRegex("^(?<tag>.+?);(?:window|panel);(?:.*;~(?<house>[0-9a-z]{4})$)?", RegexOptions.Singleline)]
    private static partial Regex CodeOfLabel();
}
