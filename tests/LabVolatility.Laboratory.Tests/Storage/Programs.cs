using System.Diagnostics;

namespace LabVolatility.Laboratory.Tests.Storage;

/// <summary>Runs a program to its end.</summary>
internal static class Programs
{
    public static async Task<(int Code, string Output)> RunAsync(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        var texts = await Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return (process.ExitCode, string.Concat(texts));
    }
}
