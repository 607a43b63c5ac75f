using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Office;

namespace TrimOut.Desks.Secrets;

/// <summary>Runs the program that a system has for its store of secrets: without a shell, with whatever is secret on its standard input.</summary>
/// <param name="name">The program: a path, or the name of one in the folders of PATH.</param>
/// <param name="limit">How long it is waited for.</param>
/// <param name="folders">The folders, as PATH has them; null for those of the environment.</param>
internal sealed class StoreProgram(string name, TimeSpan limit, string? folders = null)
{
    private const int MostBytes = 16 * 1024;
    private const int MostSaid = 200;

    /// <summary>What the program is called.</summary>
    public string Name => Path.GetFileName(name);

    /// <summary>Runs it to its end.</summary>
    /// <param name="arguments">Its arguments; nothing secret is among them.</param>
    /// <param name="input">What it reads.</param>
    /// <param name="secret">What is not said even where the program itself says it; null where no secret is known.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="OfficeException">It is not there, did not end within the limit, or answers too much.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public StoreAnswer Run(IReadOnlyList<string> arguments, string input, string? secret, CancellationToken stop)
    {
        using var process = Start(arguments);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stop);
        either.CancelAfter(limit);
        try
        {
            return Answered(process, input, secret, either.Token).GetAwaiter().GetResult();
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            stop.ThrowIfCancellationRequested();
            throw Failed(string.Create(CultureInfo.InvariantCulture, $"did not answer within {limit.TotalSeconds:0.#} seconds and was stopped. Its keyring may "
                + $"be locked and ask for its password in a window: unlock it, and try again"));
        }
    }

    /// <summary>That the program did not do what was asked of it.</summary>
    public OfficeException Failed(StoreAnswer answer) => Failed(string.Create(CultureInfo.InvariantCulture, $"ended with {answer.Code}")
        + (answer.Said.Length == 0 ? ", and did not say why" : $": {answer.Said.TrimEnd('.')}"));

    private OfficeException Failed(string how) => new(OfficeFault.NoCredentials, $"The program for the system's store of secrets, {Name}, {how}.");

    private Process Start(IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo(Found(), arguments)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment.Remove(Credentials.PasswordVariable);
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception failed)
        {
            throw Failed($"can't be started: {failed.Message.TrimEnd('.')}");
        }
    }

    /// <summary>Never a program of the folder that one works in: houses come on sticks, and whatever lies beside them must not be told a secret.</summary>
    private string Found() => (folders ?? Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Where(Path.IsPathFullyQualified)
        .Select(f => Path.Combine(f, name)).FirstOrDefault(File.Exists)
        ?? throw Failed("is not on this machine. On Debian: apt install libsecret-tools");

    private async Task<StoreAnswer> Answered(Process process, string input, string? secret, CancellationToken stop)
    {
        // A stream that hangs does not hear that it is to stop: whoever waits goes, and the program is ended.
        var output = Read(process, process.StandardOutput.BaseStream);
        var said = Read(process, process.StandardError.BaseStream);
        try
        {
            await process.StandardInput.BaseStream.WriteAsync(Encoding.UTF8.GetBytes(input), stop).AsTask().WaitAsync(stop).ConfigureAwait(false);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It did not read to the end: how it ended says whether that was right.
        }
        var both = await Task.WhenAll(output, said).WaitAsync(stop).ConfigureAwait(false);
        if (both.Any(b => b.Length > MostBytes))
            throw Failed("answered with more than a secret can be");
        await process.WaitForExitAsync(stop).ConfigureAwait(false);
        return new StoreAnswer(process.ExitCode, Encoding.UTF8.GetString(both[0]), Shown(Encoding.UTF8.GetString(both[1]), secret));
    }

    private static async Task<byte[]> Read(Process process, Stream from)
    {
        var bytes = new byte[MostBytes + 1];
        var read = await from.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false).ConfigureAwait(false);
        if (read > MostBytes)
            process.Kill(entireProcessTree: true);
        return bytes[..read];
    }

    private static string Shown(string said, string? secret) => secret is not null && said.Contains(secret, StringComparison.Ordinal) ? ""
        : ShownText.Line(said.Trim().Split('\n')[0].TrimEnd()) is var line && line.Length > MostSaid ? line[..MostSaid] : line;
}

/// <summary>How such a program ended.</summary>
/// <param name="Code">Its exit code.</param>
/// <param name="Output">What it wrote: the secret, where it was asked for it.</param>
/// <param name="Said">The first line of its errors.</param>
internal sealed record StoreAnswer(int Code, string Output, string Said)
{
    /// <summary>Everything but what may be the secret.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Code}: {Said}");
}
