using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>No volts were read on a panel before the day on which it was connected to mains.</summary>
/// <remarks>
/// <para>Why: then somebody else connected it, or the paper that the owner gets is wrong.</para>
/// <para>To clear: ask the electrician for the day, and write it; if somebody else switched it on, have it looked at before it is used.</para>
/// </remarks>
public sealed class LiveBeforeConnected() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message Before = new("Volts were read on {0} on {1}, and it was connected on {2}.");
    private static readonly Message AskDay =
        new("Ask the electrician for the day and write it. If nobody licensed connected it before, switch it off and call one.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("live-before-connected", "Panel was live before it was connected", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice + "; local law on electrical work governs", "day of the first volts >= connected on"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        var days = subject.Runs.SelectMany(r => new Fact[] { RunFacts.OpenVolts, RunFacts.LoadedVolts }
            .Where(f => r.WasReadOn(subject, f)).Select(r.Item.Latest))
            .Select(h => DateOnly.FromDateTime(h!.At.DateTime)).ToList();
        if (days.Count == 0)
            return new Outcome.DoesNotApply();
        if (subject.Item.Get(PanelFacts.ConnectedOn) is not { } connected)
            return NotChecked.Of(subject, PanelFacts.ConnectedOn);
        return days.Min() is var first && first >= connected
            ? new Outcome.Fine()
            : new Outcome.Found(Before.With(Arg.Name(subject), Arg.Value(PanelFacts.ConnectedOn, first), Arg.Value(PanelFacts.ConnectedOn, connected)),
                AskDay, FieldRef.To(subject.Item, PanelFacts.ConnectedOn));
    }
}
