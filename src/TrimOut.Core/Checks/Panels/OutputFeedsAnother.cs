using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>The output that is written beside a run feeds its window.</summary>
/// <remarks>
/// <para>Why: two runs that are landed on each other's output read well at both windows, and the next person switches off the wrong one.</para>
/// <para>To clear: find which plug makes this window go dead, and write that output; or change the two runs over with the panel off.</para>
/// </remarks>
public sealed class OutputFeedsAnother : RunCheck
{
    /// <summary>Its id.</summary>
    public const string Id = "output-feeds-another";

    private static readonly Message Another = new("With the plug of {0} pulled another window went dead.", "another");
    private static readonly Message NoWindow = new("With the plug of {0} pulled no window went dead.", "none");
    private static readonly Message TheOutput = new("its output");
    private static readonly Message FindIt =
        new("With the panel off pull one low-voltage plug, switch it on, and see which window stays dead; so on until it is this one. Write that output " +
            "here, or change the two over with the panel off.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new(Id, "Output does not feed the window it is written for", Severity.Stop, Phase.Power,
        new Source(Source.CommonPractice, "this output alone off = this window dead"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject) => subject.Item.Get(RunFacts.WentDead) switch
    {
        null => NotChecked.WhereAsked(subject.Unit, "output-proved", subject, RunFacts.WentDead),
        WentDead.ThisWindow => new Outcome.Fine(),
        WentDead.AnotherWindow => Found(subject, Another),
        _ => Found(subject, NoWindow),
    };

    private static Outcome.Found Found(HomeRun run, Message message) =>
        new(message.With(run is { Panel: { } panel, Output: { } output } ? OutputOf.With(Arg.Name(panel), output) : TheOutput.With()), FindIt,
            FieldRef.To(run.Item, RunFacts.WentDead));

    private static readonly Message OutputOf = new("{0} output {1}");
}
