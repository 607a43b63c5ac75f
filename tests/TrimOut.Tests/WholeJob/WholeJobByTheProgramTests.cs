using TrimOut.Core.History;
using TrimOut.Core.Phases;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Papers;
using TrimOut.Screens.Tests;
using TrimOut.Testing;
using TrimOut.Tests.Campaign;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.WholeJob;

/// <summary>The whole job, key by key, on the screens of another build of the program: it must make the house that the screens make within the tests.</summary>
[Collection(nameof(OneProcess))]
public sealed class WholeJobByTheProgramTests : IDisposable
{
    private static readonly string Ridge = Path.Combine(Repository.Root, "sample-jobs", "ridge-house");

    private readonly string? _data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-whole-job-").FullName;

    [OtherBuildFact]
    public void TheSameKeysMakeTheSameSignedOffHouse()
    {
        var (keys, expected) = PlayedHere();
        using (var terminal = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "open", Ridge, "--by", "Ash"))
        {
            terminal.WaitFor("Living room").Settle(TimeSpan.FromMilliseconds(300));
            foreach (var key in keys)
            {
                terminal.Send(AsSent(key)).Settle(TimeSpan.FromMilliseconds(key == "esc" ? 200 : 15));
                if (terminal.Seen.Length > 100_000)
                    terminal.Forget();
            }
            terminal.Settle(TimeSpan.FromMilliseconds(300)).Forget().Send("7w").WaitFor("Written:").Send("qq");
            Assert.Equal(0, terminal.WaitForExit());
        }
        var made = Path.Combine(_folder, "data", "trimout", "houses", "ridge-house.trimout");
        using var house = HouseOnDisk.OpenToRead(made, TimeProvider.System);
        var log = HouseLog.Of(house.Opened).Value;
        Assert.All(PhaseNames.All, phase => Assert.True(Progress.Of(log.House, phase).Complete, phase.ToString()));
        Assert.Equal(expected, BinderOf(log));
        Assert.Contains("# Owner's binder: Ridge house", File.ReadAllText(Directory.GetFiles(Path.GetDirectoryName(made)!, "*-binder.md").Single()), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", _data);
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>The keys of the whole job, and the binder of the house that they make.</summary>
    private (List<string> Keys, string Binder) PlayedHere()
    {
        Environment.SetEnvironmentVariable("XDG_DATA_HOME", Path.Combine(_folder, "here"));
        var desk = new Desk("Ash");
        var scribe = desk.Open(Ridge).Value;
        using var user = new TerminalUser(desk, scribe);
        new Installer(user).DoTheWholeJob();
        desk.Close(scribe);
        return (user.Pressed, BinderOf(scribe.Log));
    }

    private static string BinderOf(HouseLog log) =>
        Binder.Paper.Write(PaperData.Of(log, new DateOnly(2026, 9, 30)) with { FilesOf = "ridge-house" }).Markdown;

    /// <summary>What a terminal sends for a key (xterm's control sequences).</summary>
    private static string AsSent(string key) => key switch
    {
        "enter" => "\r",
        "space" => " ",
        "esc" => "\u001b",
        "tab" => "\t",
        "backspace" => "\u007f",
        "delete" => "\u001b[3~",
        "home" => "\u001b[H",
        "end" => "\u001b[F",
        "pageup" => "\u001b[5~",
        "pagedown" => "\u001b[6~",
        "up" => "\u001b[A",
        "down" => "\u001b[B",
        "right" => "\u001b[C",
        "left" => "\u001b[D",
        "f2" => "\u001bOQ",
        "f3" => "\u001bOR",
        "f4" => "\u001bOS",
        _ when key.StartsWith("ctrl+", StringComparison.Ordinal) => ((char)(key[5] & 0x1f)).ToString(),
        _ => key,
    };
}
