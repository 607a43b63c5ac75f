using System.Net;
using System.Net.Sockets;
using TrimOut.Office.Running;

namespace TrimOut.Office.Tests;

/// <summary>A real PostgreSQL for tests, made once a run and gone with it. What is tested on it is skipped where there is none.</summary>
public sealed class OfficeServer : IAsyncLifetime
{
    private readonly string _folder = Path.Combine(Path.GetTempPath(), $"trimout-office-{Path.GetRandomFileName()}");

    public TrialServer Server { get; private set; } = null!;

    public Credentials Owner { get; private set; } = null!;

    public Credentials Administrator { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        if (TrialServer.Programs is null)
            return;
        // A killed process loses nothing that was handed to the system: only the power could.
        (Server, Owner, Administrator) = await TrialServer.Make(_folder, FreePort(), TimeProvider.System,
            "log_statement = all\nlog_connections = on\nfsync = off\nfull_page_writes = off");
        await Migrations.Apply(Owner, _ => { }, default);
    }

    public Task DisposeAsync()
    {
        if (Server is not null)
        {
            Server.Stop(asIfKilled: true);
            Directory.Delete(_folder, recursive: true);
        }
        return Task.CompletedTask;
    }

    public Task<Credentials> Enroll(string device, string part = "crew") => Devices.Enroll(Owner, device, part, default);

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}

/// <summary>A test that needs a PostgreSQL on this machine.</summary>
public sealed class OfficeFactAttribute : FactAttribute
{
    public OfficeFactAttribute() => Skip = TrialServer.Programs is null ? "There is no PostgreSQL 15 or later here (Debian: apt install postgresql)." : null!;
}

/// <summary>The same for a test with cases.</summary>
public sealed class OfficeTheoryAttribute : TheoryAttribute
{
    public OfficeTheoryAttribute() => Skip = new OfficeFactAttribute().Skip;
}
