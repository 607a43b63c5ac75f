using System.Net;
using System.Net.Sockets;
using System.Text;
using Npgsql;
using TrimOut.Office.Running;
using TrimOut.Office.Tests.Storms;

namespace TrimOut.Office.Tests.Who;

/// <summary>Nothing goes to or from the office but encrypted, and to no server but the one whose certificate holds.</summary>
public class TransportTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    [OfficeFact]
    public async Task AConnectionThatIsNotEncryptedIsRefusedByTheServer()
    {
        var van = await server.Enroll("plain-van");
        await using var plain = new NpgsqlConnection(new NpgsqlConnectionStringBuilder
        {
            Host = van.Host,
            Port = van.Port,
            Database = van.Database,
            Username = van.Login,
            Password = van.Password,
            SslMode = SslMode.Disable,
            Pooling = false,
        }.ConnectionString);
        Assert.Contains("no encryption", (await Assert.ThrowsAsync<PostgresException>(() => plain.OpenAsync())).MessageText);
    }

    [OfficeFact]
    public async Task NothingOfAnExchangeCanBeReadOnTheWay()
    {
        var (van, house) = (await server.Enroll("heard-van"), Houses.Begin("House that somebody listens to"));
        house.Note("a word that nobody else may hear");
        using var proxy = new CutProxy(van.Port);
        await (van with { Port = proxy.Port }).Exchange(house, null);
        var heard = Encoding.Latin1.GetString(proxy.Heard);
        Assert.True(proxy.Heard.Length > 2000, "the proxy was on the way");
        Assert.All((string[])["a word that", "somebody listens", van.Password!, van.Login, "office.push"], word => Assert.DoesNotContain(word, heard));
    }

    [OfficeFact]
    public async Task AnotherRootAnotherNameAndAServerWithoutACertificateAreNotTrusted()
    {
        var van = await server.Enroll("wary-van");
        await NotTrusted(van with { Root = OwnCertificate.For(TrialServer.Host, TimeProvider.System).Root });
        await NotTrusted(van with { Host = "localhost" });
        using var plain = new TcpListener(IPAddress.Loopback, 0);
        plain.Start();
        var answer = Task.Run(async () =>
        {
            using var caller = await plain.AcceptTcpClientAsync();
            await caller.GetStream().ReadExactlyAsync(new byte[8]);
            await caller.GetStream().WriteAsync("N"u8.ToArray());
            var more = new byte[1024];
            return await caller.GetStream().ReadAsync(more);
        });
        await NotTrusted(van with { Port = ((IPEndPoint)plain.LocalEndpoint).Port });
        Assert.Equal(0, await answer);
    }

    private static async Task NotTrusted(Credentials office) =>
        Assert.Equal(OfficeFault.NotTrusted, (await Assert.ThrowsAsync<OfficeException>(() => OfficeConnection.Open(office, default))).Fault);

    [OfficeFact]
    public async Task TheSecretStandsInNoMessageAndNotInTheServersLog()
    {
        var van = await server.Enroll("quiet-van");
        await using (await OfficeConnection.Open(van, default)) { }
        var wrong = van with { Password = "not-the-secret" };
        var refused = await Assert.ThrowsAsync<OfficeException>(() => OfficeConnection.Open(wrong, default));
        Assert.DoesNotContain("not-the-secret", refused.ToString());
        Assert.DoesNotContain(van.Password!, van.ToString());
        var log = await File.ReadAllTextAsync(Path.Combine(server.Server.Folder, "data", "log"));
        Assert.Contains("quiet-van", log);
        Assert.DoesNotContain(van.Password!, log);
        Assert.DoesNotContain("not-the-secret", log);
    }
}
