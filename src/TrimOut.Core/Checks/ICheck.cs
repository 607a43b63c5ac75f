using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>One rule, held against a house.</summary>
public interface ICheck
{
    /// <summary>What it is.</summary>
    CheckInfo Info { get; }

    /// <summary>One result per subject that it applies to.</summary>
    IEnumerable<CheckResult> Run(House house);
}

/// <summary>What one check says of one subject.</summary>
/// <param name="Check">The check.</param>
/// <param name="Subject">The item it is about.</param>
/// <param name="Outcome">What it found.</param>
public sealed record CheckResult(CheckInfo Check, Item Subject, Outcome Outcome);

/// <summary>A rule that looks at one window with its units and runs, at one panel or at the house, and at the kit, and at nothing else.</summary>
/// <remarks>Its results stay as they are while none of these changes; what compares or counts is a <see cref="WideCheck"/>.</remarks>
public abstract class LocalCheck : ICheck
{
    /// <inheritdoc/>
    public abstract CheckInfo Info { get; }

    /// <summary>The subjects of a house that the rule is held against, in walking order.</summary>
    internal abstract IEnumerable<Subject> SubjectsOf(House house);

    /// <summary>What the rule says of one of them.</summary>
    internal abstract ImmutableArray<CheckResult> RunOn(Subject subject);

    /// <inheritdoc/>
    public IEnumerable<CheckResult> Run(House house) => SubjectsOf(house).SelectMany(s => RunOn(s));
}

/// <summary>A rule about every item by itself, whatever it is.</summary>
public abstract class ItemCheck : ICheck
{
    /// <inheritdoc/>
    public abstract CheckInfo Info { get; }

    /// <summary>What the rule says of one item, by its values and the names of the items that these point at.</summary>
    internal abstract IEnumerable<CheckResult> RunOn(House house, Item item);

    /// <inheritdoc/>
    public IEnumerable<CheckResult> Run(House house) => house.Present.SelectMany(i => RunOn(house, i));
}

/// <summary>A rule about one sort of subject.</summary>
/// <typeparam name="T">The sort of subject.</typeparam>
public abstract class Check<T> : LocalCheck
    where T : Subject
{
    /// <summary>The subjects of a house that the rule is held against.</summary>
    protected abstract IEnumerable<T> Subjects(House house);

    /// <summary>Holds the rule against one subject.</summary>
    public abstract Outcome Judge(T subject);

    internal sealed override IEnumerable<Subject> SubjectsOf(House house) => Subjects(house);

    internal sealed override ImmutableArray<CheckResult> RunOn(Subject subject) =>
        Judge((T)subject) is var outcome and not Outcome.DoesNotApply ? [new CheckResult(Info, subject.Item, outcome)] : [];
}

/// <summary>A rule about each unit that is to be hung.</summary>
public abstract class UnitCheck : Check<Unit>
{
    /// <inheritdoc/>
    protected sealed override IEnumerable<Unit> Subjects(House house) => house.Units;
}

/// <summary>A rule about each home run.</summary>
public abstract class RunCheck : Check<HomeRun>
{
    /// <inheritdoc/>
    protected sealed override IEnumerable<HomeRun> Subjects(House house) => house.Runs;
}

/// <summary>A rule about each window that gets a covering.</summary>
public abstract class WindowCheck : Check<Window>
{
    /// <inheritdoc/>
    protected sealed override IEnumerable<Window> Subjects(House house) => house.Windows.Where(w => !w.LeftOut);
}
