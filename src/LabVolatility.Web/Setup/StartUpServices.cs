namespace LabVolatility.Web.Setup;

/// <summary>What runs between the first answer and readiness.</summary>
public static class StartUpServices
{
    public static void AddStartUp(this IServiceCollection services, WebSettings settings)
    {
        services.AddSingleton<Readiness>();
        services.AddSingleton<LaboratoryFacts>();
        if (settings.Demo)
            services.AddTransient<IStartupWork, DemoStartup>();
        services.AddHostedService<StartUp>();
    }
}
