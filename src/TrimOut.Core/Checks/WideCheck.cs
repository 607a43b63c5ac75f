using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>A rule that compares items with each other, or counts what many share; the other checks look at one window and the kit.</summary>
public abstract class WideCheck : ICheck
{
    /// <inheritdoc/>
    public abstract CheckInfo Info { get; }

    /// <summary>The facts that its results depend on: as long as none of them changes and no item comes or goes, nor do the results.</summary>
    public abstract ImmutableArray<Fact> Watches { get; }

    /// <inheritdoc/>
    public abstract IEnumerable<CheckResult> Run(House house);

    /// <summary>A result about an item.</summary>
    protected CheckResult Result(Subject subject, Outcome outcome) => new(Info, subject.Item, outcome);
}
