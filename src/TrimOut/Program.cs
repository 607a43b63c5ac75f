using System.CommandLine;
using System.CommandLine.Parsing;
using TrimOut.Desks;
using TrimOut.HouseFile.Files;

namespace TrimOut;

internal static class Program
{
    // Built once: an option that several verbs share goes through all its verbs each time that it is put into another one.
    private static readonly Lazy<RootCommand> Verbs = new(CommandLine.Build);

    private static int Main(string[] arguments)
    {
        Streams.Guard();
        return Run(arguments);
    }

    /// <summary>Carries out a command line on the streams as they are, and says on which code to end.</summary>
    internal static int Run(string[] arguments) => Guarded(() => CarryOut(arguments), Console.Error);

    /// <summary>
    /// Runs something and says on which code to end: what the user or the disk did wrong has its own, a fault in TrimOut itself is always <see
    /// cref="ExitCode.Fault"/>.
    /// </summary>
    internal static int Guarded(Func<int> run, TextWriter error)
    {
        try
        {
            return run();
        }
        catch (Exception failed) when (ExitCode.Of(failed) is { } code)
        {
            error.WriteLine($"trimout: {failed.Message}");
            if (WayBack.From(failed) is { } way)
                error.WriteLine(way);
            return code;
        }
        catch (Exception fault)
        {
            error.WriteLine($"trimout: stopped by a fault of its own; whatever was called saved or written is. {fault}");
            return ExitCode.Fault;
        }
    }

    private static int CarryOut(string[] arguments)
    {
        HouseSource.Begin();
        var parsed = Verbs.Value.Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count == 0 && EmptyOf(parsed.CommandResult) is { } empty)
        {
            Console.Error.WriteLine($"trimout: {empty} is empty. Say what it is, or leave it out where it may be left out.");
            Console.Error.WriteLine("For help: trimout help");
            return ExitCode.Usage;
        }
        if (parsed.Errors.Count == 0)
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        foreach (var error in parsed.Errors)
            Console.Error.WriteLine($"trimout: {error.Message}");
        if (parsed.UnmatchedTokens is [var first, ..] && first.EndsWith(".trimout", StringComparison.OrdinalIgnoreCase))
            Console.Error.WriteLine($"To open a house: trimout open {ShellWord.Of(first)}");
        Console.Error.WriteLine("For help: trimout help");
        return ExitCode.Usage;
    }

    /// <summary>What has nothing as its value: no file, no name and no number is called that. Null where all have something.</summary>
    private static string? EmptyOf(CommandResult given) => given.Children.Where(c => c.Tokens.Any(t => string.IsNullOrWhiteSpace(t.Value))).Select(c => c switch
    {
        ArgumentResult argument => argument.Argument.Name,
        OptionResult option => option.Option.Name,
        _ => null,
    }).FirstOrDefault(n => n is not null);
}
