using System.Net;
using System.Net.Sockets;
using TrimOut.Office;
using TrimOut.Office.Running;

namespace TrimOut.Tests.WholeJob;

/// <summary>An office of its own for the time of a job, begun beside it; none where there is no PostgreSQL on this machine.</summary>
internal sealed class OfficeOfTheJob : IAsyncDisposable
{
    private readonly string _folder = Path.Combine(Path.GetTempPath(), $"trimout-office-{Path.GetRandomFileName()}");
    private readonly Task<(TrialServer Server, Credentials Van)?> _begun;

    public OfficeOfTheJob() => _begun = Task.Run(Begin);

    /// <summary>What the crew's laptop is known by there; null where there is no server.</summary>
    public Task<Credentials?> Credentials => _begun.ContinueWith(b => b.GetAwaiter().GetResult()?.Van, TaskScheduler.Default);

    public async ValueTask DisposeAsync()
    {
        if (await _begun is not { } office)
            return;
        office.Server.Stop(asIfKilled: true);
        Directory.Delete(_folder, recursive: true);
    }

    private async Task<(TrialServer, Credentials)?> Begin()
    {
        if (TrialServer.Programs is null)
            return null;
        // A killed process loses nothing that was handed to the system: only the power could.
        var (server, owner, _) = await TrialServer.Make(_folder, FreePort(), TimeProvider.System, "fsync = off\nfull_page_writes = off");
        await Migrations.Apply(owner, _ => { }, default);
        return (server, await Devices.Enroll(owner, "van", "crew", default));
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
