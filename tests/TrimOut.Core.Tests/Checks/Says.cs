using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A rule that says what a test wants it to say.</summary>
internal sealed class Says<T>(string id, Subjects<T> subjects, Severity severity, Phase phase, Func<T, Outcome> judge) : Check<T>(subjects)
    where T : Subject
{
    public override CheckInfo Info { get; } = new(id, id, severity, phase, new Source(Source.CommonPractice, "none"));

    public override Outcome Judge(T subject) => judge(subject);
}
