using System.CommandLine;
using TrimOut.Core.History;

namespace TrimOut;

internal static class Program
{
    private static int Main(string[] arguments)
    {
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
        catch (VerbException end)
        {
            Console.Error.WriteLine($"trimout: {end.Message}");
            return end.Code;
        }
        catch (HouseStoreException house)
        {
            Console.Error.WriteLine($"trimout: {house.Message}");
            return ExitCode.Of(house.Fault);
        }
        catch (UnauthorizedAccessException refused)
        {
            Console.Error.WriteLine($"trimout: {refused.Message}");
            return ExitCode.NoRights;
        }
        catch (IOException disk)
        {
            Console.Error.WriteLine($"trimout: {disk.Message}");
            return ExitCode.Disk;
        }
    }
}
