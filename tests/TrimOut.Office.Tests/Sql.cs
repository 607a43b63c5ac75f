using Npgsql;

namespace TrimOut.Office.Tests;

/// <summary>Statements as somebody with another program would type them.</summary>
internal static class Sql
{
    /// <summary>Runs statements over one connection.</summary>
    /// <returns>All values that came, and all that was said.</returns>
    public static async Task<string> Try(Credentials who, params string[] statements)
    {
        await using var source = OfficeConnection.Source(who);
        await using var connection = await source.OpenConnectionAsync();
        return await Try(connection, statements);
    }

    /// <summary>Everything that the office holds, as one text, without cursors, which everybody writes for himself.</summary>
    public static async Task<string> All(Credentials owner)
    {
        await using var source = OfficeConnection.Source(owner);
        await using var connection = await source.OpenConnectionAsync();
        return await All(connection);
    }

    /// <summary>The same over a connection that is open.</summary>
    public static Task<string> All(NpgsqlConnection owner) => Try(owner, Everything);

    private static async Task<string> Try(NpgsqlConnection connection, string[] statements)
    {
        var came = new List<string>();
        connection.Notice += (_, notice) => came.Add(notice.Notice.MessageText);
        foreach (var statement in statements)
        {
            try
            {
                if (statement.StartsWith("copy", StringComparison.Ordinal))
                {
                    using var lines = await connection.BeginTextExportAsync(statement);
                    came.Add(await lines.ReadToEndAsync());
                    continue;
                }
                await using var command = new NpgsqlCommand(statement, connection) { AllResultTypesAreUnknown = true };
                await using var rows = await command.ExecuteReaderAsync();
                do
                {
                    while (await rows.ReadAsync())
                        came.AddRange(Enumerable.Range(0, rows.FieldCount).Select(f => rows.IsDBNull(f) ? "" : rows.GetString(f)));
                }
                while (await rows.NextResultAsync());
            }
            catch (PostgresException failed)
            {
                came.Add($"{failed.SqlState} {failed.MessageText}");
            }
        }
        return string.Join('\n', came);
    }

    private static readonly string[] Everything =
    [
        "select h::text from office.houses h order by house", "select c::text from office.changes c order by house, arrival",
        "select p::text from office.pushes p order by push", "select d::text from office.devices d order by device",
        "select a::text from office.access a order by house, device", "select s::text from office.summaries s order by house",
        "select relname || reloptions::text from pg_class where relnamespace = 'report'::regnamespace order by 1",
        "select m::text from office.migrations m order by number",
        "select tgname || tgenabled::text from pg_trigger where not tgisinternal order by 1",
        "select polname || polrelid::regclass::text from pg_policy order by 1",
        "select proname || proacl::text from pg_proc where pronamespace = 'office'::regnamespace order by 1",
        "select relname || relacl::text || relrowsecurity::text from pg_class where relnamespace = 'office'::regnamespace order by 1",
        "select rolname || rolsuper::text || rolcreaterole::text || rolcanlogin::text from pg_roles order by 1",
        "select roleid::regrole::text || member::regrole::text from pg_auth_members order by 1",
        "select nspname || nspowner::regrole::text from pg_namespace where nspname !~ '^pg_' order by 1",
    ];
}
