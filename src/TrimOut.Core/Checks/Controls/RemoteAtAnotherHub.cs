using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A remote counts at the hub that the units that it moves are paired with.</summary>
/// <remarks>
/// <para>Why: a hub passes on only to what it knows; a remote at another hub moves nothing.</para>
/// <para>To clear: pair the remote with the hub of its units, or those units with its hub.</para>
/// </remarks>
public sealed class RemoteAtAnotherHub() : Check<Remote>(Subjects.Remotes)
{
    private static readonly Message UnitsWithHubs = new("a unit that it moves, paired with a hub");
    private static readonly Message AtAnother = new("{0} counts at {1}, and it is to move {2}, paired with {3}.");
    private static readonly Message PairRemote = new("Pair {0} with {1} and write that hub.");
    private static readonly Message PairUnits = new("Pair {0} with {1} too, or take what it can't reach off {2}.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("remote-at-another-hub", "Remote is on another hub than its units", Severity.Stop, Phase.Pair,
        new Source(Source.CommonPractice, "hub of the remote = hub of every unit that it moves"));

    /// <inheritdoc/>
    public override Outcome Judge(Remote subject)
    {
        var paired = subject.Units.Where(u => u.Hub is not null).ToList();
        if (subject.Item.Get(RemoteFacts.Hub) is not { } hub || subject.House.Find(hub.Id) is not { Removed: false } own)
            return NotChecked.Of(subject, RemoteFacts.Hub);
        if (paired.Count == 0)
            return new Outcome.NotChecked(UnitsWithHubs);
        var elsewhere = paired.Where(u => u.Hub!.Id != own.Id).ToList();
        if (elsewhere.Count == 0)
            return new Outcome.Fine();
        var hubs = elsewhere.Select(u => u.Hub!).DistinctBy(h => h.Id).ToList();
        var message = AtAnother.With(Arg.Name(subject), Arg.Name(own), Arg.All(elsewhere.Select(u => Arg.Name(u))), Arg.All(hubs.Select(h => Arg.Name(h))));
        return elsewhere.Count == paired.Count && hubs is [var one]
            ? new Outcome.Found(message, PairRemote.With(Arg.Name(subject), Arg.Name(one)), FieldRef.To(subject.Item, RemoteFacts.Hub))
            : new Outcome.Found(message, PairUnits.With(Arg.All(elsewhere.Select(u => Arg.Name(u))), Arg.Name(own), Arg.Name(subject)),
                FieldRef.To(elsewhere[0].Item, UnitFacts.Hub));
    }
}
