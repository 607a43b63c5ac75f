using TrimOut.Office;
using TrimOut.Office.Running;
using TrimOut.Testing;
using TrimOut.Tests.Desks.Secrets;

namespace TrimOut.Tests.Verbs;

/// <summary>The office by the program alone: a trial server, a house that goes from one laptop to another, a crew that is shut out.</summary>
public sealed class OfficeVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    private Ended As(string device, string verb, params string[] arguments) =>
        _run.Run(["office", verb, .. arguments, "--credentials", $"{Trial}/{device}.credentials"]);

    private string Trial { get; } = Path.Combine(Path.GetTempPath(), $"trimout-trial-{Path.GetRandomFileName()}");

    [ServerFact]
    public void AHouseGoesFromOneLaptopToAnotherByTheOffice()
    {
        try
        {
            var port = FreePort();
            var made = _run.Run("office", "trial", Trial, "--port", port);
            Assert.True(made.Code == 0, made.Error);
            Assert.Equal(3, As("desk", "houses").Output.Split('\n').Length - 1);
            Assert.Equal("", As("client", "houses").Output);

            // The office takes a sample onto its machine, byte for byte.
            Assert.Equal(0, As("desk", "take", "1", "desk.trimout").Code);
            var sample = File.ReadAllText(Path.Combine(Repository.Root, "sample-jobs", "canal-house", "history.jsonl"));
            Assert.Equal(sample, _run.Run("history", "desk.trimout").Output);
            Assert.Equal(73, As("desk", "take", "1", "desk.trimout").Code);

            // The crew works, and sees what is not at the office yet.
            Assert.Equal(0, As("van", "take", "1", "van.trimout").Code);
            Assert.Equal(0, _run.RunWith("W01\tnote\tpainted today\n", "set", "van.trimout", "--by", "Ash").Code);
            var behind = As("van", "status", "van.trimout");
            Assert.Equal(1, behind.Code);
            Assert.Contains("1 change not yet at the office", behind.Output);
            Assert.Equal(0, As("van", "send", "van.trimout").Code);
            Assert.Equal(0, As("van", "status", "van.trimout").Code);
            var came = As("desk", "exchange", "desk.trimout");
            Assert.Contains("painted today", came.Output);
            Assert.Contains("1 change came in.", came.Error);
            Assert.Equal(_run.Run("history", "van.trimout").Output, _run.Run("history", "desk.trimout").Output);

            // Who may what.
            Assert.Equal(77, As("client", "fetch", "desk.trimout").Code);
            Assert.Equal(77, As("van", "let-in", "1", "client").Code);
            Assert.Equal(0, As("desk", "let-in", "1", "client", "--as", "reader").Code);
            Assert.Equal(0, As("client", "fetch", "desk.trimout").Code);
            Assert.Equal(0, As("owner", "shut-out", "van").Code);
            Assert.Equal(77, As("van", "send", "van.trimout").Code);
            Assert.Equal(0, As("owner", "enroll", "van", "van-again.credentials").Code);
            Assert.Equal(0, _run.Run("office", "send", "van.trimout", "--credentials", "van-again.credentials").Code);

            TheSystemMayHaveTheSecret();

            // Others may not read the secret, and an office that is away is said.
            if (!OperatingSystem.IsWindows())
                File.SetUnixFileMode(_run.In("van-again.credentials"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead);
            var read = _run.Run("office", "send", "van.trimout", "--credentials", "van-again.credentials");
            Assert.Equal(77, read.Code);
            Assert.Contains("chmod 600", read.Error);
            Assert.Equal(0, _run.Run("office", "trial", "--stop", Trial).Code);
            var away = As("desk", "exchange", "desk.trimout");
            Assert.Equal(69, away.Code);
            Assert.Contains("All that you saved is in the house file", away.Error);
            Assert.Equal(0, As("desk", "status", "desk.trimout").Code);
        }
        finally
        {
            _run.Run("office", "trial", "--stop", Trial);
            if (Directory.Exists(Trial))
                Directory.Delete(Trial, recursive: true);
        }
    }

    /// <summary>Also of the owner, whose devices get a file with a secret of their own.</summary>
    private void TheSystemMayHaveTheSecret()
    {
        if (!OperatingSystem.IsLinux())
            return;
        using var tool = new FakeSecretTool();
        _run.Environment["PATH"] = $"{tool.Folder}:{Environment.GetEnvironmentVariable("PATH")}";
        var secret = Credentials.Read(File.ReadAllBytes($"{Trial}/desk.credentials")).Value.Password!;
        foreach (var device in (string[])["desk", "owner"])
        {
            var kept = As(device, "keep-secret");
            Assert.True(kept.Code == 0, kept.Error);
            Assert.DoesNotContain("\"password\"", File.ReadAllText($"{Trial}/{device}.credentials"));
        }
        Assert.Equal(0, As("desk", "send", "desk.trimout").Code);
        Assert.Equal(0, As("owner", "enroll", "second-van", "second-van.credentials").Code);
        Assert.DoesNotContain("password-in", File.ReadAllText(_run.In("second-van.credentials")));
        // Where a house stands is said without asking anybody for a secret.
        var asked = tool.Arguments.Length;
        tool.Told("refuse");
        Assert.Equal(0, As("desk", "status", "desk.trimout").Code);
        Assert.Equal(asked, tool.Arguments.Length);
        var refused = As("desk", "send", "desk.trimout");
        Assert.Equal(66, refused.Code);
        Assert.Contains("Cannot autolaunch", refused.Error);
        // The environment goes before it.
        _run.Environment[Credentials.PasswordVariable] = secret;
        Assert.Equal(0, As("desk", "send", "desk.trimout").Code);
        _run.Environment.Remove(Credentials.PasswordVariable);
        tool.Told();
        foreach (var device in (string[])["desk", "owner"])
            Assert.Equal(0, As(device, "keep-secret", "--back").Code);
        Assert.Equal(64, As("desk", "keep-secret", "--back", "--forget").Code);
        Assert.All(tool.Arguments, line => Assert.DoesNotContain(secret, line));
        Assert.DoesNotContain(secret, tool.Environment);
        Assert.Empty(tool.Kept);
        _run.Environment.Clear();
        Assert.Equal(0, As("desk", "send", "desk.trimout").Code);
    }

    [Fact]
    public void AMachineThatIsNotEnrolledIsTold()
    {
        var said = _run.Run("office", "houses");
        Assert.Equal(66, said.Code);
        Assert.Contains("not enrolled at an office", said.Error);
    }

    private static string FreePort()
    {
        using var listener = new System.Net.Sockets.TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        return ((System.Net.IPEndPoint)listener.LocalEndpoint).Port.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    private sealed class ServerFactAttribute : FactAttribute
    {
        public ServerFactAttribute() => Skip = TrialServer.Programs is null
            ? "There is no PostgreSQL 15 or later here (Debian: apt install postgresql)." : null!;
    }
}
