using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>A panel under power was connected to mains by a licensed electrician who is named, and who is nobody of the crew.</summary>
/// <remarks>
/// <para>Why: mains work is for a licensed electrician only, and the owner must know whom to call.</para>
/// <para>To clear: write who connected it and the license; if nobody licensed did, switch it off and have it looked at.</para>
/// </remarks>
public sealed class MainsUnsigned() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message NoName = new("Volts were read on {0} and no name stands beside its mains connection.");
    private static readonly Message NoLicence = new("Volts were read on {0} and no {1} stands beside its mains connection.");
    private static readonly Message ByOneOfCrew =
        new("{0} was connected to mains by {1}, who stands in this job as somebody else than the licensed electrician.", "somebody-else");
    private static readonly Message TwoLicences = new("{0} connected {1} with license {2}, and {3} with license {4}.");
    private static readonly Message ReadLicence = new("Ask the electrician for the license number, and put right the one that is wrong.");
    private static readonly Message WriteElectrician =
        new("Write the electrician and the license. If nobody licensed connected it, switch it off and call one.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("mains-unsigned", "Panel is live, and the licensed sign-off for the mains is not in order", Severity.Stop,
        Phase.Power,
        new Source(Source.CommonPractice + "; local law on electrical work governs", "volts were read = connected by and license are there; " +
            "connected by = no name of the crew, of the client, or of another part in the job; one name has one license"));

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
            : WithAnotherLicence(panel, by) ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome.Found? WithAnotherLicence(Panel panel, string by)
    {
        var licence = panel.Item.Get(PanelFacts.Licence)!;
        var other = panel.House.PanelsAt(Lookups.PanelsByElectrician, by).FirstOrDefault(p => p.Id != panel.Id
            && p.Item.Evidence(PanelFacts.Licence) is { } theirs && !SameName.Comparer.Equals(theirs, licence));
        return other is null ? null : new Outcome.Found(
            TwoLicences.With(Arg.Typed(by), Arg.Name(panel), Arg.Typed(licence), Arg.Name(other), Arg.Typed(other.Item.Get(PanelFacts.Licence)!)), ReadLicence,
            FieldRef.To(panel.Item, PanelFacts.Licence));
    }
}
