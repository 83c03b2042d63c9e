using System.Net.Sockets;
using System.Text.Json;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>The container engine of this machine, where one answers on its socket.</summary>
internal static class DockerEngine
{
    private static string Socket =>
        Environment.GetEnvironmentVariable("DOCKER_HOST") is { } host && host.StartsWith("unix://", StringComparison.Ordinal)
            ? host["unix://".Length..]
            : "/var/run/docker.sock";

    /// <summary>The version of the interface that the engine speaks, such as "1.41"; null where no engine answers.</summary>
    public static async Task<string?> ApiVersionAsync(CancellationToken cancellation) =>
        await AskAsync("version", cancellation) is { } answer ? answer.GetProperty("ApiVersion").GetString() : null;

    /// <summary>The newest postgres image that is here already, such as "postgres:17"; null where there is none. Fetches nothing.</summary>
    public static async Task<string?> PostgresImageAsync(CancellationToken cancellation)
    {
        if (await AskAsync("images/json", cancellation) is not { } images)
            return null;

        return images.EnumerateArray()
            .Where(image => image.GetProperty("RepoTags").ValueKind == JsonValueKind.Array)
            .SelectMany(image => image.GetProperty("RepoTags").EnumerateArray())
            .Select(tag => tag.GetString()!)
            .Where(tag => tag.StartsWith("postgres:", StringComparison.Ordinal))
            .Max(StringComparer.Ordinal);
    }

    private static async Task<JsonElement?> AskAsync(string path, CancellationToken cancellation)
    {
        if (!File.Exists(Socket))
            return null;

        using var handler = new SocketsHttpHandler { ConnectCallback = ConnectAsync };
        using var client = new HttpClient(handler) { Timeout = TimeSpan.FromSeconds(10) };
        try
        {
            return JsonElement.Parse(await client.GetStringAsync(new Uri($"http://localhost/{path}"), cancellation));
        }
        catch (HttpRequestException)
        {
            return null; // a socket without an engine behind it
        }
    }

    private static async ValueTask<Stream> ConnectAsync(SocketsHttpConnectionContext context, CancellationToken cancellation)
    {
        var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        try
        {
            await socket.ConnectAsync(new UnixDomainSocketEndPoint(Socket), cancellation);
            return new NetworkStream(socket, ownsSocket: true);
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }
}
