using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>The published web application as a process of its own: demo laboratory, empty data folder, free loopback port.</summary>
internal sealed class PublishedApplication : IAsyncDisposable
{
    private static readonly TimeSpan ReadyWithin = TimeSpan.FromMinutes(3);

    private readonly LastLines _log = new(60);
    private readonly Process _process;
    private readonly string _data;

    private PublishedApplication(string dll)
    {
        _data = Directory.CreateTempSubdirectory("labvolatility-browser-").FullName;
        Address = new Uri(string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{FreePort()}/"));
        _process = new Process { StartInfo = StartOf(dll) };
        _process.OutputDataReceived += (_, line) => _log.Add(line.Data);
        _process.ErrorDataReceived += (_, line) => _log.Add(line.Data);
    }

    /// <summary>Where it answers, with a slash at the end.</summary>
    public Uri Address { get; }

    /// <summary>What it wrote last to its log.</summary>
    public string Log => _log.ToString();

    /// <summary>Starts it and waits until it says that it is ready.</summary>
    /// <exception cref="InvalidOperationException">It ended, or was not ready in time; with its last log lines.</exception>
    public static async Task<PublishedApplication> StartAsync(CancellationToken cancellation)
    {
        var application = new PublishedApplication(TestSettings.Application);
        try
        {
            application._process.Start();
            application._process.BeginOutputReadLine();
            application._process.BeginErrorReadLine();
            await application.WaitUntilReadyAsync(cancellation);
            return application;
        }
        catch
        {
            await application.DisposeAsync();
            throw;
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (Running())
        {
            _process.Kill(entireProcessTree: true);
            await _process.WaitForExitAsync();
        }

        _process.Dispose();
        Directory.Delete(_data, recursive: true);
    }

    private ProcessStartInfo StartOf(string dll)
    {
        var start = new ProcessStartInfo("dotnet", [dll])
        {
            // Not the application's own folder: it has to find its files from anywhere.
            WorkingDirectory = _data,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var inherited in start.Environment.Keys.Where(IsOurs).ToList())
            start.Environment.Remove(inherited);
        start.Environment["ASPNETCORE_ENVIRONMENT"] = "Production";
        start.Environment["ASPNETCORE_URLS"] = Address.GetLeftPart(UriPartial.Authority);
        start.Environment["LABVOLATILITY_DEMO"] = "true";
        start.Environment["LABVOLATILITY_DEMO_KEY"] = TestSettings.DemoKey;
        start.Environment["LABVOLATILITY_DATA"] = _data;
        return start;

        static bool IsOurs(string name) =>
            name.StartsWith("LABVOLATILITY_", StringComparison.Ordinal)
            || name.StartsWith("ASPNETCORE_", StringComparison.Ordinal)
            || name.StartsWith("DOTNET_ENVIRONMENT", StringComparison.Ordinal);
    }

    private async Task WaitUntilReadyAsync(CancellationToken cancellation)
    {
        using var client = new HttpClient { BaseAddress = Address, Timeout = TimeSpan.FromSeconds(10) };
        using var pause = new PeriodicTimer(TimeSpan.FromMilliseconds(100));
        var waited = Stopwatch.StartNew();
        var answer = "nothing";
        while (waited.Elapsed < ReadyWithin && Running())
        {
            try
            {
                using var response = await client.GetAsync(new Uri("health/ready", UriKind.Relative), cancellation);
                if (response.StatusCode == HttpStatusCode.OK)
                    return;
                answer = $"{(int)response.StatusCode} {await response.Content.ReadAsStringAsync(cancellation)}";
            }
            catch (HttpRequestException notListening)
            {
                answer = notListening.Message;
            }

            await pause.WaitForNextTickAsync(cancellation);
        }

        var end = Running() ? $"was not ready after {ReadyWithin.TotalSeconds:0} s" : $"ended with code {_process.ExitCode}";
        throw new InvalidOperationException($"The application {end}; /health/ready answered last: {answer}\nIts last lines:\n{Log}");
    }

    private bool Running()
    {
        try
        {
            return !_process.HasExited;
        }
        catch (InvalidOperationException)
        {
            return false; // it never started
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
