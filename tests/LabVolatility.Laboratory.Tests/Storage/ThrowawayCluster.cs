using System.Net;
using System.Net.Sockets;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>A PostgreSQL cluster from the installed programs, on loopback, gone after the tests.</summary>
internal sealed class ThrowawayCluster : IAsyncDisposable
{
    private const string Account = "postgres";

    private readonly string _programs;
    private readonly string _folder;
    private readonly int _port;

    private ThrowawayCluster(string programs, string folder, int port) => (_programs, _folder, _port) = (programs, folder, port);

    public string Connection => $"Host=127.0.0.1;Port={_port};Username={Account};Database=postgres";

    private static bool IsRoot => Environment.UserName == "root";

    /// <summary>The folder of initdb and pg_ctl, the newest version first; null where PostgreSQL isn't installed.</summary>
    public static string? FindPrograms()
    {
        var installed = Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").OrderDescending(StringComparer.Ordinal).Select(v => Path.Combine(v, "bin"))
            : [];
        var path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return installed.Concat(path).FirstOrDefault(f => File.Exists(Path.Combine(f, "initdb")) && File.Exists(Path.Combine(f, "pg_ctl")));
    }

    public static async Task<ThrowawayCluster> StartAsync(string programs)
    {
        var cluster = new ThrowawayCluster(programs, Directory.CreateTempSubdirectory("lab-postgres-").FullName, FreePort());
        if (IsRoot)
            await MustAsync("chown", Account, cluster._folder);
        var data = Path.Combine(cluster._folder, "data");
        await cluster.AsAccountAsync("initdb", "-D", data, "-A", "trust", "-N", "-U", Account, "-E", "UTF8", "--locale=C.UTF-8");
        var options = $"-p {cluster._port} -c listen_addresses=127.0.0.1 -c unix_socket_directories='{cluster._folder}' -c max_connections=200 -c fsync=off -c synchronous_commit=off -c full_page_writes=off";
        await cluster.AsAccountAsync("pg_ctl", "-D", data, "-w", "-l", Path.Combine(cluster._folder, "log"), "-o", options, "start");
        return cluster;
    }

    public async ValueTask DisposeAsync()
    {
        await AsAccountAsync("pg_ctl", "-D", Path.Combine(_folder, "data"), "-w", "-m", "immediate", "stop");
        Directory.Delete(_folder, recursive: true);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    // PostgreSQL refuses to run as root. Output goes to a file: the server would hold a pipe open.
    private Task AsAccountAsync(string program, params string[] arguments)
    {
        var path = Path.Combine(_programs, program);
        return IsRoot
            ? MustAsync("runuser", ["-u", Account, "--", path, .. arguments])
            : MustAsync(path, arguments);
    }

    private static async Task MustAsync(string program, params string[] arguments)
    {
        var (code, output) = await Programs.RunAsync("/bin/sh", ["-c", "log=$(mktemp); \"$0\" \"$@\" >\"$log\" 2>&1 </dev/null; rc=$?; cat \"$log\"; rm -f \"$log\"; exit $rc", program, .. arguments]);
        if (code != 0)
            throw new InvalidOperationException($"{program} failed: {output}");
    }
}
