using System.IO.Pipes;
using System.Text;
using System.Text.Json;

namespace TrimOut.Warm;

/// <summary>
/// The real program, kept warm: carries out one command line after the other, each in its folder and on streams of its own, as a shell would run it. A test
/// then waits for what a verb does, not for a runtime to start.
/// </summary>
internal static class Program
{
    private static void Main(string[] arguments)
    {
        using var pipe = new NamedPipeClientStream(".", arguments[0], PipeDirection.InOut);
        pipe.Connect();
        using var from = new StreamReader(pipe, Encoding.UTF8);
        using var to = new StreamWriter(pipe) { AutoFlush = true };
        while (from.ReadLine() is { } line)
            to.WriteLine(JsonSerializer.Serialize(Answer(JsonSerializer.Deserialize<Asked>(line)!)));
    }

    private static Answered Answer(Asked asked)
    {
        Environment.CurrentDirectory = asked.Folder;
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", asked.Data);
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(asked.Input));
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        Streams.Guard(input, output, error);
        var code = TrimOut.Program.Run(asked.Arguments);
        return new Answered(code, Encoding.UTF8.GetString(output.ToArray()), Encoding.UTF8.GetString(error.ToArray()));
    }
}
