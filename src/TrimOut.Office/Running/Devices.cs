using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Npgsql;

namespace TrimOut.Office.Running;

/// <summary>Who may connect to the office: devices are enrolled and shut out by the owner of its tables.</summary>
public static partial class Devices
{
    /// <summary>What a device may do at the most.</summary>
    public static IReadOnlyList<string> Parts { get; } = ["office", "crew", "reader"];

    /// <summary>Whether a device can have that name: lower-case letters, digits and hyphens, 40 at the most.</summary>
    public static bool IsName(string name) => Name().IsMatch(name);

    /// <summary>Enrolls a device, or gives one that is enrolled a new secret; one that was shut out is let in again.</summary>
    /// <param name="owner">The owner of the tables.</param>
    /// <param name="device">The device's name.</param>
    /// <param name="part">What it may do at the most: office (all houses), crew or reader (those that it is let into).</param>
    /// <param name="stop">Stops waiting.</param>
    /// <returns>Its credentials, with a secret that nobody else knows: the office keeps only what the secret is checked by.</returns>
    /// <exception cref="OfficeException">It could not be done.</exception>
    public static async Task<Credentials> Enroll(Credentials owner, string device, string part, CancellationToken stop)
    {
        if (!IsName(device) || !Parts.Contains(part))
            throw new OfficeException(OfficeFault.BadData,
                $"A device is called by lower-case letters, digits and hyphens, and is office, crew or reader: {device}.");
        var password = Convert.ToBase64String(RandomNumberGenerator.GetBytes(24));
        var login = $"device-{device}";
        // Name and secret's check have no quote in them, as the two lines above make sure: a role's name can't be a parameter.
        await Do(owner, $"""
            insert into office.devices (device, part) values ('{device}', '{part}')
              on conflict (device) do update set part = excluded.part, shut_out_at = null;
            do $$ begin
              if not exists (select from pg_catalog.pg_roles where rolname = '{login}') then create role "{login}" in role office_device; end if;
            end $$;
            alter role "{login}" login password '{Check(password)}';
            """, stop).ConfigureAwait(false);
        return owner with { Device = device, Login = login, Password = password, PasswordIn = null };
    }

    /// <summary>Shuts a device out, at once: also where it is connected now.</summary>
    /// <param name="owner">The owner of the tables.</param>
    /// <param name="device">The device's name.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">There is no such device, or it could not be done.</exception>
    public static Task ShutOut(Credentials owner, string device, CancellationToken stop) => IsName(device) ? Do(owner, $"""
        do $$ begin
          update office.devices set shut_out_at = coalesce(shut_out_at, now()) where device = '{device}';
          if not found then raise exception using errcode = 'TO007', message = '{device}'; end if;
          alter role "device-{device}" nologin;
          if pg_has_role(current_user, 'pg_signal_backend', 'member') then
            perform pg_terminate_backend(pid) from pg_stat_activity where usename = 'device-{device}';
          end if;
        end $$;
        """, stop) : throw new OfficeException(OfficeFault.BadData, $"No device is called {device}.");

    /// <summary>What the server checks a secret by (RFC 5803), so that the secret itself never goes to it, nor into its log.</summary>
    internal static string Check(string password)
    {
        const int rounds = 4096;
        var salt = RandomNumberGenerator.GetBytes(16);
        var salted = Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(password), salt, rounds, HashAlgorithmName.SHA256, 32);
        var stored = SHA256.HashData(HMACSHA256.HashData(salted, "Client Key"u8));
        return $"SCRAM-SHA-256${rounds}:{Convert.ToBase64String(salt)}${Convert.ToBase64String(stored)}:"
            + Convert.ToBase64String(HMACSHA256.HashData(salted, "Server Key"u8));
    }

    internal static Task Do(Credentials owner, string sql, CancellationToken stop) => OfficeFaults.Worded(owner, async () =>
    {
        var source = OfficeConnection.Source(owner);
        await using var _ = source.ConfigureAwait(false);
        var connection = await source.OpenConnectionAsync(stop).ConfigureAwait(false);
        await using var __ = connection.ConfigureAwait(false);
        var command = new NpgsqlCommand(sql, connection);
        await using (command.ConfigureAwait(false))
            return await command.ExecuteNonQueryAsync(stop).ConfigureAwait(false);
    }, stop);

    [GeneratedRegex("^[a-z0-9][a-z0-9-]{0,39}\\z", RegexOptions.None, 1000)]
    private static partial Regex Name();
}
