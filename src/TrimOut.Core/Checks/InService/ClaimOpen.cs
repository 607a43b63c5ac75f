using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.InService;

/// <summary>A warranty claim that was made came to something.</summary>
/// <remarks>
/// <para>Why: a claim that nobody asks about lapses, and whoever paid for the part goes on paying for it.</para>
/// <para>To clear: ask the maker, and write what the claim came to; withdrawn is an outcome too.</para>
/// </remarks>
public sealed class ClaimOpen() : Check<Service>(Subjects.Services)
{
    private static readonly Message Open = new("Nobody wrote what claim {0} came to ({1}).");
    private static readonly Message AskMaker = new("Ask the maker, and write what the claim came to.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("claim-open", "Warranty claim without an outcome", Severity.Note, Phase.Handover,
        new Source(Source.CommonPractice, "a claim that was made has an outcome"));

    /// <inheritdoc/>
    public override Outcome Judge(Service service) => service.Claim is not { } claim || !service.IsLastOfClaim ? new Outcome.DoesNotApply()
        : service.ClaimIsOpen ? new Outcome.Found(Open.With(Arg.Typed(claim), Arg.Name(service)), AskMaker, FieldRef.To(service.Item, ServiceFacts.Outcome))
        : new Outcome.Fine();
}
