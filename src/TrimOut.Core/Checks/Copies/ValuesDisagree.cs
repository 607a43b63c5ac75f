using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Copies;

/// <summary>No detail holds two values from two laptops.</summary>
/// <remarks>
/// <para>Why: after a merge one of them is shown, and it may be the wrong one.</para>
/// <para>To clear: look at the window, and type the value that is right.</para>
/// </remarks>
public sealed class ValuesDisagree : SubjectCheck
{
    /// <summary>Its id.</summary>
    public const string Id = "values-disagree";

    private static readonly Message Differ = new("{0}: {1}. The last is shown.");
    private static readonly Message Or = new("{0}, or {1}");
    private static readonly Message FindOut = new("Find out which is right, and type it.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new(Id, "Two laptops have different values", Severity.Caution, Phase.WalkThrough,
        new Source(Source.CommonPractice, "one value in force for each detail"));

    internal override IEnumerable<string> SubjectIds(House house) => house.Present.Select(i => i.Id);

    internal override Subject Find(House house, string id) => new AnyItem(house, house.Find(id)!);

    internal override IEnumerable<CheckResult> RunOn(Subject subject) =>
        Disagreement.Of(subject.Item).Select(d => new CheckResult(Info, d.Item, new Outcome.Found(
        Differ.With(Arg.Label(d.Fact, small: false), d.Heads.Select(d.Words).Aggregate((said, next) => Or.With(said, next)))
            .StandingFor(d.Key is { } key ? [Arg.Typed(key)] : []), FindOut,
        FieldRef.To(d.Item, d.Fact, d.Key))));
}
