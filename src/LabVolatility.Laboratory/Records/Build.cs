using System.Reflection;

namespace LabVolatility.Laboratory.Records;

/// <summary>The build that made a record.</summary>
public static class Build
{
    public static string Name { get; } =
        typeof(Build).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";
}
