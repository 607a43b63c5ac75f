using System.Diagnostics;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Screens.Copies;
using TrimOut.Screens.Office;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A laptop that is enrolled at an office: what is not there yet is seen, exchanging goes on beside the work, and nothing waits for it.</summary>
public class OfficeTests
{
    private readonly TestDesk _desk = new(new FakeTimeProvider(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero)));
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02");

    public OfficeTests() => _desk.AtOffice = [.. _job.Scribe.Log.Changes.Select(c => c.Id)];

    private static string Seen(ShellState shell) => shell.Draw(100, 30).ToText();

    [Fact]
    public void WhatIsNotYetAtTheOfficeStandsOnTheTopLineOfEveryScreenAndInAList()
    {
        var shell = new ShellState(_desk, _job.Scribe);
        Assert.DoesNotContain("not at office", Seen(shell), StringComparison.Ordinal);
        _job.Say("W01", WindowFacts.RoughWidth, "36");
        shell = new ShellState(_desk, _job.Scribe);
        Assert.Contains("1 not at office", Seen(shell).Split('\n')[0], StringComparison.Ordinal);
        shell.Press("@");
        Assert.IsType<OfficeScreen>(shell.Screen);
        Assert.Contains("Last exchanged yesterday, 1 changes not yet at the office.", Seen(shell), StringComparison.Ordinal);
        Assert.Contains("W01: Rough width: 36\"", Seen(shell), StringComparison.Ordinal);
        Assert.Contains("1 not at office", shell.Draw(80, 24).ToText().Split('\n')[0], StringComparison.Ordinal);
    }

    [Fact]
    public void ALaptopThatIsEnrolledAtNoOfficeIsToldSo()
    {
        _desk.AtOffice = null;
        var shell = new ShellState(_desk, _job.Scribe);
        shell.Press("@");
        Assert.Contains("not enrolled at an office", Seen(shell), StringComparison.Ordinal);
        shell.Press("enter");
        Assert.Contains("This laptop is not enrolled at an office.", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatCameIsLookedAtBeforeItIsTakenIn()
    {
        var site = new TestJob(store: new MemoryStore("site", _job.Scribe.Log.Changes)).Say("W02", WindowFacts.RoughWidth, "40");
        _desk.Exchanging = (log, _, _) => Merge.Of(log, site.Scribe.Log).Then<OfficeExchange>(m => new OfficeExchange(m, 3));
        var shell = new ShellState(_desk, _job.Scribe);
        foreach (var key in (string[])["8", "@", "enter"])
            shell.Press(key);
        Assert.IsType<MergeScreen>(shell.Screen);
        Assert.Contains("1 change would come in", Seen(shell), StringComparison.Ordinal);
        Assert.Null(_job.House.FindTag("W02")!.RoughWidth);
        shell.Press("enter");
        shell.Press("y");
        Assert.NotNull(_job.House.FindTag("W02")!.RoughWidth);
        Assert.Contains("1 change came in from the office", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsPutOffIsSaidAtOnceAndStaysOnTheTopLine()
    {
        var site = new TestJob(store: new MemoryStore("site", _job.Scribe.Log.Changes)).Say("W02", WindowFacts.RoughWidth, "40");
        _desk.Exchanging = (log, _, _) => Merge.Of(log, site.Scribe.Log).Then<OfficeExchange>(m =>
        {
            _desk.PutOff = m.New.Length;
            return new OfficeExchange(m, 0);
        });
        var shell = new ShellState(_desk, _job.Scribe);
        foreach (var key in (string[])["8", "@", "enter", "enter", "n"])
            shell.Press(key);
        Assert.Null(_job.House.FindTag("W02")!.RoughWidth);
        Assert.Contains("Nothing was taken in: it is put off", Seen(shell), StringComparison.Ordinal);
        shell.Press("esc");
        Assert.Contains("1 put off", shell.Draw(80, 24).ToText().Split('\n')[0], StringComparison.Ordinal);
    }

    [Fact]
    public void AnOfficeThatIsAwayIsSaidAndNothingIsLost()
    {
        _desk.Exchanging = (_, _, _) => new Refusal("The office at office.example:5432 can't be reached now.");
        var shell = new ShellState(_desk, _job.Scribe);
        shell.Press("@");
        shell.Press("enter");
        Assert.Contains("can't be reached now", Seen(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void WhileAConnectionHangsNoKeyWaitsAndEscStopsIt()
    {
        _desk.Exchanging = (_, says, stop) =>
        {
            says("connecting");
            stop.WaitHandle.WaitOne(TimeSpan.FromMinutes(1));
            stop.ThrowIfCancellationRequested();
            return new Refusal("It never hung.");
        };
        var shell = new ShellState(_desk, _job.Scribe, beside: work => Task.Run(work));
        shell.Press("@");
        shell.Press("enter");
        Assert.True(SpinWait.SpinUntil(() => shell.Doing == "Exchanging with the office: connecting", TimeSpan.FromSeconds(20)), shell.Doing);
        shell.Tick();
        Assert.Contains("Exchanging with the office: connecting", Seen(shell), StringComparison.Ordinal);
        shell.Press("1");
        var slowest = TimeSpan.Zero;
        for (var at = 0; at < 40; at++)
        {
            var before = Stopwatch.GetTimestamp();
            shell.Press(at % 2 == 0 ? "down" : "up");
            Seen(shell);
            slowest = Stopwatch.GetElapsedTime(before) is var took && took > slowest ? took : slowest;
        }
        // A key is painted in milliseconds; the connection would have held it for a minute.
        Assert.True(slowest < TimeSpan.FromSeconds(5), $"{slowest.TotalMilliseconds} ms");
        _job.Say("W01", WindowFacts.RoughWidth, "36");
        shell.Press("esc");
        Assert.True(SpinWait.SpinUntil(() => { shell.Tick(); return shell.Doing is null; }, TimeSpan.FromSeconds(20)));
        Assert.Contains("stopped", Seen(shell), StringComparison.Ordinal);
    }
}
