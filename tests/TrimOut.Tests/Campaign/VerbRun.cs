namespace TrimOut.Tests.Campaign;

/// <summary>Runs the program's own entry within this process, as a shell would run it.</summary>
internal static class VerbRun
{
    /// <summary>What takes longer hangs.</summary>
    public static readonly TimeSpan TooLong = TimeSpan.FromSeconds(60);

    /// <summary>How a run ended.</summary>
    /// <param name="Code">The exit code.</param>
    /// <param name="Output">Standard output.</param>
    /// <param name="Error">Standard error.</param>
    /// <param name="Crash">What it died of; null when it did not.</param>
    /// <param name="Hung">Whether it never ended.</param>
    internal sealed record Ended(int Code, string Output, string Error, string? Crash = null, bool Hung = false)
    {
        /// <summary>Whether it died, or ended with a fault of its own, which the program catches to say so.</summary>
        public bool IsCrash => Crash is not null || Code == ExitCode.Fault;
    }

    public static Ended Run(params string[] arguments) => RunWith("", arguments);

    /// <summary>The same with something on standard input.</summary>
    public static Ended RunWith(string input, params string[] arguments)
    {
        using var from = new StringReader(input);
        using var output = new StringWriter();
        using var error = new StringWriter();
        var (wasOut, wasError, wasIn) = (Console.Out, Console.Error, Console.In);
        Console.SetOut(output);
        Console.SetError(error);
        Console.SetIn(from);
        try
        {
            var run = Task.Run(() => Program.Run(arguments));
            return run.Wait(TooLong) ? new Ended(run.Result, output.ToString(), error.ToString()) : new Ended(-1, "", "", Hung: true);
        }
        catch (AggregateException failed)
        {
            return new Ended(-1, output.ToString(), error.ToString(), failed.InnerException!.ToString());
        }
        finally
        {
            Console.SetOut(wasOut);
            Console.SetError(wasError);
            Console.SetIn(wasIn);
        }
    }
}
