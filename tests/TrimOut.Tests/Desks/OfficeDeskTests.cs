using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using TrimOut.Desks;
using TrimOut.Desks.Secrets;
using TrimOut.HouseFile;
using TrimOut.Office;
using TrimOut.Office.Running;
using TrimOut.Screens.Shell;
using TrimOut.Testing;
using TrimOut.Tests.Desks.Secrets;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Desks;

/// <summary>The server is away, or takes the connection and never answers: the screens go on, key by key.</summary>
public sealed class OfficeDeskTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-office-desk-").FullName;
    private readonly TcpListener _silent = new(IPAddress.Loopback, 0);

    public OfficeDeskTests() => _silent.Start();

    public void Dispose()
    {
        _silent.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private ShellState Shell(Func<Credentials?> office, ISecretStore? secrets = null)
    {
        var file = Path.Combine(_folder, "elm.trimout");
        HouseOnDisk.Create(file, TimeProvider.System, new TestJob().Window("W01").Window("W02").Scribe.Log.Changes).Dispose();
        var desk = new Desk("Ash") { AtOffice = new OfficeDesk(office, secrets) };
        return new ShellState(desk, desk.Open(file).Value, beside: work => Task.Run(work));
    }

    private Credentials Silent => new("127.0.0.1", ((IPEndPoint)_silent.LocalEndpoint).Port, "trimout", "van", "device-van", "secret",
        OwnCertificate.For("127.0.0.1", TimeProvider.System).Root);

    private static string Seen(ShellState shell) => shell.Draw(100, 30).ToText();

    [Fact]
    public void WhileARealConnectionHangsEveryKeyIsPaintedAndSavedAndEscStopsIt()
    {
        var shell = Shell(() => Silent);
        var changes = shell.Context.Log.Changes.Count;
        Assert.Contains($"{changes} not at office", Seen(shell), StringComparison.Ordinal);
        shell.Press("@");
        shell.Press("enter");
        Assert.True(SpinWait.SpinUntil(_silent.Pending, TimeSpan.FromSeconds(30)), "nobody called");
        shell.Press("1");
        var slowest = TimeSpan.Zero;
        for (var at = 0; at < 30; at++)
        {
            var before = Stopwatch.GetTimestamp();
            shell.Press(at % 3 == 2 ? "space" : at % 3 == 1 ? "down" : "up");
            if (shell.Typing is not null)
                shell.Press("esc");
            Seen(shell);
            slowest = Stopwatch.GetElapsedTime(before) is var took && took > slowest ? took : slowest;
        }
        Assert.NotNull(shell.Doing);
        // The connection is given up after 15 s: a key that waited for it would take as long.
        Assert.True(slowest < TimeSpan.FromSeconds(8), $"{slowest.TotalMilliseconds} ms");
        var stopped = Stopwatch.GetTimestamp();
        for (var tries = 0; shell.Doing is not null && tries < 200; tries++)
        {
            shell.Press("esc");
            shell.Tick();
            Thread.Sleep(50);
        }
        Assert.Null(shell.Doing);
        Assert.True(Stopwatch.GetElapsedTime(stopped) < TimeSpan.FromSeconds(8));
    }

    [LinuxFact]
    public void WhileTheStoreOfSecretsHangsEveryKeyIsPaintedAndWhatHappenedIsSaid()
    {
        using var tool = new FakeSecretTool();
        tool.Told("hang");
        var shell = Shell(() => Silent with { Password = null, PasswordIn = Credentials.SystemStore }, tool.Store(seconds: 8));
        Assert.Contains("not at office", Seen(shell), StringComparison.Ordinal);
        Assert.Empty(tool.Arguments);
        shell.Press("@");
        shell.Press("enter");
        Assert.True(SpinWait.SpinUntil(() => tool.Asleep is not null, TimeSpan.FromSeconds(30)), "nobody asked");
        var slowest = TimeSpan.Zero;
        shell.Press("1");
        for (var at = 0; at < 10; at++)
        {
            var before = Stopwatch.GetTimestamp();
            shell.Press(at % 2 == 0 ? "down" : "up");
            Seen(shell);
            slowest = Stopwatch.GetElapsedTime(before) is var took && took > slowest ? took : slowest;
        }
        Assert.True(slowest < TimeSpan.FromSeconds(6), $"{slowest.TotalMilliseconds} ms");
        Assert.True(SpinWait.SpinUntil(() => Ticked(shell).Contains("did not answer", StringComparison.Ordinal), TimeSpan.FromSeconds(30)), Seen(shell));
        Assert.False(_silent.Pending(), "the office was called without a secret");
    }

    [LinuxFact]
    public void ASecretOfTheSystemsStoreIsWhatTheOfficeIsCalledWith()
    {
        using var tool = new FakeSecretTool();
        tool.Store().Store(SecretName.Of(Silent), "kept by the system", default);
        var shell = Shell(() => Silent with { Password = null, PasswordIn = Credentials.SystemStore }, tool.Store());
        shell.Press("@");
        shell.Press("enter");
        Assert.True(SpinWait.SpinUntil(_silent.Pending, TimeSpan.FromSeconds(30)), Seen(shell));
        shell.Press("esc");
        Assert.DoesNotContain("kept by the system", Seen(shell), StringComparison.Ordinal);
        foreach (var file in Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories).Where(f => !f.EndsWith(".lock", StringComparison.Ordinal)))
            Assert.DoesNotContain("kept by the system", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal);
        Assert.All(tool.Arguments, line => Assert.DoesNotContain("kept by the system", line, StringComparison.Ordinal));
    }

    private static string Ticked(ShellState shell)
    {
        shell.Tick();
        return Seen(shell);
    }

    [Fact]
    public void CredentialsThatCannotBeUsedAreSaidAndNothingElseChanges()
    {
        var shell = Shell(() => throw new OfficeException(OfficeFault.NotAllowed, "office.credentials holds a secret, and others may read it."));
        shell.Press("@");
        Assert.Contains("others may read it", Seen(shell), StringComparison.Ordinal);
    }
}
