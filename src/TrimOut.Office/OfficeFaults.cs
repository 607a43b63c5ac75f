using System.Net.Sockets;
using System.Security.Authentication;
using Npgsql;

namespace TrimOut.Office;

/// <summary>Says in words what the server or the network answered. Nothing of a password is in them: the server never sends it back.</summary>
internal static class OfficeFaults
{
    /// <summary>Does something with the server, and says what goes wrong in words.</summary>
    /// <exception cref="OfficeException">It went wrong.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<T> Worded<T>(Credentials office, Func<Task<T>> work, CancellationToken stop)
    {
        try
        {
            // A network that hangs does not hear that it is to stop: whoever waits goes, and what was begun ends by itself.
            return await work().WaitAsync(stop).ConfigureAwait(false);
        }
        catch (Exception failed) when (failed is NpgsqlException or IOException or SocketException or AuthenticationException or TimeoutException
            or ObjectDisposedException or InvalidOperationException)
        {
            stop.ThrowIfCancellationRequested();
            throw Of(office, failed);
        }
    }

    private static OfficeException Of(Credentials office, Exception failed)
    {
        var where = $"the office at {office.Host}:{office.Port}";
        if (failed is PostgresException said)
            return OfServer(where, office, said);
        for (var at = failed; at is not null; at = at.InnerException)
        {
            if (at is AuthenticationException)
            {
                return new(OfficeFault.NotTrusted, $"{Capital(where)} does not show the certificate that it should have, so nothing was said to it. "
                    + "Ask the office for a new credentials file if it has a new certificate; else somebody may stand between you and it.", failed);
            }
        }
        return failed.Message.Contains("SSL", StringComparison.Ordinal) && failed is not { InnerException: IOException or SocketException }
            ? new(OfficeFault.NotTrusted, $"{Capital(where)} takes no encrypted connection, so nothing was said to it.", failed)
            : new(OfficeFault.Away,
                $"{Capital(where)} can't be reached now. All that you saved is in the house file; try again when there is a network.", failed);
    }

    private static OfficeException OfServer(string where, Credentials office, PostgresException said) => said.SqlState switch
    {
        "TO001" => new(OfficeFault.BadData, $"The office refused what was sent: {said.MessageText}. Nothing of it was taken.", said),
        "TO002" => new(OfficeFault.BadData, $"Two different changes are called {said.MessageText}: the one here and the one at the office. Nothing was sent. "
            + "This comes of a machine or a house file that was copied while it was worked on. Compare the two copies before going on.", said),
        "TO003" => new(OfficeFault.NotAllowed, $"The office has shut out {office.Device}, or never let it in. Ask the office.", said),
        "TO004" => new(OfficeFault.NotAllowed, $"{office.Device} may not do that in this house at the office. Ask the office to let it in.", said)
        { IsOnlyReading = true },
        "TO008" => new(OfficeFault.BadData, $"The office has no house {said.MessageText}. trimout office houses lists those that there are.", said),
        "TO006" => new(OfficeFault.BadData, "The office was put back from a backup since the last exchange.", said) { IsAnotherPast = true },
        "TO007" => new(OfficeFault.BadData, $"The office knows no device {said.MessageText}. It is enrolled first.", said),
        "42501" => new(OfficeFault.NotAllowed, $"Only the owner of the office's tables may do that, and {office.Device} is not. "
            + "Name the owner's credentials: --credentials FILE", said),
        "28P01" or "28000" => new(OfficeFault.NotAllowed,
            $"{Capital(where)} does not let in {office.Device}: it was shut out, or its credentials are old. Ask the office for a new credentials file.", said),
        "3D000" or "3F000" or "42883" or "42P01" => new(OfficeFault.NotSetUp,
            $"{Capital(where)} has no tables that this TrimOut can use. Whoever looks after it runs: trimout office set-up", said),
        "57P01" or "57P02" or "57P03" or "53300" or "40001" or "40P01" or "25006" or "57014" or "55P03" => new(OfficeFault.Away,
            $"{Capital(where)} is busy or closing down. All that you saved is in the house file; try again in a while.", said),
        _ => new(OfficeFault.BadData, $"{Capital(where)} refused: {said.MessageText}.", said),
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
