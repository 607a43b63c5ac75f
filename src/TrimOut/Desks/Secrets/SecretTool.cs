using System.Globalization;

namespace TrimOut.Desks.Secrets;

/// <summary>The keyring of a Linux desktop, by the program <c>secret-tool</c> of libsecret: it takes the secret on standard input.</summary>
/// <remarks>
/// Its manual page says: a secret that is piped in is kept to the end of the input, line end and all; one that is looked up has a line end behind it only on a
/// terminal; what fails does not end with 0. One that is not there ends with 1 and says nothing.
/// </remarks>
internal sealed class SecretTool(StoreProgram program) : ISecretStore
{
    public string Name => $"the keyring ({program.Name})";

    public string? Lookup(SecretName of, CancellationToken stop) => program.Run(["lookup", .. Attributes(of)], "", null, stop) switch
    {
        { Code: 0, Output.Length: > 0 } found => found.Output,
        { Code: 0 or 1, Output: "", Said: "" } => null,
        var other => throw program.Failed(other),
    };

    public void Store(SecretName of, string secret, CancellationToken stop)
    {
        if (program.Run(["store", $"--label=TrimOut: {of}", .. Attributes(of)], secret, secret, stop) is { Code: not 0 } failed)
            throw program.Failed(failed);
    }

    public void Forget(SecretName of, CancellationToken stop)
    {
        if (program.Run(["clear", .. Attributes(of)], "", null, stop) is not ({ Code: 0 } or { Code: 1, Said: "" }) and var failed)
            throw program.Failed(failed);
    }

    private static string[] Attributes(SecretName of) =>
    [
        "service", SecretName.Service, "device", of.Device, "host", of.Host, "port", of.Port.ToString(CultureInfo.InvariantCulture), "database", of.Database,
    ];
}
