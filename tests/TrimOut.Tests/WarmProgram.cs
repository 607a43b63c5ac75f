using System.Collections.Concurrent;
using System.Diagnostics;
using System.IO.Pipes;
using System.Text.Json;
using TrimOut.Warm;

namespace TrimOut.Tests;

/// <summary>Programs that wait for a command line, as many as run at a time. What dies or hangs ends its test, and another takes its place.</summary>
internal sealed class WarmProgram : IDisposable
{
    private static readonly ConcurrentBag<WarmProgram> Waiting = [];

    private readonly NamedPipeServerStream _pipe;
    private readonly Process _process;
    private readonly StreamReader _from;
    private readonly StreamWriter _to;

    private WarmProgram()
    {
        var name = $"trimout-{Guid.NewGuid():n}";
        _pipe = new NamedPipeServerStream(name, PipeDirection.InOut, 1, PipeTransmissionMode.Byte, PipeOptions.Asynchronous);
        var program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "TrimOut.Warm.exe" : "TrimOut.Warm");
        _process = Process.Start(new ProcessStartInfo(program, [name])
        { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
        _process.StandardInput.Close();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        _pipe.WaitForConnection();
        (_from, _to) = (new StreamReader(_pipe), new StreamWriter(_pipe) { AutoFlush = true });
    }

    public static Ended Run(string folder, string data, string input, string[] arguments)
    {
        var program = Waiting.TryTake(out var waits) ? waits : new WarmProgram();
        var ended = program.Carry(new Asked(folder, data, arguments, input));
        Waiting.Add(program);
        return ended;
    }

    private Ended Carry(Asked asked)
    {
        _to.WriteLine(JsonSerializer.Serialize(asked));
        var read = _from.ReadLineAsync();
        var hung = !read.Wait(TimeSpan.FromMinutes(2));
        if (!hung && read.Result is { } line)
        {
            var answered = JsonSerializer.Deserialize<Answered>(line)!;
            return new Ended(answered.Code, answered.Output, answered.Error);
        }
        Dispose();
        throw new InvalidOperationException($"trimout {string.Join(' ', asked.Arguments)} {(hung ? "hung" : "died")}.");
    }

    public void Dispose()
    {
        _process.Kill();
        _process.Dispose();
        _from.Dispose();
        _to.Dispose();
        _pipe.Dispose();
    }
}
