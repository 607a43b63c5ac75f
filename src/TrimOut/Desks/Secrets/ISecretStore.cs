using TrimOut.Office;

namespace TrimOut.Desks.Secrets;

/// <summary>A store of secrets. What goes wrong in it, or takes too long, is an <see cref="OfficeException"/> that says so; none has a secret in it.</summary>
internal interface ISecretStore
{
    /// <summary>What it is called in a sentence.</summary>
    string Name { get; }

    /// <summary>The secret that is kept under a name; null where there is none.</summary>
    string? Lookup(SecretName of, CancellationToken stop);

    /// <summary>Keeps a secret under a name, in place of one that is there.</summary>
    void Store(SecretName of, string secret, CancellationToken stop);

    /// <summary>Forgets the secret under a name, where there is one.</summary>
    void Forget(SecretName of, CancellationToken stop);
}

/// <summary>Which secret: that of a device at an office.</summary>
/// <param name="Device">The device.</param>
/// <param name="Host">The office's host.</param>
/// <param name="Port">Its port.</param>
/// <param name="Database">Its database.</param>
internal sealed record SecretName(string Device, string Host, int Port, string Database)
{
    /// <summary>What all secrets of TrimOut are found by.</summary>
    public const string Service = "trimout-office";

    /// <summary>The secret of credentials.</summary>
    public static SecretName Of(Credentials office) => new(office.Device, office.Host, office.Port, office.Database);

    /// <summary>As credentials say it: <c>van at 192.0.2.7:5432/trimout</c>.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Device} at {Host}:{Port}/{Database}");
}
