using System.Diagnostics;
using TrimOut.Desks;
using TrimOut.Desks.Secrets;
using TrimOut.Office;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Desks.Secrets;

/// <summary>The secret of a device goes into the system's store and back, whatever the store does, and is never lost.</summary>
public sealed class KeptSecretTests : IDisposable
{
    private const string Secret = "s3cret-of/the=van";

    private readonly FakeSecretTool _tool = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-kept-secret-").FullName;
    private readonly Credentials _van = new("192.0.2.7", 5432, "trimout", "van", "device-van", Secret, "-----BEGIN CERTIFICATE-----");

    public KeptSecretTests() => OwnFile.Write(VanFile, _van.Write());

    public void Dispose()
    {
        _tool.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private string VanFile => Path.Combine(_folder, "van.credentials");

    private KeptSecret Kept(int seconds = 30) => new(VanFile, _tool.Store(seconds));

    private static string Said(Func<CancellationToken, string> act)
    {
        var said = Assert.Throws<OfficeException>(() => act(default)).ToString();
        Assert.DoesNotContain(Secret, said);
        return said;
    }

    [LinuxFact]
    public void TheSecretGoesIntoTheStoreAndOutOfTheFileAndBack()
    {
        Assert.Contains(Secret, File.ReadAllText(VanFile));
        Assert.DoesNotContain(Secret, Kept().Move(default));
        Assert.Equal([Secret], _tool.Kept);
        Assert.DoesNotContain(Secret, File.ReadAllText(VanFile));
        Assert.Contains("\"password-in\": \"system\"", File.ReadAllText(VanFile));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(VanFile));
        Assert.Equal(Secret, SystemSecrets.WithSecret(OfficePlace.Read(VanFile), _tool.Store(), default).Password);
        Assert.Contains("already", Kept().Move(default));

        Assert.DoesNotContain(Secret, Kept().PutBack(default));
        Assert.Equal(_van, OfficePlace.Read(VanFile));
        Assert.Empty(_tool.Kept);
        Assert.All(_tool.Arguments, line => Assert.DoesNotContain(Secret, line));
        Assert.DoesNotContain(Secret, _tool.Environment);
    }

    [LinuxTheory]
    [InlineData("refuse", "Cannot autolaunch D-Bus")]
    [InlineData("drop", "does not hand out what was put into it")]
    [InlineData("lie", "does not hand out what was put into it")]
    [InlineData("tells", "did not say why")]
    [InlineData("endless", "more than a secret")]
    public void AStoreThatDoesNotDoItLeavesTheFileAsItWas(string told, string because)
    {
        var before = File.ReadAllText(VanFile);
        _tool.Told(told);
        var said = Said(Kept().Move);
        Assert.Contains(because, said);
        Assert.Contains("holds the secret as before", said);
        Assert.Equal(before, File.ReadAllText(VanFile));
        Assert.All(_tool.Arguments, line => Assert.DoesNotContain(Secret, line));
    }

    [LinuxFact]
    public void AStoreThatHangsIsStoppedWithAllThatItStartedAndTheFileIsAsItWas()
    {
        var before = File.ReadAllText(VanFile);
        _tool.Told("hang");
        Assert.Contains("did not answer within 2 seconds", Said(Kept(seconds: 2).Move));
        Assert.Equal(before, File.ReadAllText(VanFile));
        Assert.True(SpinWait.SpinUntil(() => !IsThere(_tool.Asleep!.Value), TimeSpan.FromSeconds(20)), "what it started goes on");
    }

    /// <summary>A process that nobody waited for is a zombie, and runs no more.</summary>
    private static bool IsThere(int id)
    {
        try
        {
            return !File.ReadAllText($"/proc/{id}/stat").Contains(") Z", StringComparison.Ordinal);
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    [LinuxFact]
    public void NoProgramIsSaidWithWhatToInstall()
    {
        var none = new KeptSecret(VanFile, new SecretTool(new StoreProgram("secret-tool", TimeSpan.FromSeconds(5), "")));
        Assert.Contains("apt install libsecret-tools", Said(none.Move));
        Assert.Equal(_van, OfficePlace.Read(VanFile));
    }

    [LinuxFact]
    public void AProgramOfTheFolderThatOneWorksInIsNeverTheStore()
    {
        foreach (var folders in (string[])["", ".", ":", Path.GetRelativePath(Environment.CurrentDirectory, _tool.Folder)])
            Assert.Contains("is not on this machine", Said(new KeptSecret(VanFile,
                new SecretTool(new StoreProgram("secret-tool", TimeSpan.FromSeconds(5), folders))).Move));
        Assert.Empty(_tool.Arguments);
    }

    [LinuxFact]
    public void ThroughALinkTheSecretGoesOutOfTheFileBehindIt()
    {
        var real = Path.Combine(_folder, "real.credentials");
        File.Move(VanFile, real);
        File.CreateSymbolicLink(VanFile, real);
        Kept().Move(default);
        Assert.DoesNotContain(Secret, File.ReadAllText(real));
        Assert.NotNull(new FileInfo(VanFile).LinkTarget);
    }

    [LinuxFact]
    public void WhatIsPutBackStaysInTheFileWhereTheStoreDoesNotForget()
    {
        Kept().Move(default);
        _tool.Told("keep all");
        Assert.Contains("the store has it still", Said(Kept().PutBack));
        Assert.Equal(_van, OfficePlace.Read(VanFile));
        _tool.Told();
        Assert.Contains("no secret of van", Kept().Forget(default));
        Assert.Empty(_tool.Kept);
        Assert.Equal(_van, OfficePlace.Read(VanFile));
    }

    [LinuxFact]
    public void ASecretThatTheStoreDoesNotHaveIsSaidAndTheFileLeft()
    {
        Kept().Move(default);
        Assert.Contains("needs a new one", Kept().Forget(default));
        var before = File.ReadAllText(VanFile);
        Assert.Contains("has none", Said(Kept().PutBack));
        Assert.Contains("has none", Said(Kept().Move));
        Assert.Equal(before, File.ReadAllText(VanFile));
    }

    [LinuxFact]
    public void TwoOfficesOnOneHostHaveASecretEach()
    {
        Kept().Move(default);
        OwnFile.Write(VanFile, (_van with { Port = 54330, Password = "of the trial" }).Write());
        Kept().Move(default);
        Assert.Equal(["of the trial", Secret], _tool.Kept.Order(StringComparer.Ordinal));
        // A new secret of the same device takes the place of the old one, and that is said.
        OwnFile.Write(VanFile, (_van with { Password = "a new one" }).Write());
        Assert.Contains("in place of another one", Kept().Move(default));
        Assert.Equal(["a new one", "of the trial"], _tool.Kept.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void AnUnknownPlaceOfThePasswordIsRefused() =>
        Assert.Contains("does not know", Credentials.Read((_van with { Password = null, PasswordIn = "elsewhere" }).Write()).Reason);

    [LinuxFact]
    public void AWaitThatIsStoppedEndsAtOnce()
    {
        _tool.Told("hang");
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        var began = Stopwatch.GetTimestamp();
        Assert.ThrowsAny<OperationCanceledException>(() => _tool.Store(120).Lookup(SecretName.Of(_van), stop.Token));
        Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromSeconds(30));
    }
}
