using TrimOut.Office;

namespace TrimOut.Desks.Secrets;

/// <summary>The keychain of a Mac, by its program <c>security</c>.</summary>
/// <remarks>
/// That takes a secret as an argument, which everybody on the machine can read, or from the terminal. But its commands may also come on standard input
/// (<c>security -i</c>), secret and all, and then no argument has it. That way it does not end with a failed command's code: what was put in is looked up.
/// </remarks>
internal sealed class Keychain(StoreProgram program) : ISecretStore
{
    /// <summary>errSecItemNotFound as an exit code.</summary>
    private const int NotThere = 44;

    public string Name => "the keychain";

    public string? Lookup(SecretName of, CancellationToken stop) =>
        program.Run(["find-generic-password", "-s", SecretName.Service, "-a", of.ToString(), "-w"], "", null, stop) switch
        {
            { Code: 0 } found => found.Output.TrimEnd('\n'),
            { Code: NotThere } => null,
            var other => throw program.Failed(other),
        };

    public void Store(SecretName of, string secret, CancellationToken stop)
    {
        var command = $"add-generic-password -U -s {SecretName.Service} -a {Quoted(of.ToString())} -w {Quoted(secret)}\n";
        if (program.Run(["-i"], command, secret, stop) is { Code: not 0 } failed)
            throw program.Failed(failed);
    }

    public void Forget(SecretName of, CancellationToken stop)
    {
        if (program.Run(["delete-generic-password", "-s", SecretName.Service, "-a", of.ToString()], "", null, stop)
            is { Code: not (0 or NotThere) } failed)
            throw program.Failed(failed);
    }

    /// <summary>One word of a command. What is not plain ASCII would be handed out as hexadecimal digits, and a line end begins another command.</summary>
    private static string Quoted(string word) => word.All(c => c is >= ' ' and <= '~')
        ? $"\"{word.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\""
        : throw new OfficeException(OfficeFault.NoCredentials, "The keychain takes only letters, digits and signs of ASCII of TrimOut; there are others.");
}
