using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Commands;

/// <summary>Asks the laboratory that runs on this machine whether it may be used, for a supervisor with no other way to ask.</summary>
internal static class Healthy
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(4);

    public static async Task<int> RunAsync(CommandWorld world)
    {
        var address = Question(world.Setting("ASPNETCORE_URLS"));
        using var handler = new HttpClientHandler
        {
            // The certificate names the laboratory's public address; this asks the machine itself.
            ServerCertificateCustomValidationCallback = HttpClientHandler.DangerousAcceptAnyServerCertificateValidator,
        };
        using var client = new HttpClient(handler) { Timeout = LongestWait };
        try
        {
            using var answer = await client.GetAsync(address);
            await world.Output.WriteLineAsync(await answer.Content.ReadAsStringAsync());
            return answer.IsSuccessStatusCode ? 0 : CommandLine.Failed;
        }
        catch (Exception silence) when (silence is HttpRequestException or TaskCanceledException)
        {
            throw new CommandRefusedException($"{address} does not answer: {silence.Message}");
        }
    }

    /// <summary>Where to ask a server that listens at <paramref name="urls"/>; every address of the machine means its loopback.</summary>
    internal static Uri Question(string? urls)
    {
        var first = string.IsNullOrWhiteSpace(urls) ? WebSettings.DefaultAddress : urls.Split(';', StringSplitOptions.RemoveEmptyEntries)[0];
        var listens = BindingAddress.Parse(first.Trim());
        var host = listens.Host is "+" or "*" or "0.0.0.0" or "[::]" ? "localhost" : listens.Host;
        return new Uri($"{listens.Scheme}://{host}:{listens.Port}/health/ready");
    }
}
