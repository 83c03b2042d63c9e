using System.Reflection;

namespace LabVolatility.Laboratory.Records;

/// <summary>Which build of the program wrote a record.</summary>
public static class ProgramBuild
{
    public static string Text { get; } =
        typeof(ProgramBuild).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";
}
