using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A preset sends only units that its remote moves.</summary>
/// <remarks>
/// <para>Why: a press of the preset leaves that window as it was, and nobody knows why.</para>
/// <para>To clear: pair the unit with the remote, or take its position out of the preset.</para>
/// </remarks>
public sealed class PresetOffRemote() : Check<Remote>(Subjects.Remotes)
{
    private static readonly Message UnitsItMoves = new("units that it moves");
    private static readonly Message NotMoved = new("{0} on {1} is to move {2}, which {1} does not move.");
    private static readonly Message PairOrTakeOut = new("Pair {0} with {1} and say so, or take it out of {2}.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("preset-off-remote", "Preset moves a unit that its remote does not", Severity.Stop, Phase.Limits,
        new Source(Source.CommonPractice, "every unit with a position in a preset is moved by its remote"));

    /// <inheritdoc/>
    public override Outcome Judge(Remote subject)
    {
        var presets = subject.Presets.Where(p => p.Positions.Any()).ToList();
        if (presets.Count == 0)
            return new Outcome.DoesNotApply();
        var moved = subject.Units.Select(u => u.Id).ToHashSet();
        if (moved.Count == 0)
            return new Outcome.NotChecked(UnitsItMoves);
        return Outcome.All(presets.Select(p => Found(subject, p, [.. p.Positions.Select(at => at.Unit).Where(u => !moved.Contains(u.Id))])))
            ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome.Found? Found(Remote remote, Preset preset, List<Unit> left)
    {
        if (left.Count == 0)
            return null;
        var units = Arg.All(left.Select(u => Arg.Name(u)));
        return new Outcome.Found(NotMoved.With(Arg.Name(preset), Arg.Name(remote), units),
            PairOrTakeOut.With(units, Arg.Name(remote), Arg.Name(preset)), FieldRef.To(remote.Item, RemoteFacts.Moves, left[0].Id));
    }
}
