using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The cord of a plug-in supply reaches a socket.</summary>
/// <remarks>
/// <para>Why: a cord across the wall is seen every day, and a child pulls on it.</para>
/// <para>To clear: a socket by the licensed electrician while the wall is open, or power from a panel or a battery.</para>
/// </remarks>
public sealed class PlugInWithoutSocket : UnitCheck
{
    private static readonly Message TooFar = new("The outlet for its plug-in supply is too far: the cord would cross the wall.", "too-far");
    private static readonly Message None = new("It is to have a plug-in supply, and there is no outlet.", "none");
    private static readonly Message WhileOpen =
        new("Ask the licensed electrician for an outlet near its head while the wall is open, or plan a home run or a battery.");
    private static readonly Message WallClosed = new("Plan a battery, or ask the licensed electrician for an outlet. No cord goes across the wall.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("plug-in-without-socket", "Plug-in supply without an outlet", Severity.Stop, Phase.WalkThrough,
        new Source(Source.CommonPractice + "; the code in force governs outlets and cords", "plug-in supply = its cord reaches an outlet"));

    /// <inheritdoc/>
    public override Outcome Judge(Unit subject) => subject.Power != PowerSource.PlugIn ? new Outcome.DoesNotApply()
        : subject.Item.Get(UnitFacts.Socket) switch
        {
            null => NotChecked.WhereAsked(subject, "socket-seen", subject, UnitFacts.Socket),
            SocketNear.InReach => new Outcome.Fine(),
            SocketNear.TooFar => Found(subject, TooFar),
            _ => Found(subject, None),
        };

    private static Outcome.Found Found(Unit unit, Message message) =>
        new(message, Moment.WallOpen(unit) ? WhileOpen : WallClosed, FieldRef.To(unit.Item, UnitFacts.Socket));
}
