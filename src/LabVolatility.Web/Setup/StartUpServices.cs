using LabVolatility.Laboratory.Demo;
using LabVolatility.Web.Records;

namespace LabVolatility.Web.Setup;

/// <summary>What runs between the first answer and readiness.</summary>
public static class StartUpServices
{
    public static void AddStartUp(this IServiceCollection services, WebSettings settings)
    {
        services.AddSingleton<Readiness>();
        services.AddSingleton<LaboratoryFacts>();
        if (settings.Demo)
        {
            services.AddTransient<DemoLaboratory>();
            services.AddTransient<IStartupWork, DemoStartup>();
        }

        services.AddHostedService<StartUp>();
        services.AddHostedService<LiveChanges>();
        services.DeferKeyRing();
    }

    // The framework would read the key ring before the database is migrated; it is read at the first use instead.
    private static void DeferKeyRing(this IServiceCollection services)
    {
        var eager = services.Single(s => s.ServiceType == typeof(IHostedService) && s.ImplementationType?.Name == "DataProtectionHostedService");
        services.Remove(eager);
    }
}
