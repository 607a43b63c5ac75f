using System.Security.Cryptography.X509Certificates;
using Npgsql;
using NpgsqlTypes;

namespace TrimOut.Office;

/// <summary>A house at the office.</summary>
/// <param name="House">Its number there.</param>
/// <param name="Begun">The name of the change that began it, the same in all its copies.</param>
/// <param name="Last">The arrival number of its latest change; 0 where none has arrived.</param>
/// <param name="Part">What this device may do in it: office, crew or reader.</param>
/// <param name="Name">What it is called, by the office's lists; null where none were worked out yet.</param>
public sealed record OfficeHouse(int House, string Begun, int Last, string Part, string? Name);

/// <summary>A change that arrived at the office.</summary>
/// <param name="Arrival">Its arrival number.</param>
/// <param name="Token">What the office says of it.</param>
/// <param name="Line">The change as one line, byte for byte as it was sent.</param>
public readonly record struct ArrivedChange(int Arrival, Guid Token, string Line);

/// <summary>What came of sending changes.</summary>
/// <param name="Before">The house's last arrival number before.</param>
/// <param name="Last">The same afterwards.</param>
/// <param name="Token">What the office says of the last change.</param>
/// <param name="Fresh">How many the office had not had.</param>
public readonly record struct SentChanges(int Before, int Last, Guid Token, int Fresh);

/// <summary>A connection to the office: encrypted, to the server whose certificate the office's own root has signed, or none at all.</summary>
public sealed class OfficeConnection : IAsyncDisposable
{
    private readonly Credentials _office;
    private readonly NpgsqlDataSource _source;
    private readonly NpgsqlConnection _connection;
    private volatile bool _isLeft;

    private OfficeConnection(Credentials office, NpgsqlDataSource source, NpgsqlConnection connection) =>
        (_office, _source, _connection) = (office, source, connection);

    /// <summary>Connects.</summary>
    /// <param name="office">Where, and as which device.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <param name="patience">The most seconds that an answer is waited for.</param>
    /// <exception cref="OfficeException">There is no connection.</exception>
    public static Task<OfficeConnection> Open(Credentials office, CancellationToken stop, int patience = 60) => OfficeFaults.Worded(office, async () =>
    {
        var source = Source(office, patience);
        try
        {
            return new OfficeConnection(office, source, await source.OpenConnectionAsync(stop).ConfigureAwait(false));
        }
        catch
        {
            await source.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }, stop);

    /// <summary>Where and how: nobody but the server whose certificate holds is ever told anything.</summary>
    internal static NpgsqlDataSource Source(Credentials office, int patience = 60)
    {
        if (office.Password is not { Length: > 0 } password)
        {
            throw new OfficeException(OfficeFault.NoCredentials, $"There is no password for {office.Device}: it stands neither in the credentials file nor in "
                + $"{Credentials.PasswordVariable}.");
        }
        var builder = new NpgsqlSlimDataSourceBuilder
        {
            ConnectionStringBuilder =
            {
                Host = office.Host,
                Port = office.Port,
                Database = office.Database,
                Username = office.Login,
                Password = password,
                SslMode = SslMode.VerifyFull,
                ChannelBinding = ChannelBinding.Require,
                GssEncryptionMode = GssEncryptionMode.Disable,
                ApplicationName = "trimout",
                Pooling = false,
                Timeout = Math.Min(patience, 15),
                CommandTimeout = patience,
                CancellationTimeout = 2000,
            },
        };
        builder.EnableTransportSecurity();
        builder.EnableArrays();
        builder.UseRootCertificates(Roots(office));
        return builder.Build();
    }

    /// <summary>The house that has one of these changes; null where this device sees none.</summary>
    /// <param name="ids">Names of changes.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">It could not be asked.</exception>
    public Task<int?> Find(IReadOnlyCollection<string> ids, CancellationToken stop) => Asked("select house from office.find($1)", async command =>
        await command.ExecuteScalarAsync(stop).ConfigureAwait(false) as int?, stop, (object)ids.ToArray());

    /// <summary>Begins a house at the office, or says which one it is.</summary>
    /// <param name="begun">The name of the change that began it.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">This device may not.</exception>
    public Task<int> Begin(string begun, CancellationToken stop) => Asked("select office.begin_house($1)", async command =>
        (int)(await command.ExecuteScalarAsync(stop).ConfigureAwait(false))!, stop, begun);

    /// <summary>Sends changes: all of them arrive, or none; those that are there already are passed over.</summary>
    /// <param name="house">The house's number.</param>
    /// <param name="lines">The changes, a line each.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">They did not arrive, or nobody knows: sending them again is safe.</exception>
    public Task<SentChanges> Send(int house, IReadOnlyCollection<string> lines, CancellationToken stop) =>
        Asked("select before, last, token, fresh from office.push($1, $2)", async command =>
        {
            var answer = await command.ExecuteReaderAsync(stop).ConfigureAwait(false);
            await using (answer.ConfigureAwait(false))
            {
                await answer.ReadAsync(stop).ConfigureAwait(false);
                return new SentChanges(answer.GetInt32(0), answer.GetInt32(1), await answer.IsDBNullAsync(2, stop).ConfigureAwait(false) ? Guid.Empty
                    : answer.GetGuid(2), answer.GetInt32(3));
            }
        }, stop, house, lines.ToArray());

    /// <summary>Fetches what arrived after a number, in its order.</summary>
    /// <param name="house">The house's number.</param>
    /// <param name="after">The number; 0 for the beginning.</param>
    /// <param name="token">What the office said of the change with that number.</param>
    /// <param name="most">So many at the most, 10,000 or fewer.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">It could not be fetched, or the office has another past.</exception>
    public Task<IReadOnlyList<ArrivedChange>> Fetch(int house, int after, Guid token, int most, CancellationToken stop) =>
        Asked("select arrival, token, line from office.fetch($1, $2, $3, $4)", async command =>
        {
            var arrived = new List<ArrivedChange>();
            var answer = await command.ExecuteReaderAsync(stop).ConfigureAwait(false);
            await using (answer.ConfigureAwait(false))
            {
                while (await answer.ReadAsync(stop).ConfigureAwait(false))
                    arrived.Add(new(answer.GetInt32(0), answer.GetGuid(1), answer.GetString(2)));
            }
            return (IReadOnlyList<ArrivedChange>)arrived;
        }, stop, house, after, token, most);

    /// <summary>The houses that this device may see.</summary>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">It could not be asked.</exception>
    public Task<IReadOnlyList<OfficeHouse>> Houses(CancellationToken stop) => Asked(
        "select m.house, m.begun, m.last, m.part, h.name from office.mine() m left join report.houses h using (house) order by m.house", async command =>
    {
        var houses = new List<OfficeHouse>();
        var answer = await command.ExecuteReaderAsync(stop).ConfigureAwait(false);
        await using (answer.ConfigureAwait(false))
        {
            while (await answer.ReadAsync(stop).ConfigureAwait(false))
                houses.Add(new(answer.GetInt32(0), answer.GetString(1), answer.GetInt32(2), answer.GetString(3),
                    await answer.IsDBNullAsync(4, stop).ConfigureAwait(false) ? null : answer.GetString(4)));
        }
        return (IReadOnlyList<OfficeHouse>)houses;
    }, stop);

    /// <summary>Lets a device into a house, or out of it.</summary>
    /// <param name="house">The house's number.</param>
    /// <param name="device">The device.</param>
    /// <param name="part">What it may do there: office, crew or reader; null for nothing any more.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">This device may not say so, or there is no such device.</exception>
    public Task<bool> LetIn(int house, string device, string? part, CancellationToken stop) => Asked("select office.let_in($1, $2, $3)", async command =>
    {
        await command.ExecuteNonQueryAsync(stop).ConfigureAwait(false);
        return true;
    }, stop, house, device, part);

    /// <summary>Keeps the lists of a house for the office's views.</summary>
    /// <param name="house">The house's number.</param>
    /// <param name="arrival">The arrival number of the last change that they were worked out from, and all before it.</param>
    /// <param name="lists">The lists, as <see cref="HouseLists"/> writes them.</param>
    /// <param name="stop">Stops waiting.</param>
    /// <returns>Whether they were kept; not where more has arrived since.</returns>
    /// <exception cref="OfficeException">They could not be kept.</exception>
    public Task<bool> KeepLists(int house, int arrival, string lists, CancellationToken stop) =>
        Asked("select office.keep_lists($1, $2, $3, $4::jsonb)", async command => (bool)(await command.ExecuteScalarAsync(stop).ConfigureAwait(false))!, stop,
            house, arrival, typeof(HouseLists).Assembly.GetName().Version!.ToString(), lists);

    /// <summary>The houses whose lists are behind their history.</summary>
    /// <param name="stop">Stops waiting.</param>
    /// <exception cref="OfficeException">It could not be asked.</exception>
    public Task<IReadOnlyList<int>> Behind(CancellationToken stop) => Asked("select house from office.behind()", async command =>
    {
        var houses = new List<int>();
        var answer = await command.ExecuteReaderAsync(stop).ConfigureAwait(false);
        await using (answer.ConfigureAwait(false))
        {
            while (await answer.ReadAsync(stop).ConfigureAwait(false))
                houses.Add(answer.GetInt32(0));
        }
        return (IReadOnlyList<int>)houses;
    }, stop);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        var closing = Close();
        if (!_isLeft)
            await closing.ConfigureAwait(false);
    }

    private async Task Close()
    {
        try
        {
            await _connection.DisposeAsync().ConfigureAwait(false);
            await _source.DisposeAsync().ConfigureAwait(false);
        }
        catch (Exception failed) when (failed is NpgsqlException or IOException or InvalidOperationException)
        {
            // It is gone either way.
        }
    }

    private Task<T> Asked<T>(string text, Func<NpgsqlCommand, Task<T>> ask, CancellationToken stop, params object?[] values) => OfficeFaults.Worded(_office,
        async () =>
        {
            // Whoever stops leaves the connection to end by itself.
            using var left = stop.Register(() => _isLeft = true);
            var command = new NpgsqlCommand(text, _connection);
            await using (command.ConfigureAwait(false))
            {
                foreach (var value in values)
                {
                    command.Parameters.Add(value switch
                    {
                        int number => new NpgsqlParameter<int> { TypedValue = number },
                        Guid token => new NpgsqlParameter<Guid> { TypedValue = token },
                        string[] texts => new NpgsqlParameter<string[]> { TypedValue = texts, NpgsqlDbType = NpgsqlDbType.Array | NpgsqlDbType.Text },
                        string line => new NpgsqlParameter<string> { TypedValue = line },
                        _ => new NpgsqlParameter { Value = DBNull.Value, NpgsqlDbType = NpgsqlDbType.Text },
                    });
                }
                return await ask(command).ConfigureAwait(false);
            }
        }, stop);

    private static X509Certificate2Collection Roots(Credentials office)
    {
        try
        {
            var roots = new X509Certificate2Collection();
            roots.ImportFromPem(office.Root);
            return roots;
        }
        catch (System.Security.Cryptography.CryptographicException failed)
        {
            throw new OfficeException(OfficeFault.NoCredentials,
                "The office's certificate in the credentials file can't be read. Ask the office for a new file.", failed);
        }
    }
}
