using System.CommandLine;
using TrimOut.Shells;

namespace TrimOut.Verbs;

/// <summary><c>trimout completion</c>: what a shell needs to complete the other verbs.</summary>
internal static class CompletionVerb
{
    private static readonly (string Shell, Func<IReadOnlyList<VerbTable>, string> Script)[] Shells =
        [("bash", Bash.Of), ("zsh", Zsh.Of), ("fish", Fish.Of), ("powershell", PowerShell.Of)];

    public static Command Build(RootCommand root)
    {
        var of = new Argument<string>("SHELL") { Description = $"One of {string.Join(", ", Shells.Select(s => s.Shell))}." };
        of.AcceptOnlyFromAmong([.. Shells.Select(s => s.Shell)]);
        var verb = new Command("completion", "Write what a shell needs to complete these commands, their options and their values.") { of };
        verb.SetAction(parsed =>
        {
            Console.Out.Write(Shells.Single(s => s.Shell == parsed.GetRequiredValue(of)).Script(VerbTable.Of(root)).ReplaceLineEndings("\n"));
            return ExitCode.Fine;
        });
        return verb;
    }
}
