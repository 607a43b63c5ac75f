using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Copies;

/// <summary>Nothing stays removed that another laptop worked on, unless somebody who knows of the work said so.</summary>
/// <remarks>
/// <para>Why: after a merge the removal hides what the other crew measured or hung.</para>
/// <para>To clear: bring it back with all it had, or leave it removed knowingly.</para>
/// </remarks>
public sealed class RemovedWhileWorkedOn : HouseCheck
{
    private static readonly Message BringBack = new("Bring it back with all it had, or leave it removed.");
    private static readonly Message LeaveIn = new("Leave it in, or remove it again.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("removed-while-worked-on", "One laptop removed what another kept working on", Severity.Caution,
        Phase.WalkThrough,
        new Source(Source.CommonPractice, "nobody's work left out unseen"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house) => RemovedAtWork.All(house).Select(r => new CheckResult(Info, r.Item, new Outcome.Found(
        r.Words, r.Item.Removed ? BringBack : LeaveIn, new FieldRef(r.Item.Id, Item.RemovedField))));
}
