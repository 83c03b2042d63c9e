using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Commands;

/// <summary>Works out all stored results again and names those that differ.</summary>
internal static class ReplayResults
{
    public static Task<int> RunAsync(CommandWorld world) => CommandServices.WithAsync(world, async (services, options) =>
    {
        await DatabaseThere.DemandAsync(services, options);
        var report = await services.GetRequiredService<Replay>().Run();
        foreach (var difference in report.Differences)
            await world.Output.WriteLineAsync(difference);
        await world.Output.WriteLineAsync(report.AllEqual
            ? $"{report.Results} results worked out again, all equal."
            : $"{report.Results} results worked out again, {report.Differences.Count} differ.");
        return report.AllEqual ? 0 : CommandLine.Failed;
    });
}
