using TrimOut.Core.Checks;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>What a test says of a check: it is fine, it finds a fault, it lacks a fact, or it has nothing to say.</summary>
internal static class Holding
{
    /// <summary>The rule holds for a unit, its run or its window.</summary>
    public static void Fine(this TestJob job, ICheck check, string tag) => Assert.IsType<Outcome.Fine>(job.Judge(check, tag));

    /// <summary>The rule is broken; gives what was found, to be held against words and figures.</summary>
    public static Said Fault(this TestJob job, ICheck check, string tag) => Said.Of(Assert.IsType<Outcome.Found>(job.Judge(check, tag)), job.House);

    /// <summary>A fact is missing, and it is this one.</summary>
    public static void Lacks(this TestJob job, ICheck check, string tag, string missing) =>
        Assert.Equal(missing, Assert.IsType<Outcome.NotChecked>(job.Judge(check, tag)).Missing.In(job.House));

    /// <summary>The rule does not apply.</summary>
    public static void Silent(this TestJob job, ICheck check, string tag) => Assert.IsType<Outcome.DoesNotApply>(job.Judge(check, tag));

    /// <summary>What a check says of something with a name: a panel, a hub, a remote, a cable, the house.</summary>
    public static Outcome Of(this TestJob job, ICheck check, string name) => check.Run(job.House).Single(r => job.House.NameOf(r.Subject) == name).Outcome;

    /// <summary>What a check finds of something with a name.</summary>
    public static Said FaultOf(this TestJob job, ICheck check, string name) => Said.Of(Assert.IsType<Outcome.Found>(job.Of(check, name)), job.House);

    /// <summary>What a check misses of something with a name.</summary>
    public static string MissingOf(this TestJob job, ICheck check, string name) =>
        Assert.IsType<Outcome.NotChecked>(job.Of(check, name)).Missing.In(job.House);
}
