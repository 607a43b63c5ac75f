using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>One rule, held against a house.</summary>
/// <remarks>A check may read whatever it likes of the house that it is given; what it reads is noted, and it is held again when that changes.</remarks>
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
public sealed record CheckResult(CheckInfo Check, Item Subject, Outcome Outcome)
{
    /// <summary>A result for each fault that was found of one subject, and one for any other outcome.</summary>
    internal static IEnumerable<CheckResult> Each(CheckInfo check, Item subject, Outcome outcome) => outcome is Outcome.Found found
        ? found.Each.Select(f => new CheckResult(check, subject, f))
        : [new CheckResult(check, subject, outcome)];
}

/// <summary>A rule that is held against the house as a whole: it compares all with all, or says something of many at once.</summary>
public abstract class HouseCheck : ICheck
{
    /// <inheritdoc/>
    public abstract CheckInfo Info { get; }

    /// <inheritdoc/>
    public abstract IEnumerable<CheckResult> Run(House house);

    /// <summary>A result about an item.</summary>
    protected CheckResult Result(Subject subject, Outcome outcome) => new(Info, subject.Item, outcome);

    /// <summary>A result for each fault of an item.</summary>
    protected IEnumerable<CheckResult> Results(Subject subject, Outcome outcome) => CheckResult.Each(Info, subject.Item, outcome);
}

/// <summary>A rule that is held against each subject of one sort by itself, with all that it reads around it.</summary>
public abstract class SubjectCheck : ICheck
{
    /// <inheritdoc/>
    public abstract CheckInfo Info { get; }

    /// <summary>The ids of the subjects of a house that the rule is held against, in the order in which they are reported.</summary>
    internal abstract IEnumerable<string> SubjectIds(House house);

    /// <summary>A subject of a house by its id.</summary>
    internal abstract Subject Find(House house, string id);

    /// <summary>What the rule says of one of them.</summary>
    internal abstract IEnumerable<CheckResult> RunOn(Subject subject);

    /// <summary>The same, of which only what is needed is kept.</summary>
    internal virtual Judged JudgedOn(Subject subject) => Judged.Of(RunOn(subject));

    /// <inheritdoc/>
    public IEnumerable<CheckResult> Run(House house) => SubjectIds(house).SelectMany(id => RunOn(Find(house, id)));
}

/// <summary>A rule about one sort of subject.</summary>
/// <typeparam name="T">The sort of subject.</typeparam>
/// <param name="subjects">Which ones it is held against.</param>
public abstract class Check<T>(Subjects<T> subjects) : SubjectCheck
    where T : Subject
{
    /// <summary>Holds the rule against one subject.</summary>
    public abstract Outcome Judge(T subject);

    internal sealed override IEnumerable<string> SubjectIds(House house) => subjects.Ids(house);

    internal sealed override Subject Find(House house, string id) => subjects.Find(house, id);

    internal sealed override Judged JudgedOn(Subject subject) => Judged.Of(Info, subject.Item, Judge((T)subject));

    internal sealed override IEnumerable<CheckResult> RunOn(Subject subject) =>
        Judge((T)subject) is var outcome and not Outcome.DoesNotApply ? CheckResult.Each(Info, subject.Item, outcome) : [];
}

/// <summary>A rule about each unit that is to be hung.</summary>
public abstract class UnitCheck() : Check<Unit>(Subjects.Units);

/// <summary>A rule about each home run.</summary>
public abstract class RunCheck() : Check<HomeRun>(Subjects.Runs);

/// <summary>A rule about each window that gets a covering.</summary>
public abstract class WindowCheck() : Check<Window>(Subjects.CoveredWindows);
