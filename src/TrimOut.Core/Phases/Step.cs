using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Phases;

/// <summary>One thing to do in a phase, with the facts that show that it was done.</summary>
/// <param name="Id">Its stored name, kebab-case, never reused.</param>
/// <param name="Phase">The phase it belongs to.</param>
/// <param name="Subject">Whether it is done per unit, per panel or once for the house.</param>
/// <param name="Label">What to do, short.</param>
/// <param name="Cue">How to do it, and the caution that goes with it.</param>
/// <param name="Evidence">The facts that must be there: of the unit, its window or its home run; of the panel; of the house.</param>
public sealed record Step(string Id, Phase Phase, ItemKind Subject, string Label, string Cue, ImmutableArray<Fact> Evidence)
{
    /// <summary>The field that holds what was said of it.</summary>
    public string Field { get; } = $"{StepMark.FactName}:{Id}";

    /// <summary>Whether a unit has this step at all; steps of panels and the house are always there.</summary>
    public Func<Unit, bool> Applies { get; init; } = _ => true;

    /// <summary>Whether nobody can tell yet if a unit has it, because a value is blank; then it is asked all the same, for a blank is no "no".</summary>
    public Func<Unit, bool> Undecided { get; init; } = _ => false;

    /// <summary>The version of the step list from which on it is asked while that is undecided.</summary>
    public int UndecidedSince { get; init; } = 1;

    /// <summary>The version from which on it is asked of a unit, a panel or the house.</summary>
    public int SinceFor(Subject subject) => UndecidedSince > Since && subject is Unit unit && Undecided(unit) ? UndecidedSince : Since;

    /// <summary>The version of the step list that it came with: one more than <see cref="StepList.Version"/> was before.</summary>
    public int Since { get; init; } = 1;

    /// <summary>Evidence that a later version added to it, each with that version; all else came with the step.</summary>
    public ImmutableDictionary<Fact, int> Later { get; init; } = ImmutableDictionary<Fact, int>.Empty;

    /// <summary>Evidence that not everything that has the step needs, each with what tells whether it does.</summary>
    public ImmutableDictionary<Fact, Func<Subject, bool>> OnlyWhere { get; init; } = ImmutableDictionary<Fact, Func<Subject, bool>>.Empty;

    /// <summary>Whether a fact of its evidence is needed of a unit, a panel or the house.</summary>
    public bool Wants(Fact evidence, Subject subject) => !OnlyWhere.TryGetValue(evidence, out var needs) || needs(subject);

    /// <summary>The version that a fact of its evidence came with.</summary>
    public int SinceOf(Fact evidence) => Later.GetValueOrDefault(evidence, Since);

    /// <summary>The versions that it and its evidence came with.</summary>
    internal IEnumerable<int> Versions => Later.Values.Prepend(Since).Append(AlsoSince).Append(LaterMissingSince).Append(UndecidedSince);

    /// <summary>The version that <see cref="AlsoMissing"/> came with, where that is later than the step's.</summary>
    public int AlsoSince { get; init; } = 1;

    /// <summary>Evidence that is not a single fact: what is missing of it, or null when nothing is.</summary>
    public Func<Subject, Sentence?> AlsoMissing { get; init; } = _ => null;

    /// <summary>Further evidence that is not a single fact, which a later version added; null where none is missing.</summary>
    public Func<Subject, Sentence?> LaterMissing { get; init; } = _ => null;

    /// <summary>The version that <see cref="LaterMissing"/> came with.</summary>
    public int LaterMissingSince { get; init; } = 1;
}
