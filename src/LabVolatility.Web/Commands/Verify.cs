using System.Text.Json;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Published;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Commands;

/// <summary>Holds this installation against published values; needs no database.</summary>
internal static class Verify
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static async Task<int> RunAsync(CommandWorld world, bool asJson)
    {
        var checks = PublishedChecks.Run();
        await world.Output.WriteAsync(asJson ? JsonSerializer.Serialize(new VerifiedReport([.. checks.Select(VerifiedRow.Of)]), Json) + "\n" : Report(checks));
        await world.Output.FlushAsync();
        return checks.All(c => c.Passed) ? 0 : CommandLine.Failed;
    }

    private static string Report(IReadOnlyList<PublishedCheck> checks)
    {
        var lines = checks.Select(c => string.Join(" | ",
            c.Passed ? "pass" : "FAIL", c.What, c.Source, c.Status.Text(), Rounding.Plain(c.Expected), Text(c.Computed), Text(c.Difference), Rounding.Plain(c.Tolerance)));
        var failed = checks.Count(c => !c.Passed);
        return string.Join("\n",
            lines.Prepend("result | what | source | status | expected | computed | difference | tolerance")
                .Append($"{checks.Count - failed} of {checks.Count} checks pass.")) + "\n";
    }

    private static string Text(decimal? number) => number is { } known ? Rounding.Plain(known) : "none";
}
