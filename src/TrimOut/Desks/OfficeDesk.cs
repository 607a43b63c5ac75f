using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Desks.Secrets;
using TrimOut.Office;
using TrimOut.Screens.Shell;

namespace TrimOut.Desks;

/// <summary>The office for the screens: what is known without asking, and exchanging.</summary>
/// <param name="credentials">What this machine is known by there; null where it is enrolled at none. It may say why they can't be used.</param>
/// <param name="secrets">The store that has the secret where the credentials say so; null for the one of this machine.</param>
internal sealed class OfficeDesk(Func<Credentials?> credentials, ISecretStore? secrets = null)
{
    private volatile Stood? _stood;
    private bool _asked;
    private Credentials? _office;
    private string? _unusable;

    /// <summary>What this machine is known by at the office; null where it is enrolled at none, or what it has can't be used.</summary>
    public Credentials? Known
    {
        get
        {
            if (!_asked)
                Ask();
            return _office;
        }
    }

    /// <summary>Where a house stands, as far as this machine knows. Asked with every key: what was worked out is kept until something changes.</summary>
    public OfficeStanding? Of(HouseLog log)
    {
        if (!_asked)
            Ask();
        if (_unusable is not null)
            return new OfficeStanding(_unusable, []);
        if (_office is null)
            return null;
        if (_stood is { } last && ReferenceEquals(last.Log, log))
            return last.Standing;
        var status = ExchangeStatus.Of(OfficePlace.MarkOf(_office, log), log);
        var standing = new OfficeStanding(status.InWords, [.. status.NotYetThere.Reverse()]) { PutOff = status.PutOff };
        _stood = new Stood(log, standing);
        return standing;
    }

    /// <summary>Exchanges a house. Called beside the keys.</summary>
    public Result<OfficeExchange> Exchange(HouseLog log, TimeProvider clock, Action<string> says, CancellationToken stop)
    {
        try
        {
            var office = credentials() ?? throw new OfficeException(OfficeFault.NoCredentials, "This laptop is not enrolled at an office.");
            if (office is { Password: null, PasswordIn: not null })
                says("asking the system for the secret");
            office = SystemSecrets.WithSecret(office, secrets ?? SystemSecrets.Here, stop);
            says("connecting");
            var done = Task.Run(async () =>
            {
                var connection = await OfficeConnection.Open(office, stop).ConfigureAwait(false);
                await using (connection.ConfigureAwait(false))
                    return await TrimOut.Office.Exchange.Run(connection, log, OfficePlace.MarkOf(office, log), clock, sends: true, says, stop)
                        .ConfigureAwait(false);
            }, stop).GetAwaiter().GetResult();
            OfficePlace.Keep(office, log, done.Mark);
            _stood = null;
            return new OfficeExchange(done.Merge, done.Sent) { NotSent = done.NotSent };
        }
        catch (OfficeException failed)
        {
            return new Refusal(failed.Message);
        }
    }

    private void Ask()
    {
        _asked = true;
        try
        {
            _office = credentials();
        }
        catch (OfficeException failed)
        {
            _unusable = failed.Message;
        }
    }

    private sealed record Stood(HouseLog Log, OfficeStanding Standing);
}
