using System.Reflection;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Web.Setup;

/// <summary>Registers every use case: a public class of the laboratory with a method Run, or one that keeps reference data.</summary>
public static class UseCases
{
    public static void AddUseCases(this IServiceCollection services, DemoKey? demoKey)
    {
        var useCases = typeof(Actor).Assembly.GetExportedTypes()
            .Where(t => t is { IsClass: true, IsAbstract: false } && (t.Name.StartsWith("Keep", StringComparison.Ordinal)
                || t.GetMethod("Run", BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly) is not null));
        foreach (var useCase in useCases)
            services.AddTransient(useCase);
        services.AddTransient(provider => new InterfaceKeys(
            provider.GetRequiredService<Func<LabContext>>(), provider.GetRequiredService<TimeProvider>(), demoKey));
    }
}
