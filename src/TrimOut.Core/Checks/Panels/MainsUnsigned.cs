using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>A panel under power was connected to mains by a licensed electrician who is named, and who is nobody of the crew.</summary>
/// <remarks>
/// <para>Why: mains work is for a licensed electrician only, and the owner must know whom to call.</para>
/// <para>To clear: write who connected it and the licence; if nobody licensed did, switch it off and have it looked at.</para>
/// </remarks>
public sealed class MainsUnsigned() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message NoName = new("Volts were read on {0} and no name stands beside its mains connection.");
    private static readonly Message NoLicence = new("Volts were read on {0} and no {1} stands beside its mains connection.");
    private static readonly Message ByOneOfCrew =
        new("{0} was connected to mains by {1}, who stands in this job as somebody else than the licensed electrician.", "somebody-else");
    private static readonly Message WriteElectrician =
        new("Write the electrician and the license. If nobody licensed connected it, switch it off and call one.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("mains-unsigned", "Panel is live and nobody licensed signed for the mains", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice + "; local law on electrical work governs", "volts were read = connected by and license are there; " +
            "connected by = no name of the crew, or of another part in the job"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        if (new[] { PanelFacts.ConnectedBy, PanelFacts.Licence }.Where(f => subject.Item.Evidence(f) is null).ToList() is not [var first, ..] missing)
            return OfSomebodyElse(subject);
        var live = subject.Runs.Any(r => r.WasReadOn(subject, RunFacts.OpenVolts) || r.WasReadOn(subject, RunFacts.LoadedVolts));
        return !live
            ? NotChecked.Of(subject, first)
            // Who let the name go did not let the licence go too.
            : new Outcome.Found(
                (first == PanelFacts.Licence ? NoLicence.With(Arg.Name(subject), Arg.Label(first)) : NoName.With(Arg.Name(subject)))
                    .StandingFor(missing.Select(f => Arg.Label(f))),
                WriteElectrician, FieldRef.To(subject.Item, first));
    }

    private static Outcome OfSomebodyElse(Panel panel)
    {
        var by = panel.Item.Get(PanelFacts.ConnectedBy)!;
        return PeopleOfJob.OtherThanElectrician(panel.House, by)
            ? new Outcome.Found(ByOneOfCrew.With(Arg.Name(panel), Arg.Typed(by)), WriteElectrician, FieldRef.To(panel.Item, PanelFacts.ConnectedBy))
            : new Outcome.Fine();
    }
}
