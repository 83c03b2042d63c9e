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

    /// <summary>True where an engine answers and holds the image already; fetches nothing.</summary>
    public static async Task<bool> HasImageAsync(string image, CancellationToken cancellation) =>
        await AskAsync("images/json", cancellation) is { } images
        && images.EnumerateArray()
            .Select(one => one.GetProperty("RepoTags"))
            .Where(tags => tags.ValueKind == JsonValueKind.Array)
            .SelectMany(tags => tags.EnumerateArray())
            .Any(tag => tag.GetString() == image);

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
