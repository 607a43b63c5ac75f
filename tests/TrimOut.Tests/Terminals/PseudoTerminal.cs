using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace TrimOut.Tests.Terminals;

/// <summary>The real program in a real pseudo-terminal, which util-linux's <c>script</c> makes.</summary>
internal sealed class PseudoTerminal : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>The end of what came that a failure shows.</summary>
    private const int MostShown = 6_000;

    private readonly StringBuilder _seen = new();
    private readonly Process _script;
    private readonly Task _reading;
    private readonly string _folder;

    public PseudoTerminal(string folder, int columns, int rows, string environment, params string[] arguments)
    {
        _folder = folder;
        var words = string.Join(' ', arguments.Select(a => $"'{a}'"));
        var line = $"cd '{folder}'; stty rows {rows.ToString(CultureInfo.InvariantCulture)} cols {columns.ToString(CultureInfo.InvariantCulture)}; " +
            $"tty > tty; stty -g > before; env {environment} XDG_DATA_HOME='{folder}/data' sh -c 'echo $$ > pid; " +
            $"exec \"{RunTrimOut.Program}\" {words.Replace("'", "\"", StringComparison.Ordinal)}'; echo $? > code; stty -g > after";
        var start = new ProcessStartInfo("script", ["-qfec", line, "/dev/null"])
        { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        _script = Process.Start(start)!;
        _reading = Task.Run(Read);
    }

    /// <summary>Everything that came out so far.</summary>
    public string Seen
    {
        get
        {
            lock (_seen)
                return _seen.ToString();
        }
    }

    public string? Note(string name) => File.Exists(Path.Combine(_folder, name)) ? File.ReadAllText(Path.Combine(_folder, name)).Trim() : null;

    /// <summary>Forgets what came out, so that only what comes now counts.</summary>
    public PseudoTerminal Forget()
    {
        lock (_seen)
            _seen.Clear();
        return this;
    }

    public PseudoTerminal Send(string keys)
    {
        _script.StandardInput.Write(keys);
        _script.StandardInput.Flush();
        return this;
    }

    /// <summary>Waits until nothing more comes for a while.</summary>
    /// <param name="quiet">For how long nothing comes; it is waited for twice as long where nothing came at all.</param>
    public PseudoTerminal Settle(TimeSpan quiet)
    {
        var (clock, came, since) = (Stopwatch.StartNew(), Seen.Length, TimeSpan.Zero);
        var any = false;
        while (clock.Elapsed < since + (any ? quiet : quiet * 2))
        {
            Thread.Sleep(2);
            if (Seen.Length == came)
                continue;
            (any, came, since) = (true, Seen.Length, clock.Elapsed);
        }
        return this;
    }

    private static string Readable(string seen) => seen[^Math.Min(seen.Length, MostShown)..].Replace('\u001b', '^');

    public PseudoTerminal WaitFor(string text)
    {
        var clock = Stopwatch.StartNew();
        while (!Seen.Contains(text, StringComparison.Ordinal))
        {
            Assert.True(clock.Elapsed < Patience, $"\"{text}\" did not come. What came, with ^ for escape:\n{Readable(Seen)}\n{Waiting()}");
            Thread.Sleep(20);
        }
        return this;
    }

    public void Resize(int columns, int rows) =>
        Sh($"stty -F {Note("tty")} rows {rows.ToString(CultureInfo.InvariantCulture)} cols {columns.ToString(CultureInfo.InvariantCulture)}");

    public void Signal(string name) => Sh($"kill -{name} {Note("pid")}");

    /// <summary>Closes the terminal over the program's head, as a window that is closed does.</summary>
    public void Close() => _script.Kill();

    /// <summary>Whether the program has ended.</summary>
    public bool Gone => !Directory.Exists($"/proc/{Note("pid")}");

    public int WaitForExit()
    {
        Assert.True(_script.WaitForExit(Patience), $"It did not end. What came:\n{Seen}");
        // A quick program is gone before all that it said was read.
        _reading.Wait(TimeSpan.FromSeconds(5));
        return int.Parse(Note("code")!, CultureInfo.InvariantCulture);
    }

    public void Dispose()
    {
        if (!_script.HasExited)
            _script.Kill(entireProcessTree: true);
        _script.Dispose();
    }

    // A StreamReader goes on to read, and holds back what it has, where what came fills its buffer to the byte.
    private void Read()
    {
        var (bytes, chars, decoder) = (new byte[4096], new char[4097], Encoding.UTF8.GetDecoder());
        var stream = _script.StandardOutput.BaseStream;
        for (var count = stream.Read(bytes); count > 0; count = stream.Read(bytes))
        {
            var read = decoder.GetChars(bytes.AsSpan(0, count), chars, flush: false);
            lock (_seen)
                _seen.Append(chars, 0, read);
        }
    }

    /// <summary>In which calls of the system the program and its terminal wait, thread by thread, for a failure to show.</summary>
    private string Waiting() => string.Join('\n', new[] { ("script", _script.Id.ToString(CultureInfo.InvariantCulture)), ("program", Note("pid") ?? "0") }
        .SelectMany(p => Threads(p.Item2).Select(t => $"{p.Item1} {Path.GetFileName(t)}: {Said(t, "comm")} in {Said(t, "wchan")}, {Said(t, "syscall")}")));

    private static string[] Threads(string pid) => Directory.Exists($"/proc/{pid}/task") ? Directory.GetDirectories($"/proc/{pid}/task") : [];

    private static string Said(string thread, string what)
    {
        try
        {
            return File.ReadAllText(Path.Combine(thread, what)).Trim();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "?";
        }
    }

    private static void Sh(string line)
    {
        using var shell = Process.Start("sh", ["-c", line]);
        shell.WaitForExit();
    }
}
