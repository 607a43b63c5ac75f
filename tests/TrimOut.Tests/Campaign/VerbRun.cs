using System.Diagnostics;

namespace TrimOut.Tests.Campaign;

/// <summary>Runs the program's own entry within this process, as a shell would run it; another build of it, where one is named, as a program.</summary>
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
        if (RunTrimOut.Elsewhere is { } program)
            return RunOther(program, input, arguments);
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

    private static Ended RunOther(string program, string input, string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(program, arguments)
        { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var (output, error) = (run.StandardOutput.ReadToEndAsync(), run.StandardError.ReadToEndAsync());
        try
        {
            run.StandardInput.Write(input);
            run.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended without reading all of it.
        }
        if (!run.WaitForExit(TooLong))
        {
            run.Kill();
            return new Ended(-1, "", "", Hung: true);
        }
        // From 128 on a signal ended it.
        return new Ended(run.ExitCode, output.Result, error.Result, run.ExitCode > 128 && run.ExitCode != ExitCode.Stopped ? error.Result : null);
    }
}
