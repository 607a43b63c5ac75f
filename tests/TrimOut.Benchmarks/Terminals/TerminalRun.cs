using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TrimOut.Benchmarks.Terminals;

/// <summary>A program in a pseudo-terminal of 80 x 24, with what it writes timed and counted.</summary>
internal sealed partial class TerminalRun : IDisposable
{
    private static readonly TimeSpan TooLong = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(250);

    private readonly Process _script;
    private readonly string _pidFile;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly Lock _gate = new();
    private readonly StringBuilder _seen = new();
    private long _bytes;
    private long _allBytes;
    private TimeSpan _lastByte;

    public TerminalRun(string folder, string command)
    {
        _pidFile = Path.Combine(folder, Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture));
        var line = $"stty rows 24 cols 80; env TERM=xterm-256color LANG=C.UTF-8 XDG_DATA_HOME='{folder}' sh -c 'echo $$ > {_pidFile}; exec {command}'";
        _script = Process.Start(new ProcessStartInfo("script", ["-qfec", line, "/dev/null"]) { RedirectStandardInput = true, RedirectStandardOutput = true })!;
        var reader = new Thread(Read) { IsBackground = true };
        reader.Start();
    }

    /// <summary>From the start until the text that <see cref="FirstPaint"/> waits for was on the screen, whatever came after it.</summary>
    public TimeSpan FirstSight { get; private set; }

    /// <summary>From the start until the text is on the screen and the terminal is quiet.</summary>
    public TimeSpan FirstPaint(string text)
    {
        var looked = 0L;
        while (_clock.Elapsed < TooLong)
        {
            Thread.Sleep(1);
            lock (_gate)
            {
                if (_bytes == looked)
                    continue;
                looked = _bytes;
                if (!_seen.ToString().Contains(text, StringComparison.Ordinal))
                    continue;
                FirstSight = _lastByte;
                break;
            }
        }
        return _clock.Elapsed < TooLong ? Settled() : throw new InvalidOperationException($"\"{text}\" did not come on the screen. What came: {_seen}");
    }

    /// <summary>Sends a key; how long until the last byte that came of it, and how many came.</summary>
    public (TimeSpan Time, long Bytes) Key(string keys)
    {
        long before;
        TimeSpan sent;
        lock (_gate)
        {
            before = _bytes;
            sent = _clock.Elapsed;
        }
        _script.StandardInput.Write(keys);
        _script.StandardInput.Flush();
        var last = Settled();
        lock (_gate)
            return (last - sent, _bytes - before);
    }

    /// <summary>Processor time and bytes over a while in which nothing is done.</summary>
    public (double Percent, long Bytes) Idle(TimeSpan time)
    {
        var (cpu, bytes) = (Processor(), _allBytes);
        Thread.Sleep(time);
        return ((Processor() - cpu).TotalSeconds / time.TotalSeconds * 100, _allBytes - bytes);
    }

    public void Dispose()
    {
        if (!_script.HasExited)
            _script.Kill(entireProcessTree: true);
        _script.Dispose();
    }

    private TimeSpan Settled()
    {
        var begun = _clock.Elapsed;
        while (true)
        {
            TimeSpan last;
            lock (_gate)
                last = _lastByte;
            if (_clock.Elapsed - (last > begun ? last : begun) > Quiet)
                return last;
            Thread.Sleep(5);
        }
    }

    private TimeSpan Processor()
    {
        using var process = Process.GetProcessById(int.Parse(File.ReadAllText(_pidFile), CultureInfo.InvariantCulture));
        return process.TotalProcessorTime;
    }

    private void Read()
    {
        var buffer = new byte[65536];
        var stream = _script.StandardOutput.BaseStream;
        for (var count = stream.Read(buffer); count > 0; count = stream.Read(buffer))
        {
            var text = Encoding.UTF8.GetString(buffer, 0, count);
            lock (_gate)
            {
                _allBytes += count;
                // A library that moves the cursor at every beat would never be quiet: that is counted at rest, and not to a key.
                if (CursorOnly().IsMatch(text))
                    continue;
                _lastByte = _clock.Elapsed;
                _bytes += count;
                _seen.Append(text);
            }
        }
    }

    [GeneratedRegex("^(\u001b\\[\\?25[lh]|\u001b\\[\\d+;\\d+H|\u001b\\[\\d q)+$")]
    private static partial Regex CursorOnly();
}
