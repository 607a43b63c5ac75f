using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace TrimOut.Office.Running;

/// <summary>
/// A PostgreSQL server of one's own in a folder, on this machine's loopback and nowhere else, with a certificate of its own: to try the office copy with, and
/// for tests.
/// </summary>
public sealed class TrialServer
{
    /// <summary>The address that it listens at.</summary>
    public const string Host = "127.0.0.1";

    /// <summary>The oldest PostgreSQL that the office copy runs on: views see what their reader may since 15.</summary>
    public const int OldestVersion = 15;

    private const string Database = "trimout";
    private const string OwnerLogin = "office_owner";

    private readonly string _programs;

    private TrialServer(string folder, string programs) => (Folder, _programs) = (folder, programs);

    /// <summary>The folder that all of it lies in.</summary>
    public string Folder { get; }

    private string Data => Path.Combine(Folder, "data");

    /// <summary>The folder with the server's programs; null where there is none of a version that will do.</summary>
    public static string? Programs => Directory.Exists("/usr/lib/postgresql")
        ? Directory.EnumerateDirectories("/usr/lib/postgresql")
            .Where(d => int.TryParse(Path.GetFileName(d), NumberStyles.None, CultureInfo.InvariantCulture, out var version) && version >= OldestVersion)
            .OrderByDescending(d => int.Parse(Path.GetFileName(d), CultureInfo.InvariantCulture)).Select(d => Path.Combine(d, "bin"))
            .FirstOrDefault(b => File.Exists(Path.Combine(b, "initdb")))
        : null;

    /// <summary>Makes one where there is none, and starts it.</summary>
    /// <param name="folder">A folder that is empty or not there.</param>
    /// <param name="port">Its port.</param>
    /// <param name="now">The clock.</param>
    /// <param name="settings">More lines for the server's settings.</param>
    /// <returns>The server, who owns its tables, which it does not have yet, and who may do everything on it.</returns>
    /// <exception cref="OfficeException">PostgreSQL is not here, or something of it failed; what it said is in the message.</exception>
    public static async Task<(TrialServer Server, Credentials Owner, Credentials Administrator)> Make(string folder, int port, TimeProvider now,
        string settings = "")
    {
        var server = At(folder);
        Directory.CreateDirectory(server.Folder);
        if (Directory.EnumerateFileSystemEntries(server.Folder).Any())
            throw new OfficeException(OfficeFault.NotSetUp,
                $"{server.Folder} is not empty. Name a new folder, or start the trial server that lies in it with --start.");
        var certificate = OwnCertificate.For(Host, now);
        var password = Convert.ToBase64String(RandomNumberGenerator.GetBytes(24));
        server.GiveToServer();
        var secret = Path.Combine(server.Folder, "first-password");
        WriteForServer(secret, password);
        server.Run("initdb", "-D", server.Data, "-U", "postgres", "-A", "scram-sha-256", "--pwfile", secret, "-E", "UTF8", "--locale", "C.UTF-8");
        File.Delete(secret);
        WriteForServer(Path.Combine(server.Data, "server.crt"), certificate.Server);
        WriteForServer(Path.Combine(server.Data, "server.key"), certificate.Key);
        WriteForServer(Path.Combine(server.Data, "pg_hba.conf"), $"hostssl all all {Host}/32 scram-sha-256\n");
        WriteForServer(Path.Combine(server.Data, "postgresql.auto.conf"), string.Create(CultureInfo.InvariantCulture, $"""
            listen_addresses = '{Host}'
            port = {port}
            unix_socket_directories = ''
            ssl = on
            ssl_min_protocol_version = 'TLSv1.2'
            password_encryption = 'scram-sha-256'
            {settings}

            """));
        server.Start();
        var first = new Credentials(Host, port, "postgres", "administrator", "postgres", password, certificate.Root);
        var owner = first with
        {
            Database = Database,
            Device = "office-owner",
            Login = OwnerLogin,
            Password = Convert.ToBase64String(RandomNumberGenerator.GetBytes(24)),
        };
        await Devices.Do(first, $"""
            create role {OwnerLogin} login createrole password '{Devices.Check(owner.Password)}';
            grant pg_signal_backend to {OwnerLogin};
            """, CancellationToken.None).ConfigureAwait(false);
        await Devices.Do(first, $"create database {Database} owner {OwnerLogin}", CancellationToken.None).ConfigureAwait(false);
        await Devices.Do(first, $"revoke all on database {Database} from public", CancellationToken.None).ConfigureAwait(false);
        return (server, owner, first);
    }

    /// <summary>The one that lies in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="OfficeException">PostgreSQL is not here.</exception>
    public static TrialServer At(string folder) => new(Path.GetFullPath(folder), Programs ?? throw new OfficeException(OfficeFault.NotSetUp,
        $"There is no PostgreSQL {OldestVersion} or later on this machine. On Debian: apt install postgresql"));

    /// <summary>Starts it and waits until it answers.</summary>
    /// <exception cref="OfficeException">It does not start.</exception>
    public void Start() => Run("pg_ctl", "-D", Data, "-w", "-s", "-l", Path.Combine(Data, "log"), "start");

    /// <summary>Stops it: fast, or at once as if the power had gone.</summary>
    /// <param name="asIfKilled">At once.</param>
    /// <exception cref="OfficeException">It does not stop.</exception>
    public void Stop(bool asIfKilled = false) => Run("pg_ctl", "-D", Data, "-w", "-s", "-m", asIfKilled ? "immediate" : "fast", "stop");

    /// <summary>Runs one of PostgreSQL's programs as the server's user.</summary>
    /// <exception cref="OfficeException">It failed; what it said is in the message.</exception>
    public void Run(string program, params string[] arguments) => Run(program, arguments, null);

    /// <summary>Runs one of PostgreSQL's programs as the server's user and as somebody who connects.</summary>
    /// <param name="program">The program.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="who">Who connects; null where nobody does. The secret goes by the environment.</param>
    /// <exception cref="OfficeException">It failed; what it said is in the message.</exception>
    public void Run(string program, IReadOnlyList<string> arguments, Credentials? who)
    {
        string[] all = [.. AsServer, Path.Combine(_programs, program), .. arguments];
        var start = new ProcessStartInfo(all[0], all[1..])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
            UseShellExecute = false,
            WorkingDirectory = Folder,
        };
        if (who is not null)
        {
            var root = Path.Combine(Data, "root.crt");
            WriteForServer(root, who.Root);
            foreach (var (name, value) in new[] { ("PGHOST", who.Host), ("PGPORT", who.Port.ToString(CultureInfo.InvariantCulture)), ("PGUSER", who.Login),
                ("PGDATABASE", who.Database), ("PGPASSWORD", who.Password), ("PGSSLMODE", "verify-full"), ("PGSSLROOTCERT", root) })
            {
                start.Environment[name] = value;
            }
        }
        using var process = Process.Start(start)!;
        // What is started in the background keeps these open: nobody waits for their end.
        var said = new StringBuilder();
        process.ErrorDataReceived += (_, line) => said.AppendLine(line.Data);
        process.OutputDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        process.BeginOutputReadLine();
        if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
        {
            process.Kill();
            throw new OfficeException(OfficeFault.NotSetUp, $"{program} did not end within two minutes.");
        }
        if (process.ExitCode != 0)
        {
            process.WaitForExit();
            throw new OfficeException(OfficeFault.NotSetUp, string.Create(CultureInfo.InvariantCulture,
                $"{program} ended with {process.ExitCode}: {said.ToString().Trim()} {Log()}"));
        }
    }

    // The server refuses to run as root.
    private static string[] AsServer => Environment.IsPrivilegedProcess && OperatingSystem.IsLinux() ? ["runuser", "-u", ServerUser, "--"] : [];

    private static string ServerUser => File.Exists("/etc/passwd")
        && File.ReadLines("/etc/passwd").Any(l => l.StartsWith("postgres:", StringComparison.Ordinal))
        ? "postgres" : "nobody";

    private string Log() => File.Exists(Path.Combine(Data, "log")) ? string.Join(' ', File.ReadLines(Path.Combine(Data, "log")).TakeLast(3)) : "";

    private void GiveToServer()
    {
        Directory.CreateDirectory(Data);
        if (AsServer.Length > 0 && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute | UnixFileMode.GroupExecute
                | UnixFileMode.OtherExecute);
            Give(Data);
        }
    }

    private static void WriteForServer(string path, string text)
    {
        File.Delete(path);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using (var file = new FileStream(path, options))
            file.Write(Encoding.UTF8.GetBytes(text));
        if (AsServer.Length > 0)
            Give(path);
    }

    private static void Give(string path)
    {
        using var process = Process.Start(new ProcessStartInfo("chown", [ServerUser, path]))!;
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new OfficeException(OfficeFault.NotSetUp, $"{path} can't be given to {ServerUser}, whom the server runs as.");
    }
}
