using TrimOut.Desks;
using TrimOut.Office;

namespace TrimOut.Tests.Desks.Secrets;

/// <summary>The program against a real keyring, in a session of its own that is gone with the test.</summary>
public sealed class RealKeyringTests : IDisposable
{
    private const string Secret = "s3cret-of/the=van";

    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    [KeyringFact]
    public void TheSecretGoesIntoARealKeyringAndBack()
    {
        OwnFile.Write(_run.In("van.credentials"), new Credentials("192.0.2.7", 5432, "trimout", "van", "device-van", Secret, "CERTIFICATE").Write());
        var done = InASession("""
            printf unlocked | gnome-keyring-daemon --unlock --components=secrets > /dev/null
            "$0" office keep-secret --credentials van.credentials || exit 11
            cp van.credentials moved.credentials
            secret-tool lookup service trimout-office device van > found
            "$0" office keep-secret --credentials van.credentials || exit 12
            "$0" office keep-secret --back --credentials van.credentials || exit 13
            secret-tool lookup service trimout-office device van > left
            "$0" office keep-secret --credentials van.credentials || exit 14
            "$0" office keep-secret --forget --credentials van.credentials || exit 15
            "$0" office houses --credentials van.credentials
            """);
        Assert.True(done.Code == 66, $"{done.Code}: {done.Error}");
        Assert.Contains("and it has none", done.Error);
        Assert.DoesNotContain(Secret, done.Output + done.Error);
        Assert.Equal(Secret, File.ReadAllText(_run.In("found")));
        Assert.DoesNotContain(Secret, File.ReadAllText(_run.In("moved.credentials")));
        Assert.Equal("", File.ReadAllText(_run.In("left")));
    }

    [KeyringFact]
    public void WithoutASessionTheRealProgramRefusesAndTheFileStays()
    {
        OwnFile.Write(_run.In("van.credentials"), new Credentials("192.0.2.7", 5432, "trimout", "van", "device-van", Secret, "CERTIFICATE").Write());
        _run.Environment["DBUS_SESSION_BUS_ADDRESS"] = "unix:path=/nowhere";
        var said = _run.Run("office", "keep-secret", "--credentials", "van.credentials");
        Assert.Equal(66, said.Code);
        Assert.Contains("ended with 1", said.Error);
        Assert.Contains("holds the secret as before", said.Error);
        Assert.Contains(Secret, File.ReadAllText(_run.In("van.credentials")));
    }

    private Ended InASession(string script)
    {
        foreach (var name in (string[])["HOME", "XDG_RUNTIME_DIR"])
            _run.Environment[name] = _run.Folder;
        return _run.RunOther("dbus-run-session", "--", "sh", "-c", script, RunTrimOut.Program);
    }

    private sealed class KeyringFactAttribute : FactAttribute
    {
        public KeyringFactAttribute() => Skip = ((string[])["secret-tool", "gnome-keyring-daemon", "dbus-run-session"]).All(p => File.Exists($"/usr/bin/{p}"))
            ? null! : "There is no keyring here (Debian: apt install libsecret-tools gnome-keyring dbus).";
    }
}
