using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace LabVolatility.Browser.Tests.Harness;

/// <summary>The published web application as a process of its own: a data folder of its own, a free loopback port.</summary>
internal sealed class PublishedApplication : IAsyncDisposable
{
    private const string CertificatePassword = "of-this-run-only";
    private static readonly TimeSpan ReadyWithin = TimeSpan.FromMinutes(3);

    private readonly LastLines _log = new(60);
    private Process _process;
    private readonly string _data;
    private readonly bool _demo;

    private PublishedApplication(bool demo)
    {
        _demo = demo;
        _data = Directory.CreateTempSubdirectory("labvolatility-browser-").FullName;
        Address = new Uri(string.Create(CultureInfo.InvariantCulture, $"{(demo ? "http" : "https")}://127.0.0.1:{FreePort()}/"));
        _process = NewProcess();
    }

    /// <summary>Where it answers, with a slash at the end.</summary>
    public Uri Address { get; }

    /// <summary>What it wrote last to its log.</summary>
    public string Log => _log.ToString();

    /// <summary>Starts the demo laboratory and waits until it says that it is ready.</summary>
    /// <exception cref="InvalidOperationException">It ended, or was not ready in time; with its last log lines.</exception>
    public static Task<PublishedApplication> StartDemoAsync(CancellationToken cancellation) => StartAsync(new(demo: true), cancellation);

    /// <summary>The same for a laboratory that is no demo, holds nothing and nobody, and is served over HTTPS.</summary>
    public static Task<PublishedApplication> StartEmptyAsync(CancellationToken cancellation)
    {
        var application = new PublishedApplication(demo: false);
        OwnCertificate.Write(application.CertificateFile, CertificatePassword);
        return StartAsync(application, cancellation);
    }

    /// <summary>Runs a command of the executable on this laboratory: what it writes to standard output.</summary>
    public async Task<string> CommandAsync(string[] command, CancellationToken cancellation)
    {
        using var process = Process.Start(StartOf(command))!;
        var complaints = process.StandardError.ReadToEndAsync(cancellation);
        var output = await process.StandardOutput.ReadToEndAsync(cancellation);
        await process.WaitForExitAsync(cancellation);
        return process.ExitCode == 0
            ? output.Trim()
            : throw new InvalidOperationException($"\"{string.Join(' ', command)}\" ended with code {process.ExitCode}: {await complaints}");
    }

    private static async Task<PublishedApplication> StartAsync(PublishedApplication application, CancellationToken cancellation)
    {
        try
        {
            await application.StartAsync(cancellation);
            return application;
        }
        catch
        {
            await application.DisposeAsync();
            throw;
        }
    }

    /// <summary>Ends it at once, with whatever it was about to do.</summary>
    public async Task KillAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    /// <summary>Starts it again at the same address, with the same data.</summary>
    public Task StartAgainAsync(CancellationToken cancellation)
    {
        _process.Dispose();
        _process = NewProcess();
        return StartAsync(cancellation);
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

    private Process NewProcess()
    {
        var process = new Process { StartInfo = StartOf() };
        process.OutputDataReceived += (_, line) => _log.Add(line.Data);
        process.ErrorDataReceived += (_, line) => _log.Add(line.Data);
        return process;
    }

    private async Task StartAsync(CancellationToken cancellation)
    {
        _process.Start();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
        await WaitUntilReadyAsync(cancellation);
    }

    private string CertificateFile => Path.Combine(_data, "own-certificate.pfx");

    private ProcessStartInfo StartOf(params string[] command)
    {
        var start = new ProcessStartInfo("dotnet", [TestSettings.Application, .. command])
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
        start.Environment["LABVOLATILITY_DATA"] = _data;
        if (_demo)
        {
            start.Environment["LABVOLATILITY_DEMO"] = "true";
            start.Environment["LABVOLATILITY_DEMO_KEY"] = TestSettings.DemoKey;
        }
        else
        {
            start.Environment["ASPNETCORE_Kestrel__Certificates__Default__Path"] = CertificateFile;
            start.Environment["ASPNETCORE_Kestrel__Certificates__Default__Password"] = CertificatePassword;
        }

        return start;

        static bool IsOurs(string name) =>
            name.StartsWith("LABVOLATILITY_", StringComparison.Ordinal)
            || name.StartsWith("ASPNETCORE_", StringComparison.Ordinal)
            || name.StartsWith("DOTNET_ENVIRONMENT", StringComparison.Ordinal);
    }

    private async Task WaitUntilReadyAsync(CancellationToken cancellation)
    {
        using var own = new HttpClientHandler { ServerCertificateCustomValidationCallback = HttpClientHandler.DangerousAcceptAnyServerCertificateValidator };
        using var client = new HttpClient(own) { BaseAddress = Address, Timeout = TimeSpan.FromSeconds(10) };
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
