using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Panels;

/// <summary>Red is red and black is black at the window end.</summary>
/// <remarks>
/// <para>Why: a motor on swapped wires runs the wrong way or not at all, and some are damaged.</para>
/// <para>To clear: switch the panel off, change the two wires over at one end, read again.</para>
/// </remarks>
public sealed class PolaritySwapped : RunCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("polarity-swapped", "Polarity is swapped", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice, "polarity right, and no reading negative"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        var negative = new[] { RunFacts.OpenVolts, RunFacts.LoadedVolts }.FirstOrDefault(f => subject.Item.Get(f) is { Volts: < 0 });
        if (negative is not null)
            return Found(subject, $"{negative.Label} read {subject.Show(negative)}: the two wires are changed over.", negative);
        return subject.Item.Get(RunFacts.Polarity) switch
        {
            null => Unknown.Of(subject, RunFacts.Polarity),
            Polarity.Right => new Outcome.Fine(Reasoning(subject)),
            _ => Found(subject, "Red and black are changed over at the window end.", RunFacts.Polarity),
        };
    }

    private static Outcome.Found Found(HomeRun run, string message, Fact fact) =>
        new(message, "Switch the panel off, change the two wires over at one end, red to red and black to black, and read again.", FieldRef.To(run.Item, fact), Reasoning(run));

    private static Working Reasoning(HomeRun run) => Working.Of("red on the red lead shows more than 0 V; wires changed over show less than 0 V", () =>
        [.. new Fact[] { RunFacts.Polarity, RunFacts.OpenVolts, RunFacts.LoadedVolts }.Select(f => (f.Label.ToLowerInvariant(), run.Show(f) is { Length: > 0 } shown ? shown : "not read"))]);
}
