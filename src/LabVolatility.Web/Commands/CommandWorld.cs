namespace LabVolatility.Web.Commands;

/// <summary>What a command sees of the world: settings, standard output, standard error.</summary>
internal sealed record CommandWorld(Func<string, string?> Setting, TextWriter Output, TextWriter Error)
{
    public static CommandWorld Process { get; } = new(Environment.GetEnvironmentVariable, Console.Out, Console.Error);
}
