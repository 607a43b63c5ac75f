using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Npgsql;

namespace TrimOut.Office.Running;

/// <summary>A step that brings the office's tables from one version to the next.</summary>
/// <param name="Number">Its number, from 1 on without a gap: the version that the tables have after it.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sql">What is done.</param>
public sealed record Migration(int Number, string Name, string Sql)
{
    /// <summary>Tells whether what was done is what it says now.</summary>
    public string Sha256 => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Sql)));
}

/// <summary>Makes the office's tables and brings those of an earlier version up to this program's.</summary>
public static class Migrations
{
    /// <summary>All of them, in order. A released one is never changed: the next one is.</summary>
    public static ImmutableArray<Migration> All { get; } = [.. typeof(Migrations).Assembly.GetManifestResourceNames()
        .Where(n => n.EndsWith(".sql", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Read)];

    /// <summary>Carries out those that were not, each in a transaction of its own.</summary>
    /// <param name="owner">The owner of the tables.</param>
    /// <param name="says">Told the name of each.</param>
    /// <param name="stop">Stops between two.</param>
    /// <param name="upTo">The last one; for tests of earlier versions.</param>
    /// <returns>How many were carried out.</returns>
    /// <exception cref="OfficeException">The tables are newer than this program or were made by another text of it, or it could not be done.</exception>
    public static async Task<int> Apply(Credentials owner, Action<string> says, CancellationToken stop, int upTo = int.MaxValue)
    {
        var done = 0;
        foreach (var migration in All.Where(m => m.Number <= upTo))
        {
            if (await OfficeFaults.Worded(owner, () => Apply(owner, migration, stop), stop).ConfigureAwait(false))
            {
                done++;
                says(migration.Name);
            }
        }
        return done;
    }

    private static async Task<bool> Apply(Credentials owner, Migration migration, CancellationToken stop)
    {
        var source = OfficeConnection.Source(owner);
        await using var _ = source.ConfigureAwait(false);
        var connection = await source.OpenConnectionAsync(stop).ConfigureAwait(false);
        await using var __ = connection.ConfigureAwait(false);
        var transaction = await connection.BeginTransactionAsync(stop).ConfigureAwait(false);
        await using var ___ = transaction.ConfigureAwait(false);
        await Do(connection, """
            select pg_advisory_xact_lock(7466184);
            create schema if not exists office;
            create table if not exists office.migrations
              (number int primary key, name text not null, sha256 text not null, at timestamptz not null default now());
            """, stop).ConfigureAwait(false);
        var known = new Dictionary<int, string>();
        var asked = new NpgsqlCommand("select number, sha256 from office.migrations", connection);
        await using (asked.ConfigureAwait(false))
        {
            var rows = await asked.ExecuteReaderAsync(stop).ConfigureAwait(false);
            await using (rows.ConfigureAwait(false))
            {
                while (await rows.ReadAsync(stop).ConfigureAwait(false))
                    known.Add(rows.GetInt32(0), rows.GetString(1));
            }
        }
        if (known.Keys.Any(n => n > All.Length))
        {
            throw new OfficeException(OfficeFault.NotSetUp, string.Create(CultureInfo.InvariantCulture,
                $"The office's tables are of version {known.Keys.Max()}, and this TrimOut knows up to {All.Length}. Bring this TrimOut up to date."));
        }
        if (known.TryGetValue(migration.Number, out var sha256))
        {
            return sha256 == migration.Sha256 ? false : throw new OfficeException(OfficeFault.NotSetUp,
                $"The office's tables were made by another text of {migration.Name} than this TrimOut has. Nothing was changed.");
        }
        await Do(connection, migration.Sql, stop).ConfigureAwait(false);
        var noted = new NpgsqlCommand("insert into office.migrations (number, name, sha256) values ($1, $2, $3)", connection)
        {
            Parameters = { new NpgsqlParameter<int> { TypedValue = migration.Number }, new NpgsqlParameter<string> { TypedValue = migration.Name },
                new NpgsqlParameter<string> { TypedValue = migration.Sha256 } },
        };
        await using (noted.ConfigureAwait(false))
            await noted.ExecuteNonQueryAsync(stop).ConfigureAwait(false);
        await transaction.CommitAsync(stop).ConfigureAwait(false);
        return true;
    }

    private static async Task Do(NpgsqlConnection connection, string sql, CancellationToken stop)
    {
        var command = new NpgsqlCommand(sql, connection);
        await using (command.ConfigureAwait(false))
            await command.ExecuteNonQueryAsync(stop).ConfigureAwait(false);
    }

    private static Migration Read(string resource)
    {
        using var text = new StreamReader(typeof(Migrations).Assembly.GetManifestResourceStream(resource)!);
        return new Migration(int.Parse(resource.AsSpan(0, 3), NumberStyles.None, CultureInfo.InvariantCulture), resource[..^4],
            text.ReadToEnd().ReplaceLineEndings("\n"));
    }
}
