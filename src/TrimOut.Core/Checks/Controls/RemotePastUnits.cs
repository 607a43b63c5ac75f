using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Controls;

/// <summary>A remote moves no more units than it can.</summary>
/// <remarks>
/// <para>Why: the unit after the last is not taken, or pushes out the first.</para>
/// <para>To clear: another remote, or fewer units on this one.</para>
/// </remarks>
public sealed class RemotePastUnits() : Check<Remote>(Subjects.Remotes)
{
    private static readonly Message TooMany = new("{0} moves {1} units; it takes {2}.");
    private static readonly Message AnotherRemote = new("Add a remote and give it some of the units.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("remote-past-units", "Remote has too many units", Severity.Stop, Phase.Pair,
        new Source(Source.MakersSheet, "units <= units of the remote"));

    /// <inheritdoc/>
    public override Outcome Judge(Remote subject)
    {
        var units = subject.Item.All(RemoteFacts.Moves).Count(m => m.Value == YesNo.Yes && subject.House.FindUnit(m.Key) is not null);
        return subject.Type?.Units is not { } most ? NotChecked.Of(subject.Type, RemoteTypeFacts.Units, subject, RemoteFacts.Type)
            : units <= most ? new Outcome.Fine()
            : new Outcome.Found(TooMany.With(Arg.Name(subject), units, most), AnotherRemote, FieldRef.To(subject.Item, RemoteFacts.Type));
    }
}
