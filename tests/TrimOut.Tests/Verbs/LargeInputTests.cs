using System.Diagnostics;
using System.Globalization;
using TrimOut.Tests.Terminals;
using Xunit.Abstractions;

namespace TrimOut.Tests.Verbs;

/// <summary>Texts from outside that are larger than any house's are refused or read in bounded memory by the real program, and can be stopped.</summary>
public sealed class LargeInputTests(ITestOutputHelper output) : IDisposable
{
    private const int Megabyte = 1 << 20;

    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    /// <summary>Each way in, with what is too large for it, the code that it ends with, and the memory that it may take, in MiB.</summary>
    public static TheoryData<string, string, int, int> WaysIn => new()
    {
        // A million rows, and a cell of 100 MB.
        { "rows", "import elm.trimout big", 65, 400 },
        { "cell", "import elm.trimout big", 65, 400 },
        // A history with a line of 100 MB, a million times the same wrong line, and one whose house would be larger than any.
        { "line", "restore new big", 65, 400 },
        { "wrong", "restore new big", 65, 400 },
        { "line", "merge elm.trimout big", 65, 400 },
        { "line", "restore new - < big", 65, 400 },
        { "line", "check big.jsonl", 65, 400 },
        { "change", "restore new big", 65, 400 },
        // Values, and a template.
        { "line", "set elm.trimout < big", 2, 400 },
        { "wrong", "set elm.trimout < big", 65, 400 },
        { "line", "binder elm.trimout --template big", 74, 400 },
        // What is no house file, or a damaged one.
        { "line", "merge elm.trimout big.trimout", 65, 700 },
        { "line", "rescue big.trimout new", 65, 900 },
    };

    [LinuxTheory]
    [MemberData(nameof(WaysIn))]
    public void WhatIsTooLargeIsRefusedInBoundedMemory(string what, string words, int code, int most)
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        var before = _run.Run("history", "elm.trimout").Output;
        using (var text = new StreamWriter(_run.In("big")))
        {
            if (what is "rows")
                text.Write("tag,width\n");
            if (what is "cell")
                text.Write("tag,width\nW01,");
            if (what is "change")
                text.Write("""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","edits":[],"what":" """);
            var piece = new string('x', Megabyte);
            for (var n = 0; n < (what is "cell" or "line" ? 100 : what is "change" ? 17 : 0); n++)
                text.Write(piece);
            for (var n = 0; n < (what is "rows" or "wrong" ? 1_000_000 : 0); n++)
                text.Write(string.Create(CultureInfo.InvariantCulture, $"W{n},30\n"));
            if (what is "change")
                text.Write("\"}\n");
        }
        File.CreateSymbolicLink(_run.In("big.trimout"), _run.In("big"));
        File.CreateSymbolicLink(_run.In("big.jsonl"), _run.In("big"));
        var (ended, peak) = Measured(words);
        output.WriteLine($"{what}, {words}: {peak} MiB at the most");
        Assert.True(code == ended.Code, $"{ended.Code}: {ended.Error[..Math.Min(ended.Error.Length, 2000)]}");
        Assert.NotEmpty(ended.Error);
        Assert.InRange(peak, 1, most);
        Assert.Equal(before, _run.Run("history", "elm.trimout").Output);
    }

    /// <summary>Of what is no part of a house no more is in memory than a few pieces, whether it stands in the file or beside it.</summary>
    [LinuxTheory]
    [InlineData("journal", "history elm.trimout", 65)]
    [InlineData("journal", "set elm.trimout", 65)]
    [InlineData("journal", "rescue elm.trimout new", 2)]
    [InlineData("journal without a line", "rescue elm.trimout new", 2)]
    [InlineData("before", "rescue elm.trimout new", 0)]
    public void JunkOf200MegabytesIsNotHeldInMemory(string where, string words, int code)
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        var before = _run.Run("history", "elm.trimout").Output;
        var (junk, random) = (new byte[Megabyte], new Random(7));
        var sound = File.ReadAllBytes(_run.In("elm.trimout"));
        using (var file = File.Create(_run.In(where is "before" ? "elm.trimout" : "elm.trimout.journal")))
        {
            for (var n = 0; n < 200; n++)
            {
                random.NextBytes(junk);
                if (where is "journal without a line")
                    junk.AsSpan().Replace((byte)'\n', (byte)' ');
                file.Write(junk);
            }
            if (where is "before")
                file.Write(sound);
        }
        var (ended, peak) = Measured(words);
        output.WriteLine($"{where}, {words}: {peak} MiB at the most");
        Assert.True(code == ended.Code, $"{ended.Code}: {ended.Error[..Math.Min(ended.Error.Length, 2000)]}");
        Assert.InRange(peak, 1, 250);
        if (words.StartsWith("rescue", StringComparison.Ordinal))
            Assert.Equal(before, _run.Run("history", "new.trimout").Output);
    }

    [LinuxTheory]
    [InlineData("yes | \"$0\" restore new -", 65)]
    [InlineData("yes | \"$0\" set elm.trimout", 65)]
    [InlineData("yes '' | head -c 300000000 | \"$0\" restore new -", 65)]
    [InlineData("\"$0\" restore new - < /dev/zero", 65)]
    [InlineData("\"$0\" set elm.trimout < /dev/zero", 2)]
    public void AnEndlessInputIsEndedInBoundedMemory(string line, int code)
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        var (ended, peak) = Measured(line, asItIs: true);
        output.WriteLine($"{line}: {peak} MiB at the most");
        Assert.Equal(code, ended.Code);
        Assert.InRange(peak, 1, 400);
    }

    [LinuxFact]
    public void AHistoryOfManyChangesSaysHowFarItIsAndCanBeStopped()
    {
        using var run = _run.Start("restore", "new", "-");
        var said = run.StandardError.ReadLineAsync();
        for (var n = 1; !said.IsCompleted && n < 200_000; n++)
            run.StandardInput.Write(Change(n));
        Assert.Equal("50000 changes of - were read.", said.Result);
        Process.Start("kill", ["-INT", run.Id.ToString(CultureInfo.InvariantCulture)]).WaitForExit();
        Assert.True(run.WaitForExit(TimeSpan.FromSeconds(10)));
        Assert.NotEqual(0, run.ExitCode);
        Assert.Empty(Directory.GetFiles(_run.Folder, "new*"));
    }

    [LinuxFact]
    public void AnImportThatIsStoppedLeavesTheHouseAsItWasOrHasAllOfIt()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\n" + string.Concat(Enumerable.Range(1, 4_000).Select(n => $"W{n},30\n")));
        var before = _run.Run("history", "elm.trimout").Output;
        foreach (var wait in new[] { 100, 300, 500, 700 })
        {
            using var run = _run.Start("import", "elm.trimout", "s.csv");
            var (error, text) = (run.StandardError.ReadToEndAsync(), run.StandardOutput.ReadToEndAsync());
            Thread.Sleep(wait);
            Process.Start("kill", ["-INT", run.Id.ToString(CultureInfo.InvariantCulture)]).WaitForExit();
            Assert.True(run.WaitForExit(TimeSpan.FromSeconds(10)));
            var after = _run.Run("history", "elm.trimout");
            Assert.Equal(0, after.Code);
            if (after.Output == before)
                continue;
            Assert.StartsWith(before, after.Output, StringComparison.Ordinal);
            Assert.Equal(before.Count('\n') + 1, after.Output.Count('\n'));
            return;
        }
    }

    [LinuxFact]
    public void ValuesAreStoppedBetweenTwoLinesAndWhatWasAnsweredIsThere()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        using var run = _run.Start("set", "elm.trimout");
        for (var n = 1; n <= 20; n++)
        {
            run.StandardInput.Write($"W01\tnote\tnote {n}\n");
            run.StandardInput.Flush();
            Assert.Equal($"{n}", run.StandardOutput.ReadLine());
        }
        Process.Start("kill", ["-INT", run.Id.ToString(CultureInfo.InvariantCulture)]).WaitForExit();
        Assert.True(run.WaitForExit(TimeSpan.FromSeconds(10)));
        Assert.Equal(22, _run.Run("history", "elm.trimout").Output.Count('\n'));
        Assert.Equal(0, _run.Run("set", "elm.trimout").Code);
    }

    private static string Change(int n) => string.Create(CultureInfo.InvariantCulture,
        $$"""{"v":1,"id":"a:{{n}}","stamp":{{n}},"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[]}""") + "\n";

    /// <summary>
    /// Runs it and says how much memory it had at the most, in MiB; of a quick build that is gone at once, what it had when it was looked at.
    /// </summary>
    private (Ended Ended, long Peak) Measured(string words, bool asItIs = false)
    {
        var line = (asItIs ? words : $"\"$0\" {words}").Replace("\"$0\"", "bash \"$0\" \"$1\"", StringComparison.Ordinal);
        var start = new ProcessStartInfo("bash", ["-c", line, _run.In("watch"), RunTrimOut.Program])
        {
            WorkingDirectory = _run.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        File.WriteAllText(_run.In("watch"), """
            #!/bin/bash
            peak=0
            "$@" <&0 &
            p=$!
            while [ -r /proc/$p/status ]; do
                now=$(grep -s VmHWM /proc/$p/status | tr -dc 0-9)
                [ -n "$now" ] && [ "$now" -gt "$peak" ] && peak=$now
                [ -z "$now" ] && break
                sleep 0.01
            done
            wait $p
            code=$?
            echo $peak > peak
            exit $code
            """);
        start.Environment["XDG_DATA_HOME"] = _run.In("data");
        using var shell = Process.Start(start)!;
        shell.StandardInput.Close();
        var error = shell.StandardError.ReadToEndAsync();
        var text = shell.StandardOutput.ReadToEndAsync();
        Assert.True(shell.WaitForExit(TimeSpan.FromSeconds(180)), line);
        return (new Ended(shell.ExitCode, text.Result, error.Result), long.Parse(File.ReadAllText(_run.In("peak")), CultureInfo.InvariantCulture) / 1024);
    }
}
