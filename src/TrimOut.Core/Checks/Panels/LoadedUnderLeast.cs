using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>While a unit moves, no fewer volts are read at it than its sheet asks for.</summary>
/// <remarks>
/// <para>Why: it moves today, and stalls on the first cold morning or hot afternoon.</para>
/// <para>To clear: with the panel off look at the splices; then at the supply; then land it on a panel that is nearer or gives more.</para>
/// </remarks>
public sealed class LoadedUnderLeast : RunCheck
{
    private static readonly Message Under = new("{0} were read while it moved; it needs {1}.");
    private static readonly Message LookAgain =
        new("Panel off. Make the splices again and see what the supply is set to; then read again. If it stays, land it nearer, or ask the maker.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("loaded-under-least", "Loaded volts are below the minimum", Severity.Stop, Phase.Power,
        new Source(Source.MakersSheet, "loaded volts >= minimum volts"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Item.Get(RunFacts.LoadedVolts) is not { } loaded)
            return NotChecked.Of(subject, RunFacts.LoadedVolts);
        if (subject.Unit.Kind?.LeastVolts is not { } least)
            return NotChecked.Of(subject.Unit.Kind, CoveringKindFacts.LeastVolts, subject.Unit, UnitFacts.Kind);
        return Math.Abs(loaded.Volts) >= least.Volts
            ? new Outcome.Fine()
            : new Outcome.Found(Under.With(loaded, least), LookAgain, FieldRef.To(subject.Item, RunFacts.LoadedVolts));
    }
}
