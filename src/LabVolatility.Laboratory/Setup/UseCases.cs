using LabVolatility.Laboratory.Storage;
using Microsoft.Extensions.DependencyInjection;

namespace LabVolatility.Laboratory.Setup;

/// <summary>Registers the laboratory's use cases: every public class that opens a context of its own.</summary>
public static class UseCases
{
    public static IServiceCollection AddUseCases(this IServiceCollection services)
    {
        foreach (var type in typeof(UseCases).Assembly.GetExportedTypes().Where(IsUseCase))
            services.AddTransient(type);
        return services;
    }

    private static bool IsUseCase(Type type) =>
        type is { IsClass: true, IsAbstract: false, IsNested: false }
        && type.GetConstructors() is [var constructor]
        && constructor.GetParameters() is [var first, ..]
        && first.ParameterType == typeof(Func<LabContext>);
}
