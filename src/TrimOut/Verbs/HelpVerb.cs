using System.CommandLine;
using TrimOut.Shells;

namespace TrimOut.Verbs;

/// <summary><c>trimout help</c>: the same as --help.</summary>
internal static class HelpVerb
{
    public static Command Build(RootCommand root)
    {
        var of = new Argument<string?>("COMMAND") { Description = "The command to explain; all of them when left out.", Arity = ArgumentArity.ZeroOrOne };
        var man = new Option<bool>("--man") { Description = "Write all of it as a manual page, for man -l." };
        var help = new Command("help", "Explain a command.") { of, man };
        help.SetAction(parsed =>
        {
            if (parsed.GetValue(man))
            {
                Console.Out.Write(ManPage.Of(root, ProgramVersion.Short));
                return ExitCode.Fine;
            }
            var name = parsed.GetValue(of);
            if (name is not null && root.Subcommands.All(c => c.Name != name))
                throw new VerbException(ExitCode.Usage, $"There is no command {name}. There are: {string.Join(", ", root.Subcommands.Select(c => c.Name))}.");
            return root.Parse(name is null ? ["--help"] : [name, "--help"]).Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        });
        return help;
    }
}
