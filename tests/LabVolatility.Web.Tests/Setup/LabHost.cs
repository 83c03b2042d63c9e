using LabVolatility.Laboratory.Demo;
using LabVolatility.Laboratory.Storage;
using LabVolatility.Web.Setup;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;
using Xunit;

namespace LabVolatility.Web.Tests.Setup;

/// <summary>The whole program in this process, on a SQLite file of its own; demo people only where asked for.</summary>
public sealed class LabHost : WebApplicationFactory<Program>
{
    private readonly string _folder = Directory.CreateTempSubdirectory("lab-host-").FullName;
    private readonly bool _demo;
    private readonly Action<IServiceCollection> _more;

    private LabHost(bool demo, Action<IServiceCollection>? more)
    {
        _demo = demo;
        _more = more ?? (_ => { });
        ClientOptions.AllowAutoRedirect = false;
        ClientOptions.BaseAddress = new Uri(demo ? "http://localhost" : "https://localhost");
    }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 5, 10, 8, 0, 0, TimeSpan.Zero));

    public Func<LabContext> Open => Services.GetRequiredService<Func<LabContext>>();

    /// <summary>A host that is ready.</summary>
    public static async Task<LabHost> StartAsync(bool demo = false, Action<IServiceCollection>? more = null)
    {
        var host = Begin(demo, more);
        await host.ReadyAsync();
        return host;
    }

    /// <summary>A host that may still be opening the laboratory.</summary>
    public static LabHost Begin(bool demo = false, Action<IServiceCollection>? more = null) => new(demo, more);

    /// <summary>The demo's people outside demo mode, where cookies are what they are in earnest.</summary>
    public static Task<LabHost> StartWithPeopleAsync() =>
        StartAsync(demo: false, services => services.AddTransient<IStartupWork, DemoPeopleAlone>());

    public async Task ReadyAsync()
    {
        using var client = CreateClient();
        var readiness = Services.GetRequiredService<Readiness>();
        while (!readiness.Ready)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            Assert.DoesNotContain("could not be opened", readiness.Waits, StringComparison.Ordinal);
            await Task.Yield();
        }
    }

    public static DemoPerson Demo(string fullName) => DemoPeople.All.Single(p => p.FullName == fullName);

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("LABVOLATILITY_DATA", _folder);
        builder.UseSetting("LABVOLATILITY_DEMO", _demo ? "true" : "false");
        builder.UseSetting("urls", WebSettings.DefaultAddress);
        builder.ConfigureTestServices(services =>
        {
            // The demo's own months of work are made elsewhere: here its people are enough.
            services.RemoveAll<IStartupWork>();
            if (_demo)
                services.AddTransient<IStartupWork, DemoPeopleAlone>();
            services.RemoveAll<TimeProvider>();
            services.AddSingleton<TimeProvider>(Clock);
            // Tests sign in often: the rounds that make guessing dear are not what they test.
            services.PostConfigure<PasswordHasherOptions>(options => options.IterationCount = 1000);
            _more(services);
        });
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(_folder))
            Directory.Delete(_folder, recursive: true);
    }
}
