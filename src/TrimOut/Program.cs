using System.CommandLine;

namespace TrimOut;

internal static class Program
{
    private static int Main(string[] arguments)
    {
        Streams.Guard();
        try
        {
            var parsed = CommandLine.Build().Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0)
            {
                foreach (var error in parsed.Errors)
                    Console.Error.WriteLine($"trimout: {error.Message}");
                Console.Error.WriteLine("For help: trimout help");
                return ExitCode.Usage;
            }
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (Exception failed) when (ExitCode.Of(failed) is { } code)
        {
            Console.Error.WriteLine($"trimout: {failed.Message}");
            return code;
        }
    }
}
