using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A second cable or a conduit stands by for the day on which a cable fails.</summary>
/// <remarks>
/// <para>Why: a cable costs little while the wall is open, and a wall costs much once it is closed.</para>
/// <para>To clear: pull a second cable while the wall is open, or lay the whole way in conduit; or waive it.</para>
/// </remarks>
public sealed class NoSpareCable : RunCheck
{
    private static readonly Message NoneBeside = new("No second cable lies beside it, and it is not in conduit all along.");
    private static readonly Message PullOne = new("Pull a second cable beside it while the wall is open, or waive this and say why.");
    private static readonly Message TellOwner = new("The wall is closed: tell the owner that a failed cable means an opened wall, and waive this.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("no-spare-cable", "No spare cable and no conduit", Severity.Note, Phase.RoughIn,
        new Source(Source.CommonPractice, "spare cables of 1 or more, or every leg in conduit"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.SpareCables) is not { } spares)
            return NotChecked.Of(subject, RunFacts.SpareCables);
        if (spares > 0)
            return subject.Item.Get(RunFacts.SpareEnds) is null ? NotChecked.Of(subject, RunFacts.SpareEnds) : new Outcome.Fine();
        return !subject.Legs.IsEmpty && subject.Legs.All(l => l.Conduit is Conduit.Metal or Conduit.Plastic)
            ? new Outcome.Fine()
            : new Outcome.Found(NoneBeside, subject.Item.Get(RunFacts.TailFound) is null && Moment.WallOpen(subject.Unit) ? PullOne : TellOwner,
                FieldRef.To(subject.Item, RunFacts.SpareCables));
    }
}
