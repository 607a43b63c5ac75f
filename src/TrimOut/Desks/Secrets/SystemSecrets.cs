using TrimOut.Office;

namespace TrimOut.Desks.Secrets;

/// <summary>The store of secrets that the operating system has.</summary>
internal static class SystemSecrets
{
    /// <summary>How long a store is waited for: it may ask its user to unlock it first. Our own choice, no published source.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>The one of this machine.</summary>
    public static ISecretStore Here => OperatingSystem.IsWindows() ? new CredentialManager()
        : OperatingSystem.IsMacOS() ? new Keychain(new StoreProgram("/usr/bin/security", Patience))
        : new SecretTool(new StoreProgram("secret-tool", Patience));

    /// <summary>Credentials with their secret, which is looked up where they say that the system has it.</summary>
    /// <exception cref="OfficeException">The store has none, can't be asked, or did not answer.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Credentials WithSecret(Credentials office, ISecretStore store, CancellationToken stop) =>
        office is not { Password: null, PasswordIn: Credentials.SystemStore } ? office
        : store.Lookup(SecretName.Of(office), stop) is { } secret ? office with { Password = secret }
        : throw new OfficeException(OfficeFault.NoCredentials, $"The credentials file says that {store.Name} has the secret of {SecretName.Of(office)}, "
            + "and it has none. Ask the office for a new credentials file: trimout office enroll");
}
