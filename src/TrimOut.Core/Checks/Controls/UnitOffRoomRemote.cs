using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A unit is moved by a remote of its own room, or by one that belongs to no room.</summary>
/// <remarks>
/// <para>Why: somebody stands at the window and has to fetch a remote from another room.</para>
/// <para>To clear: pair it with the room's remote; or waive it with the reason.</para>
/// </remarks>
public sealed class UnitOffRoomRemote : UnitCheck
{
    private static readonly Message ARemote = new("a remote that moves it");
    private static readonly Message OneElsewhere = new("{0} moves it, and none of them is kept in {1}.");
    private static readonly Message SeveralElsewhere = new("{0} move it, and none of them is kept in {1}.");
    private static readonly Message PairWithOne = new("Pair it with a remote in {0}, or waive this and say why.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("unit-off-room-remote", "No remote of its room moves it", Severity.Caution, Phase.Pair,
        new Source(Source.CommonPractice, "one remote that moves it is kept in its room, or in none"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject)
    {
        ImmutableArray<Remote> remotes = [.. subject.Remotes];
        if (remotes.IsEmpty)
            return new Outcome.NotChecked(ARemote);
        if (remotes.Any(r => r.Room is null))
            return new Outcome.Fine();
        if (subject.Window.Room is not { } room)
            return NotChecked.Of(subject.Window, WindowFacts.Room);
        return remotes.Any(r => r.Room!.Id == room.Id)
            ? new Outcome.Fine()
            : new Outcome.Found((remotes.Length == 1 ? OneElsewhere : SeveralElsewhere).With(Arg.All(remotes.Select(r => Arg.Name(r))), Arg.Name(room)),
                PairWithOne.With(Arg.Name(room)), FieldRef.To(remotes[0].Item, RemoteFacts.Moves, subject.Id));
    }
}
