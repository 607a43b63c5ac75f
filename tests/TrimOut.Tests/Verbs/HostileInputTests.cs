using System.Diagnostics;
using System.Globalization;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Verbs;

/// <summary>Texts, files and streams that are not what they should be, given to the real program.</summary>
public sealed class HostileInputTests : IDisposable
{
    private const string Attack = "\u001b]0;owned\u0007\u001b[31m\u009b2J\u202e\u2066\u200b\ufeff";

    private static readonly char[] Acting = [.. Enumerable.Range(0, 0x20).Where(c => c is not ('\n' or '\t' or '\r')).Concat([.. Enumerable.Range(0x7f, 0x21)])
        .Select(c => (char)c), '\u202e', '\u2066', '\u200b', '\ufeff'];

    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    /// <summary>A house whose every text is hostile, as one line of another program may have made it.</summary>
    private string House()
    {
        var attack = System.Text.Json.JsonSerializer.Serialize(Attack)[1..^1];
        File.WriteAllText(_run.In("evil.jsonl"), string.Join('\n',
            $$"""{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b{{attack}}","what":"w{{attack}}","edits":[""" +
                $$"""{"put":"house","field":"name","value":"Elm{{attack}}"},{"add":"r","kind":"room","under":"house"},""" +
                $$"""{"put":"r","field":"name","value":"Hall{{attack}}"}]}""",
            $$"""{"v":1,"id":"a:2","stamp":2,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[""" +
                $$"""{"add":"w","kind":"window","under":"house"},{"put":"w","field":"tag","value":"W01{{attack}}"},""" +
                $$"""{"put":"w","field":"room","value":"r"},{"put":"w","field":"note","value":"n{{attack}}"},""" +
                $$"""{"add":"u","kind":"unit","under":"w"}]}""",
            $$"""{"v":1,"id":"a:3","stamp":3,"at":"2026-03-02T08:00:00+00:00","by":"b{{attack}}","what":"w","edits":[""" +
                $$"""{"put":"w","field":"colour{{attack}}","value":"x{{attack}}"},{"put":"house","field":"units","value":"mm{{attack}}"},""" +
                $$"""{"put":"none{{attack}}","field":"tag","value":"W09"}]}"""));
        Assert.Equal(2, _run.Run("restore", "evil.trimout", "evil.jsonl").Code);
        return "evil.trimout";
    }

    private static void Harmless(string what, Ended run)
    {
        Assert.True(run.Output.IndexOfAny(Acting) < 0, $"{what}: standard output has U+{(int)run.Output.ElementAtOrDefault(run.Output.IndexOfAny(Acting)):X4}");
        Assert.True(run.Error.IndexOfAny(Acting) < 0, $"{what}: standard error has U+{(int)run.Error.ElementAtOrDefault(run.Error.IndexOfAny(Acting)):X4}");
    }

    [Fact]
    public void NothingOfAnyTextActsOnATerminalFromAnyVerb()
    {
        var house = House();
        Assert.Equal(0, _run.Run("new", "other").Code);
        string[][] runs =
        [
            ["check", house], ["check", "--json", house], ["history", house], ["windows", house], ["parts", house], ["people", house], ["service", house],
            ["backup", house], ["backups", house],
            ["compare", house, "other.trimout"], ["compare", "other.trimout", house],
            ["conflicts", house], ["merge", "other.trimout", house], ["restore", house, "other.trimout"], ["rescue", house, "saved"], ["binder", house],
            ["paper", house, "labels"], ["papers", house, "--out", "all"],
            ["open", "no" + Attack], ["check", "no" + Attack], ["import", house, "no" + Attack], ["import", house, "evil.jsonl", "--column", "tag=" + Attack],
            ["set", house], [Attack], ["help", Attack], ["what-if", Attack, Attack, Attack],
            ["paper", house, Attack], ["binder", house, "--date", Attack], ["binder", house, "--out", "o" + Attack], ["new", "n" + Attack],
            ["conflicts", house, "--choose", Attack],
        ];
        foreach (var run in runs)
            Harmless(string.Join(' ', run), _run.RunWith($"W01\tnote{Attack}\tx\nW{Attack}\tnote\tx\n", run));
    }

    [Fact]
    public void TheHolderOfALockIsNamedWithoutWhatWouldAct()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        using var held = _run.Start("set", "elm.trimout");
        Wait(() => File.Exists(_run.In("elm.trimout.in-use")));
        File.WriteAllText(_run.In("elm.trimout.in-use"), "Ash" + Attack);
        var refused = _run.Run("conflicts", "elm.trimout", "--choose", "3f9c2-a");
        held.StandardInput.Close();
        held.WaitForExit();
        Assert.Equal(75, refused.Code);
        Harmless("lock", refused);
        Assert.Contains("Ash<U+001B>", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void TheHistoryComesBackToTheLetterWhateverItHolds()
    {
        var house = House();
        File.WriteAllText(_run.In("again.jsonl"), _run.Run("history", house).Output);
        _run.Run("restore", "again", "again.jsonl");
        Assert.Equal(0, _run.Run("compare", house, "again.trimout").Code);
    }

    [Fact]
    public void WhatDoesNotCountIsListedByWhateverReadsIt()
    {
        var house = House();
        foreach (var verb in new[] { "check", "history", "windows", "parts", "conflicts", "set" })
        {
            var error = _run.Run(verb, house).Error;
            Assert.True(error.Contains("No detail of this version is called that", StringComparison.Ordinal), $"{verb}: {error}");
            Assert.Contains("can't be \"mm", error, StringComparison.Ordinal);
            Assert.Contains("which isn't there", error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TagsThatDifferByWhatCannotBeSeenAreOneTag()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\nW\u200b01,31\nW01\u202e,32\nw0\u20601,33\nW02,34\n");
        var run = _run.Run("import", "elm.trimout", "s.csv");
        Assert.Equal(2, run.Code);
        Assert.Contains("2 windows, 3 things that could not be read", run.Error, StringComparison.Ordinal);
        Assert.Equal("1\n", _run.RunWith("w\u200d01\u200b\tnote\tx\n", "set", "elm.trimout").Output);
    }

    [LinuxTheory]
    [InlineData("fifo")]
    [InlineData("/dev/zero")]
    [InlineData("/dev/null")]
    [InlineData("folder")]
    [InlineData("socket")]
    public void SomethingElseWhereAFileShouldBeIsRefusedAtOnce(string sort)
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        var path = sort[0] == '/' ? sort : _run.In(sort);
        using var socket = new System.Net.Sockets.Socket(System.Net.Sockets.AddressFamily.Unix, System.Net.Sockets.SocketType.Stream,
            System.Net.Sockets.ProtocolType.Unspecified);
        if (sort == "fifo")
            Process.Start("mkfifo", [path]).WaitForExit();
        else if (sort == "folder")
            Directory.CreateDirectory(path);
        else if (sort == "socket")
            socket.Bind(new System.Net.Sockets.UnixDomainSocketEndPoint(path));
        File.CreateSymbolicLink(_run.In("link.trimout"), path);
        File.CreateSymbolicLink(_run.In("link.jsonl"), path);
        foreach (var verb in new string[][] { ["check", path], ["check", "link.trimout"], ["check", "link.jsonl"], ["set", path], ["set", "link.trimout"],
            ["import", "elm.trimout", path], ["restore", "new", path], ["restore", "new", "link.trimout"],
            ["merge", "elm.trimout", path], ["compare", "elm.trimout", path], ["rescue", path, "saved"], ["rescue", "elm.trimout", "saved", "--also", path],
            ["binder", "elm.trimout", "--template", path], ["backup", path], ["history", path] })
        {
            using var run = _run.Start(verb);
            run.StandardInput.Close();
            var error = run.StandardError.ReadToEndAsync();
            var output = run.StandardOutput.ReadToEndAsync();
            var ended = run.WaitForExit(TimeSpan.FromSeconds(10));
            if (!ended)
                run.Kill();
            Assert.True(ended, $"{string.Join(' ', verb)} goes on and on.");
            Assert.True(run.ExitCode is > 63 and < 78 and not 70,
                $"{string.Join(' ', verb)}: {run.ExitCode.ToString(CultureInfo.InvariantCulture)} {error.Result}");
            Assert.NotEmpty(error.Result);
            Assert.Empty(output.Result);
        }
    }

    [LinuxTheory]
    [InlineData("yes | \"$0\" restore new -", 65)]
    [InlineData("\"$0\" restore new - < /dev/zero", 65)]
    [InlineData("\"$0\" set elm.trimout < /dev/zero", 2)]
    public void AnEndlessInputIsEnded(string line, int code) => Assert.Equal(code, Shell(line).Code);

    [LinuxTheory]
    [InlineData("set", "<&-", 0)]
    [InlineData("restore new -", "<&-", 65)]
    [InlineData("check", ">&-", 74)]
    [InlineData("history", ">&-", 74)]
    [InlineData("history", "2>&-", 0)]
    [InlineData("frobnicate", "2>&-", 64)]
    [InlineData("check none", "2>&-", 66)]
    [InlineData("check none", "<&- >&- 2>&-", 66)]
    [InlineData("set", "<&- >&- 2>&-", 0)]
    [InlineData("check", "> /dev/full", 74)]
    public void AClosedStreamIsNoFaultAndLeavesNoLock(string words, string streams, int code)
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        var ended = Shell($"timeout 20 \"$0\" {words}{(words.Contains(' ', StringComparison.Ordinal) ? "" : " elm.trimout")} {streams}");
        Assert.True(code == ended.Code, $"{ended.Code.ToString(CultureInfo.InvariantCulture)}: {ended.Error}");
        Assert.Equal(["elm.trimout"], Directory.GetFiles(_run.Folder).Select(Path.GetFileName));
        Assert.Equal(0, _run.Run("set", "elm.trimout").Code);
    }

    private static void Wait(Func<bool> until)
    {
        var clock = Stopwatch.StartNew();
        while (!until() && clock.Elapsed < TimeSpan.FromSeconds(30))
            Thread.Sleep(20);
    }

    private Ended Shell(string line)
    {
        if (!File.Exists(_run.In("elm.trimout")))
            Assert.Equal(0, _run.Run("new", "elm").Code);
        var start = new ProcessStartInfo("sh", ["-c", line, RunTrimOut.Program])
        {
            WorkingDirectory = _run.Folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true
        };
        start.Environment["XDG_DATA_HOME"] = _run.In("data");
        using var shell = Process.Start(start)!;
        shell.StandardInput.Close();
        var error = shell.StandardError.ReadToEndAsync();
        var output = shell.StandardOutput.ReadToEndAsync();
        Assert.True(shell.WaitForExit(TimeSpan.FromSeconds(60)), line);
        return new Ended(shell.ExitCode, output.Result, error.Result);
    }
}
